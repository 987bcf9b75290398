import fc from 'fast-check';
import type { PlanInputs } from '../../../../src/plan/document.js';
import type { PlacedSession, WeekWishes } from '../../../../src/plan/week/wishes.js';
import { categoryIds, eventIds, levelIds, phaseIds } from '../../../../src/training/method/ids.js';

/** Runners and what they want of their week. */
export interface Asked {
  readonly runner: PlanInputs;
  readonly wishes: WeekWishes;
}

const day = fc.nat(6);
/** Mostly nothing, now and then something; a smaller case has nothing. */
const seldom = <T>(nothing: T, something: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  fc.oneof({ arbitrary: fc.constant(nothing), weight: 3 }, { arbitrary: something, weight: 1 });

const placed = fc.uniqueArray(
  fc.record({ category: fc.constantFrom(...categoryIds), minutes: fc.constantFrom(30, 20, 45, 60), day }),
  { maxLength: 3, selector: ({ category, day: on }: PlacedSession) => `${category} ${on}` },
);

const settled = fc.constantFrom<WeekWishes['sessions']>(
  { strength: [25, 25, 25] },
  { slow: [60] },
  { tempo: [20, 20], cross: [] },
  { slow: [30, 30, 45], intervals: [30] },
);

/** Weeks of which many have too little room, or wishes that collide. */
export const anyWishes: fc.Arbitrary<Asked> = fc
  .record({
    hours: fc.integer({ min: 8, max: 40 }).map((quarters) => quarters / 4),
    phase: fc.constantFrom(...phaseIds),
    level: fc.constantFrom(...levelIds),
    event: fc.constantFrom(...eventIds),
    shares: fc.array(fc.constantFrom(2, 3, 1, 4, 0, 0, 5), { minLength: 7, maxLength: 7 }),
    slack: fc.constantFrom(1.25, 1, 1.5, 2, 0.75),
    free: seldom<number[]>([], fc.uniqueArray(day, { maxLength: 2 })),
    longRun: seldom<number | null>(null, day),
    restDays: fc.constantFrom(1, 0, 2, 4),
    sessionsADay: fc.constantFrom(2, 3, 1),
    placed: seldom<PlacedSession[]>([], placed),
    donePart: fc.constantFrom(0, 0, 1, 3),
    passed: seldom(0, fc.integer({ min: 1, max: 4 })),
    sessions: seldom<WeekWishes['sessions']>({}, settled),
  })
  .map(({ hours, phase, level, event, shares, slack, placed: all, donePart, free, ...rest }) => ({
    runner: { hours, phase, level, event, strengthCap: 120 },
    wishes: {
      ...rest,
      free: [...free].sort((one, other) => one - other),
      days: daysOf(shares, 60 * hours * slack),
      pinned: all.slice(donePart),
      done: all.slice(0, donePart),
      before: null,
    },
  }));

/** So many minutes in all, by shares. */
function daysOf(shares: readonly number[], minutes: number): number[] {
  const all = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share) => Math.min(1440, Math.floor((minutes * share) / Math.max(1, all))));
}
