import { describe, expect, test } from 'vitest';
import { planWeek, type Plan, type PlanRequest } from '../../../src/plan.js';
import { valueOf } from '../training/method/documents.js';

const planOf = (request: PlanRequest): Plan => valueOf(planWeek(request));

// 4 h in season are 72 minutes of strength (common practice); sessions of 15 to 60 minutes may miss it by 10.
describe('picked sessions', () => {
  test('are kept while they fit the minutes', () => {
    for (const picked of [
      [30, 45],
      [25, 25, 25],
      [35, 35],
      [20, 20, 30],
      [15, 15, 15, 15, 15],
    ])
      expect(planOf({ hours: 4, sessions: { strength: picked } }).sessions.strength).toEqual(picked);
  });

  test('are kept when other inputs change and they still fit', () => {
    const sessions = { strength: [30, 45] };
    expect(planOf({ hours: 4.25, sessions }).sessions.strength).toEqual([30, 45]);
    expect(planOf({ hours: 4, event: '10k', sessions }).sessions.strength).toEqual([30, 45]);
  });

  test('are listed shortest first', () => {
    expect(planOf({ hours: 4, sessions: { strength: [45, 30] } }).sessions.strength).toEqual([30, 45]);
    expect(planOf({ hours: 4, sessions: { strength: [30, 20, 25] } }).sessions.strength).toEqual([20, 25, 30]);
  });

  test.each([
    ['a duration that is no step', [32, 40]],
    ['a session too long', [75]],
    ['a session too short', [10, 30, 30]],
    ['too few minutes in all', [30, 30]],
    ['too many minutes in all', [45, 45]],
    ['none', []],
    ['no number', [NaN, 45]],
    ['negative ones', [-30, 60, 45]],
    ['one without end', [Infinity]],
  ])('give way to the best option where they do not fit: %s', (_, picked) => {
    const plan = planOf({ hours: 4, sessions: { strength: picked } });
    expect(plan.sessions.strength).toEqual(plan.options.strength[0]);
    expect(plan.notices.map(({ code, category }) => [code, category])).toEqual([['pick-dropped', 'strength']]);
  });

  test('of one category leave the others alone', () => {
    const { sessions: plain } = planOf({ hours: 4 });
    expect(planOf({ hours: 4, sessions: { strength: [25, 25, 25] } }).sessions).toEqual({
      ...plain,
      strength: [25, 25, 25],
    });
  });

  test('are not remembered by the planner', () => {
    const plain = JSON.stringify(planOf({ hours: 4 }));
    planOf({ hours: 4, sessions: { strength: [25, 25, 25] } });
    expect(JSON.stringify(planOf({ hours: 4 }))).toBe(plain);
  });
});

describe('sessions without a pick', () => {
  test('are the best option, none where a category has no minutes', () => {
    const { options, sessions } = planOf({ hours: 4, phase: 'off-season' });
    expect(sessions.strength).toEqual(options.strength[0]);
    expect([options.intervals, sessions.intervals]).toEqual([[], []]);
  });
});
