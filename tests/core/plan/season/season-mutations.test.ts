import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import { problemCodes } from '../../../../src/problem.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { patience, runs } from '../../../reference/runs.js';
import { anySeasons } from '../../../reference/season/random-seasons.js';
import { changed, changesOf } from '../../schema/mutations.js';
import { validator } from '../../schema/published.js';

const isPlan = validator('plan');
const planner = builtInPlanner();
const mutated = anySeasons(builtInMethod).chain((season) =>
  changesOf(season).map((changes) => changed(season, changes)),
);

describe('a season changed at random', { timeout: patience }, () => {
  test('gives a plan that is as its schema says, or typed problems, never an exception', () => {
    const counts = { plans: 0, refused: 0 };
    fc.assert(
      fc.property(mutated, (season) => {
        const before = structuredClone(season);
        const outcome = planner.plan({ hours: 4, season });
        expect(season).toStrictEqual(before);
        counts[outcome.ok ? 'plans' : 'refused'] += 1;
        if (outcome.ok) {
          expect([isPlan(outcome.value), isPlan.errors]).toEqual([true, null]);
          return;
        }
        expect(outcome.problems.length).toBeGreaterThan(0);
        for (const { path, code, value, allowed } of outcome.problems) {
          expect(path === 'season' || path.startsWith('season.')).toBe(true);
          expect(problemCodes).toContain(code);
          expect(['undefined', 'object', 'number', 'string', 'boolean']).toContain(typeof value);
          expect(() => JSON.stringify({ value, allowed })).not.toThrow();
        }
      }),
      runs(1000, 100_000),
    );
    expect(Math.min(counts.plans, counts.refused)).toBeGreaterThan(20);
  });
});
