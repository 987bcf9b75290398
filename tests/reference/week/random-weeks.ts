import fc from 'fast-check';
import type { Plan } from '../../../src/plan/document.js';
import type { WeekRules } from '../../../src/training/method/document.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { categoryIds, type CategoryId } from '../../../src/training/method/ids.js';
import { wishedSessions } from '../../../src/training/sessions/options.js';
import type { FixedSession, KindNeed, WeekProblem } from '../../../src/training/week/week-problem.js';
import { athletesOnSteps } from '../athletes.js';
import { planOf } from '../plan-door.js';
import { defaultRules } from './default-rules.js';
import { anyRules } from './random-rules.js';

const { rounding } = builtInMethod;

/** A session that may be pinned; `pick` chooses its length. */
interface Pin {
  readonly category: CategoryId;
  readonly day: number;
  readonly pick: number;
  readonly isDone: boolean;
}

/** Athletes of the default method, most of them with 2 to 10 hours, and room by the same measure. */
const athletesAndRoom = {
  athlete: fc
    .tuple(athletesOnSteps, fc.option(fc.integer({ min: 8, max: 40 }), { freq: 10 }))
    .map(([athlete, quarters]) => (quarters === null ? athlete : { ...athlete, hours: quarters / 4 })),
  shares: fc.array(fc.constantFrom(3, 2, 4, 3, 0, 1, 5, 2), { minLength: 7, maxLength: 7 }),
  slack: fc.constantFrom(2, 1.5, 3, 1.75, 2.5, 4, 1.25, 1.5, 1),
};

/** Now and then something, else nothing; a smaller case has nothing. */
const seldom = <T>(nothing: T, something: fc.Arbitrary<T>): fc.Arbitrary<T> =>
  fc.oneof({ arbitrary: fc.constant(nothing), weight: 3 }, { arbitrary: something, weight: 1 });

const pins = fc.array(
  fc.record({
    category: fc.constantFrom(...categoryIds),
    day: fc.nat(6),
    pick: fc.nat(50),
    isDone: fc.boolean(),
  }),
  { minLength: 1, maxLength: 3 },
);

/** What a person may want of a week beside its sessions. */
const wishes = {
  longRun: seldom<number | null>(null, fc.nat(6)),
  restDays: fc.constantFrom(1, 0, 1, 0, 1, 2, 0, 3),
  sessionsADay: fc.constantFrom(2, 2, 3, 2, 2, 2, 1),
  free: seldom<number>(
    0,
    fc.nat(6).map((day) => 2 ** day),
  ),
  passed: seldom<number>(
    0,
    fc.integer({ min: 1, max: 3 }).map((days) => 2 ** days - 1),
  ),
  pins: seldom<readonly Pin[]>([], pins),
  /** Kinds whose sessions are settled. */
  settled: seldom<readonly CategoryId[]>([], fc.oneof(fc.subarray([...categoryIds]), fc.constant(categoryIds))),
  pick: fc.nat(11),
  /** What a person set by hand, off the step. */
  offStep: fc.constantFrom(0, 0, 0, 0.4, -0.6),
};

/** Weeks of athletes of the default method, with room for their sessions, just enough or too little, and any wishes. */
export const weeksBy = (rulesOf: fc.Arbitrary<WeekRules>): fc.Arbitrary<WeekProblem> =>
  fc
    .record({ ...athletesAndRoom, ...wishes, rules: rulesOf })
    .map(({ athlete, shares, slack, rules, settled, pick, pins, offStep, ...rest }) => {
      const plan = planOf(athlete);
      const kinds = needsOf(plan).map((need) => {
        const options = plan.options[need.category];
        const option = options[pick % Math.max(1, options.length)] ?? [];
        const sessions = settled.includes(need.category) ? option.map((minutes) => minutes / rounding.step) : null;
        return { ...need, sessions, rounded: need.rounded > 0 ? need.rounded + offStep : 0 };
      });
      const fixed = fixedOf(kinds, pins);
      return weekOf({ ...rest, rules, kinds, room: withRoomFor(fixed, roomOf(plan, shares, slack)), fixed });
    });

/** Such weeks by the default rules or by others. */
export const randomWeeks = weeksBy(anyRules);

/** Weeks without any wish, for people with more or less room than they need. */
export const plainWeeks: fc.Arbitrary<WeekProblem> = fc.record(athletesAndRoom).map(({ athlete, shares, slack }) => {
  const plan = planOf(athlete);
  return weekOf({ kinds: needsOf(plan), room: roomOf(plan, shares, slack) });
});

/** A week like the default method's, in which some things are otherwise. */
export function weekOf(parts: Pick<WeekProblem, 'kinds' | 'room'> & Partial<WeekProblem>): WeekProblem {
  const { sessions_a_day: sessionsADay, rest_days: restDays } = defaultRules;
  const nothing = { free: 0, passed: 0, longRun: null, fixed: [], before: null };
  return { rules: defaultRules, step: rounding.step, sessionsADay, restDays, ...nothing, ...parts };
}

/** What the kinds of training need of a week by a plan of the default method. */
export function needsOf(plan: Plan): KindNeed[] {
  return categoryIds.map((category): KindNeed => {
    const limits = builtInMethod.categories.find(({ id }) => id === category)?.session;
    if (!limits) throw new Error(`the method has no ${category}`);
    const [shortest, longest] = [limits.shortest / rounding.step, limits.longest / rounding.step];
    const exact = plan.minutes[category];
    const base = { category, shortest, longest, sessions: null };
    if (exact <= 0) return { ...base, least: 0, most: 0, rounded: 0, wished: 0 };
    const tolerance = Math.max(rounding.tolerance_minutes, rounding.tolerance_share * exact) + 1e-9;
    const least = Math.max(1, Math.ceil((exact - tolerance) / rounding.step));
    const most = Math.floor((exact + tolerance) / rounding.step);
    const rounded = plan.rounded[category] / rounding.step;
    return { ...base, least, most, rounded, wished: wishedSessions(exact, limits.typical) };
  });
}

/** Whole steps of each day: the week's minutes, times the slack, by shares. */
function roomOf({ total }: Plan, shares: readonly number[], slack: number): number[] {
  const all = shares.reduce((sum, share) => sum + share, 0);
  return shares.map((share) => Math.floor(((slack * total.exact) / rounding.step) * (share / Math.max(1, all))));
}

/** Sessions that stay: of a kind that has minutes, with a settled length or one within the limits, once a day. */
function fixedOf(kinds: readonly KindNeed[], pins: readonly Pin[]): FixedSession[] {
  const fixed = new Map<string, FixedSession>();
  for (const { category, day, pick, isDone } of pins) {
    const need = kinds.find((each) => each.category === category);
    if (!need || need.most === 0) continue;
    const { sessions, shortest, longest, most } = need;
    const range = Math.max(1, Math.min(longest, most) - shortest + 1);
    // Now and then a session is shorter or longer than the method would have it.
    const free = pick % 10 === 9 ? 1 + pick : shortest + (pick % range);
    const steps = sessions?.[pick % Math.max(1, sessions.length)] ?? free;
    fixed.set(`${category} ${day}`, { category, steps, day, isDone });
  }
  return [...fixed.values()];
}

/** The room, more where the session that stays needs it; but a session of 5, 10 or so steps must look after itself. */
function withRoomFor(fixed: readonly FixedSession[], room: readonly number[]): number[] {
  return room.map((steps, day) => {
    const needed = fixed.filter((session) => session.day === day && session.steps % 5 > 0);
    return Math.max(steps, ...needed.map((session) => session.steps));
  });
}
