import { describe, expect, test } from 'vitest';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import { defaultDocument, objectOf, plannerOf, valueOf } from '../../training/method/documents.js';
import { ascending, clashesOf, daysOf, minutesOn, placesOf, planned, roomy, weekOf } from './weeks.js';

const evenings = { days: [60, 0, 45, 60, 0, 90, 120] };
const weekend = { days: [0, 0, 0, 0, 0, 150, 150], sessionsADay: 3 };

describe('a plan with a week', () => {
  test('has for its sessions those that are laid, whatever fits the minutes best', () => {
    // 65 minutes of slow running are no best option of 70.
    const plan = planned({ ...roomy, sessions: { slow: [65] } });
    expect(plan.sessions.slow).toEqual([65]);
    for (const week of [evenings, weekend, roomy]) {
      const { sessions, week: laid } = planned(week);
      for (const id of categoryIds)
        expect(ascending(laid ? placesOf(laid, id).map(([, minutes]) => minutes) : [])).toEqual(sessions[id]);
      expect(laid?.sessions).toEqual(sessions);
    }
  });

  test('is, days and sessions aside, the plan without one', () => {
    const { week: _, sessions: __, ...rest } = planned(evenings);
    const { week: ___, sessions: ____, ...without } = planned({ days: [0, 0, 0, 0, 0, 0, 0] });
    expect(rest).toEqual(without);
  });

  test('keeps its best sessions where nothing fits', () => {
    const plan = planned({ days: [0, 0, 0, 0, 0, 0, 60] });
    for (const id of categoryIds) expect(plan.sessions[id]).toEqual(plan.options[id][0]);
    expect(plan.week).toMatchObject({ state: 'nothing-fits', days: null, cost: null, clashes: [] });
    expect(plan.week?.sessions).toEqual({ slow: [], tempo: [], intervals: [], cross: [], strength: [] });
  });

  test('keeps to the minutes of its days, and to seven of them', () => {
    for (const wishes of [evenings, weekend, roomy]) {
      const week = weekOf(wishes);
      expect(week.days).toHaveLength(7);
      wishes.days.forEach((minutes, day) => {
        expect(minutesOn(week, day)).toBeLessThanOrEqual(minutes);
      });
    }
  });
});

describe('the order within a day', () => {
  test('is that of the method: intervals, tempo, slow, cross, strength', () => {
    const [saturday = [], sunday = []] = daysOf(weekOf(weekend)).slice(5);
    const order = ['intervals', 'tempo', 'slow', 'cross', 'strength'];
    for (const day of [saturday, sunday]) {
      const places = day.map(({ category }) => order.indexOf(category));
      expect(places).toHaveLength(3);
      expect(places).toEqual(ascending(places));
      expect(day.at(-1)?.category).toBe('strength');
    }
  });

  test("is another in a coach's method that says so", async () => {
    const document = defaultDocument();
    const week = { ...objectOf(document['week']), order_in_day: ['strength', 'cross', 'slow', 'tempo', 'intervals'] };
    const plan = valueOf((await plannerOf({ ...document, week })).plan({ week: weekend }));
    for (const day of plan.week?.days?.slice(5) ?? [[]]) expect(day[0]?.category).toBe('strength');
  });
});

