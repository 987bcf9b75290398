import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtInPlanner, planWeek, type PlanWeek, type WeekWishes } from '../../../../src/plan.js';
import { layRest } from '../../../../src/plan/record/lay-rest.js';
import { readWishes } from '../../../../src/plan/week/read-wishes.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { byCategory, categoryIds, type CategoryId } from '../../../../src/training/method/ids.js';
import type { DoneSession } from '../../../../src/training/record/done-session.js';
import type { Laid } from '../../../../src/training/week/week-problem.js';
import { patience, runs } from '../../../reference/runs.js';
import { civilDay, civilText } from '../../../reference/season/civil-days.js';
import { faultsOf } from '../../../reference/week/week-check.js';
import { valueOf } from '../../training/method/documents.js';
import { days as dates, did } from '../../training/record/week-sessions.js';
import { anyWishes, type Asked } from '../week/random-wishes.js';
import { session, sevenDays, wished, wishes } from '../week/seven-days.js';
import { daysOf, placesOf, planned, problemOf, roomy, weekOf } from '../week/weeks.js';

const start = dates.mon;
const step = 5;
/** More than anybody does in these weeks. */
const much = byCategory(() => 2000);
/** Wishes for the rest of a week of seven days, on which each of the first days has a session. */
const rest = (
  done: readonly DoneSession[],
  from: string,
  week: Pick<PlanWeek, 'wishes' | 'days'> = sevenDays,
): WeekWishes => layRest(week, { done, start, from, step, rounded: much });

describe('wishes for the rest of a week', () => {
  test('are those there were, where nothing was done and no day is over', () => {
    expect(rest([], dates.mon)).toEqual({ ...wishes, before: sevenDays.days });
  });

  test('have what was done on its day, and days that are over', () => {
    const done = [did('tempo', 35, 'mon'), did('slow', 40, 'wed')];
    expect(rest(done, dates.thu)).toEqual({
      ...{ ...wishes, passed: 3, before: sevenDays.days },
      done: [session('tempo', 35, 0), session('slow', 40, 2)],
    });
  });

  test.each([
    ['2026-11-01', 0],
    [dates.mon, 0],
    [dates.tue, 1],
    [dates.sun, 6],
    ['2026-11-30', 7],
    ['2027-11-30', 7],
  ])('from %s on have %d days that are over', (from, passed) => {
    expect(rest([], from).passed).toBe(passed);
  });

  test('have what was done today or later, too', () => {
    expect(rest([did('tempo', 35, 'mon'), did('slow', 30, 'sun')], dates.mon)).toMatchObject({
      ...{ passed: 0, done: [session('tempo', 35, 0), session('slow', 30, 6)] },
    });
  });

  test.each([
    [1, 5],
    [7, 5],
    [8, 10],
    [32, 30],
    [33, 35],
    [35, 35],
    [1440, 1440],
  ])('count %d minutes as %d', (minutes, counted) => {
    expect(rest([did('tempo', minutes, 'mon')], dates.tue).done).toEqual([session('tempo', counted, 0)]);
  });

  test('have one session of a kind on a day, with the minutes of all, before they are rounded', () => {
    const done = [did('slow', 22, 'tue'), did('strength', 40, 'tue'), did('slow', 22, 'tue'), did('slow', 20, 'thu')];
    const [tuesday, strength, thursday] = [session('slow', 45, 1), session('strength', 40, 1), session('slow', 20, 3)];
    expect(rest(done, dates.fri).done).toEqual([tuesday, strength, thursday]);
    expect(rest([did('slow', 800, 'tue'), did('slow', 800, 'tue')], dates.fri).done).toEqual([
      session('slow', 1440, 1),
    ]);
  });

  test('have nothing of other weeks', () => {
    const done = [
      { ...did('slow', 30, 'mon'), date: '2026-11-22' },
      { ...did('slow', 30, 'mon'), date: '2026-11-30' },
    ];
    expect(rest(done, dates.wed).done).toEqual([]);
  });

  test('keep what is pinned to days to come, unless it was done', () => {
    const pinned = [session('tempo', 35, 0), session('slow', 35, 2), session('slow', 35, 5), session('cross', 35, 6)];
    const done = [did('cross', 30, 'sun')];
    expect(rest(done, dates.wed, wished({ pinned })).pinned).toEqual([pinned[1], pinned[2]]);
  });

  test('forget what was done before, and what was over', () => {
    const before = wished({ done: [session('tempo', 35, 0)], passed: 5 });
    expect(rest([], dates.tue, before)).toMatchObject({ done: [], passed: 1 });
  });

  test('keep lengths that are settled while all that was done is among them', () => {
    const sessions = { slow: [30, 30, 45], strength: [35, 40], tempo: [35] };
    const after = (...done: readonly DoneSession[]): unknown => rest(done, dates.fri, wished({ sessions })).sessions;
    expect(after()).toEqual(sessions);
    expect(after(did('slow', 30, 'mon'), did('slow', 31, 'tue'))).toEqual(sessions);
    const { slow: _, ...others } = sessions;
    expect(after(did('slow', 45, 'mon'), did('slow', 45, 'tue'))).toEqual(others);
    expect(after(did('slow', 60, 'mon'), did('strength', 40, 'tue'))).toEqual(others);
    expect(after(did('cross', 60, 'mon'))).toEqual(sessions);
  });

  test('are none that the step of a method cannot have', () => {
    // 206 steps of seven minutes would be more than a day has.
    const { done } = layRest(sevenDays, {
      done: [did('cross', 1440, 'mon')],
      start,
      from: dates.tue,
      step: 7,
      rounded: much,
    });
    expect(done).toEqual([session('cross', 1435, 0)]);
  });

  test('are as good where there is no week yet', () => {
    expect(rest([], dates.tue, { ...sevenDays, days: null })).toMatchObject({ passed: 1, before: null });
  });
});

