import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lay } from '../../../src/training/week/lay.js';
import { patience, runs } from '../runs.js';
import { createWeekSolver } from './milp.js';
import { randomWeeks } from './random-weeks.js';
import { costOf, faultsOf, squaresOf } from './week-check.js';

const solver = await createWeekSolver();

describe('a laid week', () => {
  it(
    'costs as little as a general solver can make it, and does not fit where that finds nothing',
    () => {
      fc.assert(
        fc.property(randomWeeks, (problem) => {
          const laid = lay(problem);
          const solved = solver.leastCost(problem);
          expect(laid && costOf(problem, laid)).toBe(solved && solved.cost);
          if (laid) expect(faultsOf(problem, laid)).toEqual([]);
          if (solved) expect(faultsOf(problem, solved.laid)).toEqual([]);
          if (solved) expect(costOf(problem, solved.laid)).toBe(solved.cost);
        }),
        runs(200, 1000),
      );
    },
    2 * patience,
  );

  it(
    'is as even as its days and sums allow',
    () => {
      fc.assert(
        fc.property(randomWeeks, (problem) => {
          const laid = lay(problem);
          if (laid) expect(squaresOf(laid)).toBe(solver.leastSquares(problem, laid, costOf(problem, laid)));
        }),
        runs(100, 1000),
      );
    },
    2 * patience,
  );
});
