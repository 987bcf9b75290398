import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { byCategory, categoryIds } from '../../../src/training/method/ids.js';
import { lay } from '../../../src/training/week/lay.js';
import type { FixedSession, Laid, WeekProblem } from '../../../src/training/week/week-problem.js';
import { patience, runs } from '../runs.js';
import { createWeekSolver } from './milp.js';
import { randomWeeks } from './random-weeks.js';
import { costOf, faultsOf, movesOf } from './week-check.js';

const solver = await createWeekSolver();

/** What happens in the middle of a week: it is so far gone, of what was planned some is missed, and a day falls out. */
const middles = fc.record({ today: fc.nat(4), missed: fc.nat(9), fallenOut: fc.integer({ min: 1, max: 7 }) });
type Middle = typeof middles extends fc.Arbitrary<infer M> ? M : never;

/** Weeks that were laid, and must be laid again. */
const weeksAgain = fc
  .record({ problem: randomWeeks, middle: middles })
  .map(({ problem, middle }) => ({ problem, middle, laid: lay(problem) }))
  .filter(({ laid }) => laid !== null)
  .map(({ problem, middle, laid }) => (laid ? again(problem, laid, middle) : problem))
  .filter((problem) => lay(problem) !== null);

function again(problem: WeekProblem, laid: Laid, { today, missed, fallenOut }: Middle): WeekProblem {
  const isOver = (day: number): boolean => day < today;
  const planned = categoryIds.flatMap((category) =>
    laid[category].flatMap((steps, day): FixedSession[] =>
      steps > 0 && isOver(day) ? [{ category, steps, day, isDone: true }] : [],
    ),
  );
  const done = planned.filter((_, index) => index !== missed);
  return {
    ...problem,
    longRun: null,
    passed: 2 ** today - 1,
    room: problem.room.map((steps, day) => (day === today - 1 + fallenOut ? 0 : steps)),
    fixed: [...problem.fixed.filter(({ day }) => !isOver(day)), ...done],
    before: daysOf(laid),
  };
}

const daysOf = (laid: Laid): NonNullable<WeekProblem['before']> =>
  byCategory((category) => laid[category].reduce((days, steps, day) => days + (steps > 0 ? 2 ** day : 0), 0));

describe('a week laid again', () => {
  it(
    'costs as little as can be and moves as few sessions as that allows; what is done stays',
    () => {
      fc.assert(
        fc.property(weeksAgain, (problem) => {
          const laid = lay(problem);
          const solved = solver.leastCost(problem);
          if (!laid || !solved) throw new Error('such weeks can be laid');
          expect(costOf(problem, laid)).toBe(solved.cost);
          expect(movesOf(problem, laid)).toBe(solver.fewestMoves(problem, solved.cost));
          expect(faultsOf(problem, laid)).toEqual([]);
          for (const { category, day, steps } of problem.fixed) expect(laid[category][day]).toBe(steps);
        }),
        runs(40, 400),
      );
    },
    2 * patience,
  );

  it(
    'costs what it would without the earlier layout, and moves nothing where nothing has changed',
    () => {
      fc.assert(
        fc.property(randomWeeks, fc.record(byCategory(() => fc.nat(127))), (problem, before) => {
          const laid = lay(problem);
          const other = lay({ ...problem, before });
          expect(other && costOf(problem, other)).toBe(laid && costOf(problem, laid));
          if (!laid || !other) return;
          const same = { ...problem, before: daysOf(other) };
          const still = lay(same);
          expect(still && movesOf(same, still)).toBe(0);
        }),
        runs(200, 5000),
      );
    },
    // A random week in a few hundred takes seconds, and it is laid three times.
    4 * patience,
  );
});
