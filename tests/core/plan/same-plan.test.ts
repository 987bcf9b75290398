import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtInPlanner, type PlanRequest } from '../../../src/plan.js';
import { anyAthletes } from '../../reference/athletes.js';
import { patience, runs } from '../../reference/runs.js';

const picks = fc.record(
  {
    strength: fc.array(fc.constantFrom(15, 30, 45), { maxLength: 4 }),
    slow: fc.array(fc.constantFrom(20, 45, 90), { maxLength: 4 }),
  },
  { requiredKeys: [] },
);
const requests: fc.Arbitrary<PlanRequest> = fc
  .tuple(anyAthletes, picks)
  .map(([athlete, sessions]) => ({ ...athlete, sessions }));
const faulty = fc.constantFrom<PlanRequest>({ hours: 1000 }, { hours: 5, strengthCap: 0 });

describe('the same request always gives the same plan', { timeout: patience }, () => {
  test('whatever was asked before', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof({ weight: 5, arbitrary: requests }, faulty), { minLength: 1, maxLength: 5 }),
        (asked) => {
          const planner = builtInPlanner();
          const answers = asked.map((request) => JSON.stringify(planner.plan(request)));
          expect(asked.map((request) => JSON.stringify(builtInPlanner().plan(request)))).toEqual(answers);
          expect(asked.map((request) => JSON.stringify(planner.plan(request)))).toEqual(answers);
        },
      ),
      runs(15, 5000),
    );
  });

  test('and earlier plans stay as they were', () => {
    const planner = builtInPlanner();
    const plan = planner.plan({ hours: 4 });
    const before = JSON.stringify(plan);
    for (const hours of [0.5, 8, 20]) planner.plan({ hours, phase: 'taper' });
    expect(JSON.stringify(plan)).toBe(before);
  });
});

describe('a plan', () => {
  test('survives JSON, derivations included', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const outcome = builtInPlanner().plan(request);
        expect(JSON.parse(JSON.stringify(outcome))).toStrictEqual(outcome);
      }),
      runs(50, 10_000),
    );
  });
});
