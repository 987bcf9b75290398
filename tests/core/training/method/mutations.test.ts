import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createPlanner, type Plan, type Planner, type PlanRequest } from '../../../../src/plan.js';
import { problemCodes, type Problem } from '../../../../src/problem.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import { patience, runs } from '../../../reference/runs.js';
import { globalsNow } from '../../sheet/globals.js';
import { mutatedDocuments } from './mutated-documents.js';

const requests: readonly PlanRequest[] = [
  {},
  { hours: 8 },
  { hours: 1, phase: 'recovery' },
  { hours: 12.3, level: 'new', event: 'longer' },
];

function checkProblems(problems: readonly Problem[]): void {
  expect(problems.length).toBeGreaterThan(0);
  for (const { path, code, allowed, value } of problems) {
    expect(typeof path).toBe('string');
    expect(problemCodes).toContain(code);
    expect(Object.getPrototypeOf(allowed)).toBe(Object.prototype);
    expect(['undefined', 'object', 'number', 'string', 'boolean']).toContain(typeof value);
    expect(() => JSON.stringify({ allowed, value })).not.toThrow();
  }
}

function checkPlan(plan: Plan): void {
  const sum = categoryIds.reduce((total, id) => total + plan.rounded[id], 0);
  expect(sum).toBe(plan.total.rounded);
  expect(Math.min(...categoryIds.flatMap((id) => [plan.minutes[id], plan.rounded[id]]))).toBeGreaterThanOrEqual(0);
  // NaN and Infinity would be null in JSON, and -0 would be 0.
  expect(numbersIn(plan).filter((number) => !Number.isFinite(number) || Object.is(number, -0))).toEqual([]);
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** A plan or problems; one if it was a plan, else none. */
function check(planner: Planner, request: PlanRequest): number {
  const outcome = planner.plan(request);
  if (outcome.ok) checkPlan(outcome.value);
  else checkProblems(outcome.problems);
  return outcome.ok ? 1 : 0;
}

describe('a method document changed at random', { timeout: patience }, () => {
  test('gives plans or typed problems, never an exception, and leaves the language as it was', async () => {
    await createPlanner(fc.sample(mutatedDocuments, { numRuns: 1, seed: 1 })[0]); // what is loaded on demand is there
    const before = globalsNow();
    let [accepted, refused] = [0, 0];
    await fc.assert(
      fc.asyncProperty(mutatedDocuments, fc.constantFrom(...requests), async (document, request) => {
        const outcome = await createPlanner(document);
        if (outcome.ok) accepted += check(outcome.value, request);
        else checkProblems(outcome.problems);
        refused += outcome.ok ? 0 : 1;
      }),
      runs(5000, 100_000),
    );
    expect(globalsNow()).toStrictEqual(before);
    // Both ways are taken often: the changes are neither too wild nor too tame.
    expect(accepted).toBeGreaterThan(refused / 10);
    expect(refused).toBeGreaterThan(accepted / 10);
  });
});