describe('what is wanted of a week holds:', () => {
  test('days that are over get nothing', () => {
    const week = weekOf({ ...roomy, passed: 3, sessionsADay: 3 });
    expect(daysOf(week).slice(0, 3)).toEqual([[], [], []]);
    expect(week.wishes.passed).toBe(3);
  });

  test('free days get nothing, and count as rest days', () => {
    const week = weekOf({ ...roomy, free: [1, 4], restDays: 2 });
    expect([daysOf(week)[1], daysOf(week)[4]]).toEqual([[], []]);
    expect(daysOf(week).filter((day) => day.length === 0)).toHaveLength(2);
  });

  test.each([0, 1, 2, 3])('at least %i days rest', (restDays) => {
    const resting = daysOf(weekOf({ ...roomy, restDays })).filter((day) => day.length === 0);
    expect(resting.length).toBeGreaterThanOrEqual(restDays);
  });

  test('a session that is done stays, also on a day off, without minutes or over', () => {
    const done = [{ category: 'strength', minutes: 40, day: 0 }] as const;
    for (const wishes of [{ days: roomy.days.with(0, 0) }, { ...roomy, free: [0] }, { ...roomy, passed: 2 }]) {
      const week = weekOf({ ...wishes, done });
      expect(daysOf(week)[0]).toEqual([{ category: 'strength', minutes: 40 }]);
      expect(placesOf(week, 'strength').length).toBeGreaterThan(0);
    }
  });

  test('a pinned session stays, the others find room', () => {
    const week = weekOf({ ...evenings, pinned: [{ category: 'tempo', minutes: 40, day: 2 }] });
    expect(placesOf(week, 'tempo')).toEqual([[2, 40]]);
  });

  test('the long run is on its day and longer than every other slow session', () => {
    for (const longRun of [0, 3, 6]) {
      const slow = placesOf(weekOf({ ...roomy, longRun }), 'slow');
      const [long] = slow.filter(([day]) => day === longRun);
      const others = slow.filter(([day]) => day !== longRun).map(([, minutes]) => minutes);
      expect(long?.[1]).toBeGreaterThan(Math.max(0, ...others));
    }
  });

  test.each([
    ['strength', [25, 25, 25]],
    ['strength', [15, 60]],
    ['slow', [20, 20, 30]],
    ['tempo', [35]],
    ['intervals', []],
  ] as const)('settled %s of %j minutes is just that', (category, sessions) => {
    expect(weekOf({ ...roomy, sessions: { [category]: sessions } }).sessions[category]).toEqual(sessions);
  });

  test('picked sessions are used where they are an option, settled ones before them', () => {
    const picked = (strength: readonly number[]) => ({ sessions: { strength } });
    expect(weekOf(roomy, picked([25, 25, 25])).sessions.strength).toEqual([25, 25, 25]);
    expect(weekOf({ ...roomy, restDays: 0 }, picked([15])).sessions.strength).not.toEqual([15]);
    expect(weekOf({ ...roomy, restDays: 0 }, picked([15])).cost).toBe(0);
    expect(weekOf({ ...roomy, sessions: { strength: [30, 45] } }, picked([25, 25, 25])).sessions.strength).toEqual([
      30, 45,
    ]);
  });

  test('a day off the step holds what its whole steps hold', () => {
    const sessions = { slow: [65] };
    const slowOn = (minutes: number) => weekOf({ days: [minutes, 62, 62, 62, 62, 62, 62], sessions, longRun: 0 });
    expect(slowOn(64).state).toBe('nothing-fits');
    expect(placesOf(slowOn(65), 'slow')).toEqual([[0, 65]]);
    expect(placesOf(slowOn(69), 'slow')).toEqual([[0, 65]]);
    for (const day of [1, 2, 3, 4, 5, 6]) expect(minutesOn(slowOn(69), day)).toBeLessThanOrEqual(60);
  });
});

describe('a kind without minutes', () => {
  test('has no session, and none is missed', () => {
    const week = weekOf(roomy, { phase: 'off-season' });
    expect([week.sessions.intervals, placesOf(week, 'intervals')]).toEqual([[], []]);
    expect(clashesOf(week)).toEqual([]);
  });
});

describe("a coach's method without a week", () => {
  test('lays sessions by the rules of the built-in method', async () => {
    const { week: _, ...document } = defaultDocument();
    const own = await plannerOf(document);
    expect(own.method.week).toBeUndefined();
    for (const week of [evenings, weekend, roomy]) expect(valueOf(own.plan({ week })).week).toEqual(planned(week).week);
    expect(builtInMethod.categories).toHaveLength(5);
  });
});
