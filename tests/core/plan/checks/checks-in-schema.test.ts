import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '../../../../src/plan/document.js';
import { planSchema } from '../../../../src/plan/plan-schema.js';
import { checkedPlan } from '../../../reference/checks/checks-door.js';
import { patience, runs } from '../../../reference/runs.js';
import { changed, changesOf } from '../../schema/mutations.js';
import { validator } from '../../schema/published.js';

const isPlan = validator('plan');
const days = [60, 60, 60, 60, 60, 90, 120];
const weeks = [[0, 100, 0, 200, 0, 300, 0], [700], [100, 100, 100, 100, 100, 100, 100]];
const told: PlanRequest['checks'] = { age: 66, hoursBefore: 3, longestRun: 40, weeks, efforts: { slow: 2.5 } };
const season = { start: '2026-01-05', weeks: 12, hours: 3, mostHours: 6 };

const requests: Readonly<Record<string, PlanRequest>> = {
  'that nothing is told for': { checks: {} },
  'with everything told': { hours: 7, week: { days }, season, checks: told },
  'of a week into which nothing fits': { hours: 8, week: { days: [30, 0, 0, 0, 0, 0, 0] }, checks: told },
  'of a young athlete': { hours: 18, checks: { age: 15 } },
  'without runs before': { hours: 0.5, phase: 'recovery', checks: { weeks: [[0]], hoursBefore: 0.25, longestRun: 5 } },
};

describe('plan.schema.json describes a plan with checks', () => {
  test.each(Object.entries(requests))('%s', (_, request) => {
    const plan = checkedPlan(request);
    isPlan(plan);
    expect(isPlan.errors).toBeNull();
    expect(v.is(planSchema, plan)).toBe(true);
    expect(JSON.parse(JSON.stringify(plan))).toStrictEqual(plan);
  });

  test(
    'and says the same of changed ones as the schema in TypeScript',
    () => {
      const { load, checks, ...plan } = checkedPlan({ hours: 4, week: { days }, checks: told });
      const part = { load, checks };
      let accepted = 0;
      fc.assert(
        fc.property(changesOf(part), (changes) => {
          const copy: unknown = Object.assign({}, plan, changed(part, changes));
          const isFine = v.is(planSchema, copy);
          if (isFine) accepted += 1;
          expect(isPlan(copy)).toBe(isFine);
        }),
        runs(300, 50_000),
      );
      expect(accepted).toBeGreaterThan(0);
    },
    patience,
  );
});

describe('a check of a plan', () => {
  test('has numbers only, none without bound', () => {
    for (const request of Object.values(requests))
      for (const { value, values, change } of checkedPlan(request).checks)
        for (const each of [value ?? 0, change.amount ?? 0, ...Object.values(values)])
          expect(Number.isFinite(each)).toBe(true);
  });

  test('is always one of the method, in its order, with an amount of 0 exactly where it is in line', () => {
    for (const request of Object.values(requests))
      for (const { id, level, change } of checkedPlan(request).checks)
        if (level !== null) expect([id, change.amount === 0]).toEqual([id, level === 'in-line']);
        else expect(change.amount).toBeNull();
  });
});