describe('the rest of a week, laid by the search', () => {
  /** Four hours on seven days of two hours each, of which two are over. */
  const request = { hours: 4 } as const;
  const week = weekOf(roomy, request);
  const { rounded } = planned(roomy, request);

  test('is the week as it was, where all was done as it was planned', () => {
    const done = daysOf(week)
      .slice(0, 3)
      .flatMap((sessions, day) =>
        sessions.map((each) => ({ ...each, date: civilText(civilDay(start) + day), effort: 3 })),
      );
    expect(done.length).toBeGreaterThan(0);
    const again = weekOf(layRest(week, { done, start, from: dates.thu, step, rounded }), request);
    expect(again.days).toEqual(week.days);
  });

  test('has what was not done on days to come', () => {
    const again = weekOf(layRest(week, { done: [], start, from: dates.wed, step, rounded }), request);
    expect(daysOf(again).slice(0, 2)).toEqual([[], []]);
    for (const id of categoryIds) {
      const minutes = placesOf(again, id).reduce((sum, [, each]) => sum + each, 0);
      expect(Math.abs(minutes - rounded[id])).toBeLessThanOrEqual(10);
    }
  });

  test.each([
    ['more of one session', [did('slow', 85, 'mon')], 'slow'],
    ['twice as much', [did('tempo', 60, 'mon')], 'tempo'],
    ['more sessions', [did('slow', 40, 'mon'), did('slow', 40, 'tue'), did('slow', 40, 'wed')], 'slow'],
    ['just as much', [did('strength', 75, 'tue')], 'strength'],
  ] as const)('has no more of a kind of which more was done than planned: %s', (_, done, kind) => {
    const again = weekOf(layRest(week, { done, start, from: dates.thu, step, rounded }), request);
    expect(again.state).toBe('laid');
    expect(again.sessions[kind]).toEqual(done.map(({ minutes }) => minutes));
    for (const id of categoryIds.filter((other) => other !== kind)) expect(again.sessions[id]).not.toEqual([]);
  });

  test('has less of a kind by what was done of it', () => {
    const done = [did('slow', 40, 'mon')];
    const again = weekOf(layRest(week, { done, start, from: dates.tue, step, rounded }), request);
    const [first, ...others] = placesOf(again, 'slow');
    expect(first).toEqual([0, 40]);
    // Of 70 minutes 30 are left, or up to ten more or less.
    expect(others.reduce((sum, [, each]) => sum + each, 0)).toBeGreaterThanOrEqual(20);
    expect(others.reduce((sum, [, each]) => sum + each, 0)).toBeLessThanOrEqual(40);
  });
});

