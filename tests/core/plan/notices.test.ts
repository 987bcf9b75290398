import { describe, expect, test } from 'vitest';
import { builtInPlanner, type Notice, type Plan, type Planner, type PlanRequest } from '../../../src/plan.js';
import { documentWith, plannerOf, valueOf } from '../training/method/documents.js';

const planner = builtInPlanner();
const planOf = (request: PlanRequest, by: Planner = planner): Plan => valueOf(by.plan(request));
const noticesOf = (code: Notice['code'], request: PlanRequest, by?: Planner): Notice[] =>
  planOf(request, by).notices.filter((notice) => notice.code === code);

describe('total-rounded', () => {
  const said = { code: 'total-rounded', level: 'note' };

  test.each([
    [4.1, 246, 245],
    [4.125, 247.5, 250],
    [0.51, 30.6, 30],
    [6.0001, 360.006, 360],
  ])('%d hours are %d minutes, which are rounded to %d', (hours, exact, rounded) => {
    const [notice, ...others] = noticesOf('total-rounded', { hours });
    expect(others).toEqual([]);
    expect(notice).toEqual({ ...said, values: { exact: expect.closeTo(exact, 9) as unknown, rounded } });
  });

  test.each([0.5, 4, 4.25, 19.75, 20])('%d hours are whole fives, of which nothing is said', (hours) => {
    expect(noticesOf('total-rounded', { hours })).toEqual([]);
  });
});

describe('every-second-week', () => {
  // 1.5 h in season are 9 minutes of intervals, 13.5 of tempo and of cross-training; all shorter than 20 minutes.
  test('offers what is too short for every week as one session every second, a useful one at least', () => {
    const said = { code: 'every-second-week', level: 'note' };
    expect(noticesOf('every-second-week', { hours: 1.5 })).toEqual([
      { ...said, rule: 'intervals-too-small', category: 'intervals', values: { moved: 9, session: 20 } },
      { ...said, rule: 'cross-too-small', category: 'cross', values: { moved: 13.5, session: 25 } },
    ]);
  });

  test('is said of nothing that is long enough, nor of what has no minutes', () => {
    expect(noticesOf('every-second-week', { hours: 4 })).toEqual([]);
    expect(noticesOf('every-second-week', { hours: 4, phase: 'off-season' })).toEqual([]);
  });

  test('is not said where a rule gives minutes instead of taking them', async () => {
    const generous = await plannerOf(documentWith('rules[9].value', 'value + 10'));
    expect(planOf({ hours: 2 }, generous).rules.find(({ id }) => id === 'cross-too-small')?.acted).toBe(true);
    expect(noticesOf('every-second-week', { hours: 2 }, generous).map(({ category }) => category)).toEqual([
      'intervals',
    ]);
  });
});

describe('pick-dropped', () => {
  test('names the category whose picked sessions no longer fit, and its minutes', () => {
    const request = { sessions: { strength: [30, 45] } };
    expect(noticesOf('pick-dropped', { ...request, hours: 4 })).toEqual([]);
    expect(noticesOf('pick-dropped', { ...request, hours: 6 })).toEqual([
      { code: 'pick-dropped', level: 'note', category: 'strength', values: { minutes: 110 } },
    ]);
  });
});

describe('quantity-failed', () => {
  const quantities = ['1 / (weekly_hours - 5)', 'load + 1'].map((formula, index) => ({
    ...{ id: ['load', 'more_load'][index], name: 'Load', status: 'assumption' },
    formula,
  }));

  test('names a quantity of the coach that has no value, and what depends on it; the plan stands', async () => {
    const own = await plannerOf(documentWith('quantities', quantities));
    const said = { code: 'quantity-failed', level: 'caution', values: {} };
    expect(noticesOf('quantity-failed', { hours: 5 }, own)).toEqual([
      { ...said, quantity: 'load' },
      { ...said, quantity: 'more_load' },
    ]);
    expect(planOf({ hours: 5 }, own).derivations['load']).toMatchObject({
      value: null,
      error: { code: 'division-by-zero' },
    });
    expect(noticesOf('quantity-failed', { hours: 6 }, own)).toEqual([]);
  });
});

describe('rule', () => {
  const ids = (plan: Plan): (string | undefined)[] =>
    plan.notices.flatMap((each) => (each.code === 'rule' ? [each.rule] : []));

  test.each<[request: PlanRequest, rules: string[]]>([
    [{ hours: 4 }, []],
    [{ hours: 2.75 }, ['few-hours']],
    [{ hours: 3 }, []],
    [{ hours: 6 }, []],
    [{ hours: 6.25, event: '5k' }, ['many-hours', 'short-event']],
    [{ hours: 4, event: 'none' }, ['no-event']],
    [{ hours: 4, event: 'longer' }, ['long-event']],
    [{ hours: 0.5, phase: 'off-season' }, ['few-hours', 'slow-too-small']],
  ])('%j: %j, in the order of the method', (request, rules) => {
    expect(ids(planOf(request))).toEqual(rules);
  });

  test('has the level that the method gives it', async () => {
    const careful = await plannerOf(documentWith('rules[2].level', 'caution'));
    expect(noticesOf('rule', { hours: 1 }, careful)[0]).toEqual({
      code: 'rule',
      level: 'caution',
      rule: 'few-hours',
      values: {},
    });
  });

  test.each([
    ['1', true],
    ['-1', true],
    ['0', false],
  ])('holds like any condition: %s is %s', async (when, isSaid) => {
    const always = await plannerOf(documentWith('rules[2].when', when));
    expect(ids(planOf({ hours: 4 }, always))).toEqual(isSaid ? ['few-hours'] : []);
  });

  test('whose condition has no value says nothing, but that it failed', async () => {
    const broken = await plannerOf(documentWith('rules[2].when', '1 / (weekly_hours - 4)'));
    const { notices } = planOf({ hours: 4 }, broken);
    expect(notices).toEqual([{ code: 'quantity-failed', level: 'caution', quantity: 'notice_few_hours', values: {} }]);
  });
});
