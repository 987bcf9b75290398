import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '../../../src/plan/document.js';
import { categoryIds } from '../../../src/training/method/ids.js';
import { anyAthletes } from '../athletes.js';
import { patience, runs } from '../runs.js';
import { checkedPlan, checkOf, type CheckedPlan } from './checks-door.js';
import { expectedFacts, expectedValue, spreadOf } from './facts-reference.js';

const plain = { noNullPrototype: true } as const;
const dayMinutes = fc.constantFrom(0, 0, 30, 45, 60, 60, 90, 120, 180);
const days = fc.option(fc.array(dayMinutes, { minLength: 7, maxLength: 7 }), { nil: undefined });
const load = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 900 }));
const weeks = fc.array(
  fc.oneof(
    fc.array(load, { minLength: 7, maxLength: 7 }),
    load.map((each) => [each]),
  ),
  { maxLength: 6 },
);
const efforts = fc
  .subarray([...categoryIds])
  .chain((ids) =>
    fc.record(
      Object.fromEntries(ids.map((id) => [id, fc.integer({ min: 0, max: 20 }).map((half) => half / 2)])),
      plain,
    ),
  );
const told = fc.record(
  {
    age: fc.option(fc.constantFrom(5, 17, 18, 40, 64, 65, 110)),
    hoursBefore: fc.option(fc.integer({ min: 1, max: 80 }).map((quarters) => quarters / 4)),
    longestRun: fc.option(fc.integer({ min: 5, max: 240 })),
    weeks,
    efforts,
  },
  plain,
);

type Told = typeof told extends fc.Arbitrary<infer T> ? T : never;

function checkAgainst(plan: CheckedPlan, given: Told): void {
  const facts = expectedFacts(plan, given);
  for (const { id, value, level, values, missing } of plan.checks) {
    const expected = expectedValue(id, facts);
    if (expected === null) expect([id, value, level]).toEqual([id, null, null]);
    else
      expect([id, Math.abs((value ?? NaN) - expected) <= 1e-9 * Math.max(1, Math.abs(expected))]).toEqual([id, true]);
    for (const [fact, each] of Object.entries(values)) {
      expect([id, fact, each]).toEqual([id, fact, expect.closeTo(facts[fact] ?? NaN, 6)]);
    }
    if (missing !== null) expect([id, missing, facts[missing] ?? null]).toEqual([id, missing, null]);
  }
}

function checkLoad(
  { load: { days: daily, week, spread, own, efforts: used }, week: laid }: CheckedPlan,
  given: Told,
): void {
  expect(used).toEqual({ slow: 3, tempo: 6, intervals: 8, cross: 3, strength: 5, ...given.efforts });
  expect(Number.isInteger(week)).toBe(true);
  const facts = { own_load: own.load, own_monotony: own.monotony, own_strain: own.strain };
  const spreads = given.weeks.filter((each) => each.length === 7).flatMap((each) => spreadOf(each) ?? []);
  const totals = given.weeks.map((each) => each.reduce((sum, one) => sum + one, 0));
  expect(facts.own_load === null).toBe(totals.length === 0);
  if (totals.length > 0) {
    const mean = totals.reduce((sum, each) => sum + each, 0) / totals.length;
    expect(Math.abs((own.load ?? NaN) - mean)).toBeLessThanOrEqual(0.5);
  }
  expect(own.monotony ?? 0).toBeCloseTo(Math.max(0, ...spreads.map(({ monotony }) => monotony)), 9);
  expect(own.strain ?? 0).toBeCloseTo(Math.max(0, ...spreads.map(({ strain }) => strain)), 5);
  expect([daily === null, spread === null]).toEqual([!laid?.days, !laid?.days]);
  if (!daily || !spread) return;
  expect([spread.week, week]).toEqual(Array(2).fill(daily.reduce((sum, each) => sum + each, 0)));
}

describe('checks and load of any plan', { timeout: patience }, () => {
  test('are those of plain code', () => {
    fc.assert(
      fc.property(anyAthletes, days, told, (athlete, given, checks) => {
        const week: PlanRequest['week'] = given && { days: given };
        const plan = checkedPlan({ ...athlete, week, checks });
        checkAgainst(plan, checks);
        checkLoad(plan, checks);
      }),
      runs(60, 5_000),
    );
  });

  test('say the same load for the week and for its days together', () => {
    fc.assert(
      fc.property(anyAthletes, efforts, (athlete, own) => {
        const { load: all } = checkedPlan({
          ...athlete,
          week: { days: [120, 120, 120, 120, 120, 180, 180] },
          checks: { efforts: own },
        });
        if (all.spread) expect(all.spread.week).toBe(all.week);
      }),
      runs(30, 2_000),
    );
  });

  test('say it so where days come to halves: each rounded by itself adds up to something else', () => {
    const { load: all, week } = checkedPlan({
      ...{ hours: 97 / 24, phase: 'off-season', level: 'new', event: 'none', strengthCap: 90 },
      week: { days: [120, 120, 120, 120, 120, 180, 180] },
      checks: { efforts: { strength: 3.5 } },
    });
    const halves = week?.days?.filter((day) =>
      day.some(({ category, minutes }) => category === 'strength' && minutes % 2),
    );
    expect(halves?.length).toBeGreaterThan(1);
    expect(all.spread?.week).toBe(all.week);
  });

  test('make no difference to the plan itself', () => {
    fc.assert(
      fc.property(anyAthletes, told, (athlete, checks) => {
        const { checks: _, load: __, ...plan } = checkedPlan({ ...athlete, checks });
        const { checks: ___, load: ____, ...same } = checkedPlan({ ...athlete, checks: { age: 30 } });
        expect(plan).toEqual(same);
      }),
      runs(100, 5_000),
    );
  });
});

describe('the built-in division at four hours', () => {
  const plan = checkedPlan({ hours: 4 });

  test('has 36 minutes of tempo and 24 of intervals in 132 of running: 45.45 %', () => {
    const check = checkOf(plan, 'hard-minutes');
    expect(check?.values).toMatchObject({ tempo_minutes: 36, intervals_minutes: 24, running_minutes: 132 });
    expect(check?.value).toBeCloseTo(60 / 132, 12);
    expect(check?.level).toBe('look');
  });
});