interface Happened extends Asked {
  readonly done: readonly DoneSession[];
  readonly from: string;
}

/** Weeks, what was done in them whatever was planned, and the day it is. */
const anyRests: fc.Arbitrary<Happened> = anyWishes.chain((asked) =>
  fc.record({
    runner: fc.constant(asked.runner),
    wishes: fc.constant(asked.wishes),
    from: fc.integer({ min: -2, max: 8 }).map((day) => civilText(civilDay(start) + day)),
    done: fc.array(
      fc.record({
        date: fc.nat(6).map((day) => civilText(civilDay(start) + day)),
        category: fc.constantFrom(...categoryIds),
        minutes: fc.oneof(
          { weight: 5, arbitrary: fc.integer({ min: 10, max: 60 }) },
          { weight: 1, arbitrary: fc.integer({ min: 1, max: 1440 }) },
        ),
        effort: fc.constant(null),
      }),
      { maxLength: 4 },
    ),
  }),
);

/** Minutes of each kind on each day, as they happened. */
function minutesDone(done: readonly DoneSession[], category: CategoryId, day: number): number {
  return done
    .filter((each) => each.category === category && civilDay(each.date) - civilDay(start) === day)
    .reduce((sum, { minutes }) => sum + minutes, 0);
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);
const planner = builtInPlanner();

describe('the rest of any week', { timeout: patience }, () => {
  test('can be read and is laid around what was done, or nothing fits and the plan says why', () => {
    const counts = { laid: 0, conflicts: 0, left: 0 };
    const { tolerance_minutes, tolerance_share } = builtInMethod.rounding;
    fc.assert(
      fc.property(anyRests, ({ runner, wishes: asked, done, from }) => {
        const { week, rounded: before } = valueOf(planner.plan({ ...runner, week: asked }));
        if (!week) throw new Error('a week was asked for');
        const given = structuredClone({ week, done });
        const so = layRest(week, { done, start, from, step, rounded: before });
        expect({ week, done }).toEqual(given);
        expect(valueOf(readWishes(JSON.parse(JSON.stringify(so)), builtInMethod))).toEqual(so);

        const { week: again, rounded } = valueOf(planWeek({ ...runner, week: so }));
        if (again?.state !== 'laid') {
          counts.conflicts += 1;
          expect([again?.state, again?.days]).toEqual(['nothing-fits', null]);
          expect(again?.conflict?.wishes).not.toEqual([]);
          return;
        }
        counts.laid += 1;
        const laid = byCategory((id) =>
          daysOf(again).map((sessions) => sessions.find(({ category }) => category === id)?.minutes ?? 0),
        );
        const inSteps: Laid = byCategory((id) => laid[id].map((minutes) => minutes / step));
        expect(faultsOf(problemOf(so, runner), inSteps)).toEqual([]);
        const passed = civilDay(from) - civilDay(start);
        for (const id of categoryIds) {
          laid[id].forEach((minutes, day) => {
            const happened = minutesDone(done, id, day);
            // What was done stays, to the step; nothing else is on a day that is over.
            if (happened > 0)
              expect(Math.abs(minutes - Math.min(1440, happened))).toBeLessThan(happened < step ? step : 2.6);
            else if (day < passed) expect(minutes).toBe(0);
          });
          const all = sum(laid[id]);
          const happened = sum(laid[id].map((_, day) => minutesDone(done, id, day)));
          const missing =
            rounded[id] - happened - Math.max(tolerance_minutes, tolerance_share * rounded[id]) - 3 * step;
          if (missing <= 0 || so.sessions[id]) continue;
          counts.left += 1;
          expect(all - happened).toBeGreaterThanOrEqual(missing);
        }
      }),
      runs(150, 10_000),
    );
    expect(Math.min(counts.laid, counts.conflicts)).toBeGreaterThan(5);
    expect(counts.left).toBeGreaterThan(0);
  });
});
