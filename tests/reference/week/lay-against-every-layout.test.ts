import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lay } from '../../../src/training/week/lay.js';
import type { Laid, WeekProblem } from '../../../src/training/week/week-problem.js';
import { patience, runs } from '../runs.js';
import { enumerate, layoutsOf } from './exhaustive.js';
import { createWeekSolver } from './milp.js';
import { smallWeeks } from './small-weeks.js';
import { costOf, faultsOf, movesOf, squaresOf } from './week-check.js';

const solver = await createWeekSolver();

describe('a small week', () => {
  it(
    'is laid as well as the best of all its layouts: least cost, then fewest moves',
    () => {
      fc.assert(
        fc.property(smallWeeks, (problem) => {
          const laid = lay(problem);
          expect(laid && { cost: costOf(problem, laid), moves: movesOf(problem, laid) }).toEqual(enumerate(problem));
          if (laid) expect(faultsOf(problem, laid)).toEqual([]);
        }),
        runs(400, 20_000),
      );
    },
    patience,
  );

  it(
    'is laid as evenly as its days and sums allow',
    () => {
      fc.assert(
        fc.property(smallWeeks, (problem) => {
          const laid = lay(problem);
          if (laid) expect(squaresOf(laid)).toBe(Math.min(...alike(problem, laid).map(squaresOf)));
        }),
        runs(400, 20_000),
      );
    },
    patience,
  );

  it(
    'has the same best layouts for the general solver',
    () => {
      fc.assert(
        fc.property(smallWeeks, (problem) => {
          const best = enumerate(problem);
          const solved = solver.leastCost(problem);
          expect(solved && solved.cost).toBe(best && best.cost);
          if (solved && best) expect(solver.fewestMoves(problem, solved.cost)).toBe(best.moves);
        }),
        runs(100, 1000),
      );
    },
    patience,
  );
});

/** Every layout that has the same days and sums, the same settled sessions, and costs no more. */
function alike(problem: WeekProblem, laid: Laid): Laid[] {
  const cost = costOf(problem, laid);
  const outline = outlineOf(problem, laid);
  return layoutsOf(problem).filter((other) => outlineOf(problem, other) === outline && costOf(problem, other) <= cost);
}

function outlineOf({ kinds }: WeekProblem, laid: Laid): string {
  const outlines = kinds.map(({ category, sessions }) => {
    const steps = laid[category];
    return sessions ? [] : [steps.map((each) => each > 0), steps.reduce((sum, each) => sum + each, 0)];
  });
  const settled = kinds.map(({ category, sessions }) => (sessions ? laid[category] : []));
  return JSON.stringify([outlines, settled]);
}
