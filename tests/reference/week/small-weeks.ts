import fc from 'fast-check';
import { byCategory, categoryIds } from '../../../src/training/method/ids.js';
import type { FixedSession, KindNeed, WeekProblem } from '../../../src/training/week/week-problem.js';
import { countLayouts } from './exhaustive.js';
import { anyRules } from './random-rules.js';
import { weekOf } from './random-weeks.js';

/** A kind with few steps: sum, how far it may be missed, limits of a session. */
const shape = fc.record({
  sum: fc.constantFrom(4, 6, 8, 3, 10, 5, 2, 0),
  under: fc.nat(4),
  over: fc.nat(2),
  offStep: fc.constantFrom(0, 0, 0, 0.4),
  shortest: fc.integer({ min: 1, max: 3 }),
  range: fc.constantFrom(2, 1, 3, 0),
  wished: fc.nat(3),
  isSettled: fc.constantFrom(false, false, true),
  lengths: fc.array(fc.integer({ min: 1, max: 5 }), { maxLength: 3 }),
});

type Shape = typeof shape extends fc.Arbitrary<infer S> ? S : never;

const pins = fc.record({
  pick: fc.nat(3),
  steps: fc.integer({ min: 1, max: 6 }),
  day: fc.nat(6),
  isDone: fc.boolean(),
});
type Pin = typeof pins extends fc.Arbitrary<infer P> ? P : never;

const fewDays = fc.oneof(
  { arbitrary: fc.constant(0), weight: 4 },
  { arbitrary: fc.nat(6).map((day) => 2 ** day), weight: 1 },
);

/** Weeks with few days and short sessions, so that every layout can be looked at. */
export const smallWeeks: fc.Arbitrary<WeekProblem> = fc
  .record({
    present: fc.subarray([...categoryIds], { minLength: 1, maxLength: 4 }),
    shapes: fc.record(byCategory(() => shape)),
    room: fc.array(fc.constantFrom(0, 5, 8, 3, 12), { minLength: 7, maxLength: 7 }),
    rules: anyRules,
    longRun: fc.oneof({ arbitrary: fc.constant(null), weight: 3 }, { arbitrary: fc.nat(6), weight: 1 }),
    restDays: fc.constantFrom(1, 0, 2, 0, 4),
    sessionsADay: fc.constantFrom(2, 3, 2, 1),
    free: fewDays,
    passed: fewDays,
    pins: fc.oneof(
      { arbitrary: fc.constant<Pin[]>([]), weight: 2 },
      { arbitrary: fc.array(pins, { minLength: 1, maxLength: 2 }), weight: 1 },
    ),
    before: fc.record(byCategory(() => fc.nat(127))),
  })
  .map(({ present, shapes, pins, ...rest }) => {
    const fixed = onceADay(
      pins.map(({ pick, ...pin }) => ({ ...pin, category: present[pick % present.length] ?? 'slow' })),
    );
    const kinds = categoryIds.map((category): KindNeed => {
      const pinned = fixed.filter((each) => each.category === category).map(({ steps }) => steps);
      return { category, ...needOf(present.includes(category) ? shapes[category] : null, pinned) };
    });
    return smallEnough(weekOf({ ...rest, kinds, fixed }));
  });

/** What a kind needs; what is pinned comes on top, so that it can fit. */
function needOf(kind: Shape | null, pinned: readonly number[]): Omit<KindNeed, 'category'> {
  if (!kind) return { shortest: 1, longest: 2, least: 0, most: 0, rounded: 0, wished: 0, sessions: null };
  const { under, over, offStep, shortest, range, wished, isSettled, lengths } = kind;
  const sum = pinned.reduce((total, steps) => total + steps, kind.sum);
  const limits = { shortest, longest: shortest + range, least: Math.max(0, sum - under), most: sum + over };
  return { ...limits, rounded: sum + offStep, wished, sessions: isSettled ? [...pinned, ...lengths] : null };
}

const onceADay = (pins: readonly FixedSession[]): FixedSession[] => [
  ...new Map(pins.map((pin) => [`${pin.category} ${pin.day}`, pin])).values(),
];

/** The week, with so many days closed from its end that at most 1,000,000 layouts are to be looked at. */
function smallEnough(problem: WeekProblem): WeekProblem {
  if (countLayouts(problem) <= 1_000_000) return problem;
  const last = problem.room.findLastIndex((steps) => steps > 0);
  return smallEnough({ ...problem, room: problem.room.with(last, 0) });
}
