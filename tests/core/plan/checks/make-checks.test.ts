import { describe, expect, test } from 'vitest';
import method from '../../../../shared/methods/default.json' with { type: 'json' };
import { checkedPlan, checkOf } from '../../../reference/checks/checks-door.js';

const weeks = [[0, 100, 0, 200, 0, 300, 0]];
const days = [60, 60, 60, 60, 60, 90, 120];

describe('a check in a plan', () => {
  test.each([90, 105, 120])(
    'holds strength above six hours against the cap of %d minutes that was asked for',
    (cap) => {
      const check = checkOf(checkedPlan({ hours: 10, strengthCap: cap }), 'strength-cap');
      expect(check).toMatchObject({ inLine: { least: null, most: cap }, level: 'in-line', status: 'common practice' });
      expect(check?.value).toBeLessThanOrEqual(cap);
    },
  );

  test('at six hours has no cap', () => {
    expect(checkOf(checkedPlan({ hours: 6 }), 'strength-cap')).toBeUndefined();
    expect(checkOf(checkedPlan({ hours: 6.01 }), 'strength-cap')).toBeDefined();
  });

  test.each([
    ['activity', 'minutes', 'minutes'],
    ['hard-minutes', 'share', 'minutes'],
    ['load', 'share', 'load'],
    ['monotony', 'share', 'times'],
    ['strain', 'share', 'strain'],
    ['hours-rise', 'share', 'hours'],
    ['longest-run', 'share', 'minutes'],
    ['rest-days', 'days', 'days'],
  ])('%s is in %s, and its change in %s', (id, unit, changes) => {
    const plan = checkedPlan({ hours: 4, week: { days }, checks: { weeks, hoursBefore: 3, longestRun: 30 } });
    expect(checkOf(plan, id)).toMatchObject({ unit, change: { unit: changes } });
  });

  test.each([
    ['hard-sessions', 'trained', 'sessions'],
    ['hard-minutes', 'elite', 'minutes'],
  ] as const)('%s of a %s runner changes in %s', (id, level, changes) => {
    const check = checkOf(checkedPlan({ hours: 4, level }), id);
    expect(check).toMatchObject({ level: 'look', change: { unit: changes } });
    expect(check?.change.amount).toBeGreaterThan(0);
  });

  test('carries what its limits in the method rest on, whole', () => {
    for (const level of ['new', 'elite'] as const)
      for (const { id, status, sources, reason, notSaid, group, measure } of checkedPlan({ level, hours: 8 }).checks) {
        const rule = method.checks.list.find((each) => each.id === id);
        const own = rule?.limits.map((each) => ({
          ...{ status: each.status, reason: each.reason, notSaid: each.not_said },
          sources: 'sources' in each ? each.sources : [],
        }));
        expect(own).toContainEqual({ status, reason, notSaid, sources });
        expect([rule?.group, rule?.measure]).toEqual([group, measure]);
      }
  });

  test('of what would have to change: 13.8 minutes of 132 bring 60 of them to 35 %', () => {
    // 60 − 0.35 × 132.
    expect(checkOf(checkedPlan({ hours: 4 }), 'hard-minutes')?.change).toEqual({ amount: 13.8, unit: 'minutes' });
  });

  test('has the load that the plan has', () => {
    const { load, ...plan } = checkedPlan({ hours: 4, week: { days }, checks: { weeks } });
    expect(checkOf(plan, 'load')?.values).toMatchObject({ week_load: load.week, own_load: 600 });
    expect(checkOf(plan, 'monotony')?.values).toMatchObject({ load_monotony: load.spread?.monotony });
  });
});
