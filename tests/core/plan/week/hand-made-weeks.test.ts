import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '../../../../src/plan/document.js';
import type { WeekRequest } from '../../../../src/plan/week/wishes.js';
import { clashesOf, roomy, weekOf } from './weeks.js';

/*
 * Weeks worked out on paper, for four hours in build (see `weeks.ts`): the least that each must cost, and the clashes
 * where every week of that cost has the same. Nothing is said of which of several such weeks is laid.
 */
interface Case {
  readonly wishes: WeekRequest;
  readonly request?: PlanRequest;
  readonly cost: number;
  /** Kind, days and cost of each clash; left out where weeks of the same cost differ in them. */
  readonly clashes?: readonly (readonly [kind: string, days: string, cost: number])[];
}

const tempoOn = (day: number) => ({ category: 'tempo', minutes: 35, day }) as const;
const intervalsOn = (day: number) => ({ category: 'intervals', minutes: 25, day }) as const;
const strengthOn = (day: number, minutes = 35) => ({ category: 'strength', minutes, day }) as const;

const cases: Readonly<Record<string, Case>> = {
  // Monday tempo, Tuesday strength, Wednesday slow, Thursday intervals, Friday strength, Saturday slow, Sunday cross.
  'seven sessions on seven days cost nothing': { wishes: { ...roomy, restDays: 0 }, cost: 0, clashes: [] },
  // As before, with cross-training beside a slow run; a session fewer would cost 2.
  'with a rest day, two of seven sessions share a day': { wishes: roomy, cost: 1 },
  'five days with room for seven sessions crowd two': { wishes: { days: [60, 0, 45, 60, 0, 90, 120] }, cost: 2 },
  // Two sessions on every day: strength twice, tempo, intervals, cross and slow once. Strength is on two of three days and
  // quality on two of three, so they share one; no two days are neighbours.
  'three days apart have six sessions, one of them strength beside quality': {
    wishes: { days: [0, 90, 0, 90, 0, 0, 120] },
    cost: 3 + 2 + 2,
  },
  // Three sessions on both days: strength and quality on either, slow (on Saturday, or it follows quality) and cross once.
  'a weekend only, three sessions a day': {
    wishes: { days: [0, 0, 0, 0, 0, 150, 150], sessionsADay: 3 },
    cost: 8 + 6 + 4 + 2 + 2 + 1 + 1 + 2,
    clashes: [
      ['quality-neighbours', '5,6', 8],
      ['strength-neighbours', '5,6', 6],
      ['strength-before-quality', '5,6', 4],
      ['strength-with-quality', '5', 2],
      ['strength-with-quality', '6', 2],
      ['two-sessions', '5', 1],
      ['two-sessions', '6', 1],
      ['session-count', '', 2],
    ],
  },
  'quality pinned on neighbouring days': {
    wishes: { ...roomy, restDays: 0, pinned: [tempoOn(1), intervalsOn(2)] },
    cost: 8,
    clashes: [['quality-neighbours', '1,2', 8]],
  },
  'quality pinned on Sunday and Monday, which are neighbours too': {
    wishes: { ...roomy, restDays: 0, pinned: [tempoOn(6), intervalsOn(0)] },
    cost: 8,
    clashes: [['quality-neighbours', '6,0', 8]],
  },
  'strength pinned on neighbouring days': {
    wishes: { ...roomy, restDays: 0, pinned: [strengthOn(3), strengthOn(4, 40)] },
    cost: 6,
    clashes: [['strength-neighbours', '3,4', 6]],
  },
  'strength pinned on the day before intervals': {
    wishes: { ...roomy, restDays: 0, pinned: [strengthOn(1), intervalsOn(2)] },
    cost: 4,
    clashes: [['strength-before-quality', '1,2', 4]],
  },
  // The shared day leaves one without a session: seven days hold the other five with one to spare.
  'strength pinned beside tempo running': {
    wishes: { ...roomy, pinned: [strengthOn(1), tempoOn(1)] },
    cost: 2 + 1,
    clashes: [
      ['strength-with-quality', '1', 2],
      ['two-sessions', '1', 1],
    ],
  },
  // Monday strength, Wednesday intervals, Thursday strength, Friday cross; a single slow run is the long run.
  'the only slow run pinned behind tempo running': {
    wishes: {
      ...roomy,
      restDays: 0,
      sessions: { slow: [70] },
      pinned: [tempoOn(5), { category: 'slow', minutes: 70, day: 6 }],
    },
    cost: 3 + 2,
    clashes: [
      ['long-after-quality', '5,6', 3],
      ['session-count', '', 2],
    ],
  },
  // 65 instead of 75 minutes are two steps.
  'strength settled ten minutes short': {
    wishes: { ...roomy, restDays: 0, sessions: { strength: [30, 35] } },
    cost: 2,
    clashes: [['missed-minutes', '', 2]],
  },
  // Eight sessions on seven days crowd one, and one session is more than wished (1 + 2). Three days of strength, no two of
  // them neighbours, lie like Monday, Wednesday and Friday: only Sunday is neither one of them nor behind one, so one of two
  // quality runs goes beside strength on Friday (2).
  'strength settled as three sessions': {
    wishes: { ...roomy, restDays: 0, sessions: { strength: [25, 25, 25] } },
    cost: 1 + 2 + 2,
  },
  // Slow 60, tempo 35, cross 50, strength 95 in one, one, one and three sessions: six on six days.
  'off season has no intervals': { wishes: roomy, request: { phase: 'off-season' }, cost: 0, clashes: [] },
  // Slow 50, cross 40 and strength 30 minutes, a session each.
  'two hours in recovery': { wishes: roomy, request: { hours: 2, phase: 'recovery' }, cost: 0, clashes: [] },
};

describe('a week worked out by hand costs what it must:', () => {
  test.each(Object.entries(cases))('%s', (_, { wishes, request, cost, clashes }) => {
    const week = weekOf(wishes, request);
    expect([week.state, week.cost, week.conflict]).toEqual(['laid', cost, null]);
    expect(week.clashes.reduce((sum, clash) => sum + clash.cost, 0)).toBe(cost);
    if (clashes) expect(clashesOf(week)).toEqual(clashes);
  });

  test('a clash that is about a kind names it, and by how much', () => {
    const { clashes } = weekOf({ ...roomy, restDays: 0, sessions: { strength: [30, 35] } });
    expect(clashes).toEqual([{ kind: 'missed-minutes', days: [], cost: 2, category: 'strength', by: -10 }]);
    const [count] = weekOf({ days: [0, 0, 0, 0, 0, 150, 150], sessionsADay: 3 }).clashes.slice(-1);
    expect(count).toEqual({ kind: 'session-count', days: [], cost: 2, category: 'slow', by: -1 });
  });
});
