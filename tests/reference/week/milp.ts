import loadHighs from 'highs';
import { byCategory, categoryIds } from '../../../src/training/method/ids.js';
import type { KindNeed, Laid, WeekProblem } from '../../../src/training/week/week-problem.js';
import { LinearProgramme, type Term } from './linear-programme.js';
import { demandRules, days, hasSession, stepsOf } from './milp-rules.js';
import { costTerms } from './milp-clashes.js';

/** A layout of least cost, as the general solver finds it. */
export interface Solved {
  readonly cost: number;
  readonly laid: Laid;
}

/**
 * The week as a mixed integer programme for a general solver (HiGHS), written from the design: a session of a kind on a
 * day is a variable that is 0 or 1, its length a whole number, and every clash costs at least what its sessions imply.
 */
export async function createWeekSolver() {
  const highs = await loadHighs();

  /** The least value of a sum, and the layout that has it; null where nothing fits. */
  function least(programme: LinearProgramme, terms: readonly Term[]): { value: number; laid: Laid } | null {
    const solution = highs.solve(programme.minimising(terms), { mip_rel_gap: 0, mip_abs_gap: 0.5 });
    if (solution.Status === 'Infeasible') return null;
    if (solution.Status !== 'Optimal') throw new Error(`the solver ends with ${solution.Status}`);
    const { Columns: columns } = solution;
    return {
      value: Math.round(solution.ObjectiveValue),
      laid: byCategory((category) => days.map((day) => Math.round(columns[stepsOf(category, day)]?.Primal ?? NaN))),
    };
  }

  return {
    /** A layout of least cost; null where nothing fits. */
    leastCost(problem: WeekProblem): Solved | null {
      const programme = new LinearProgramme();
      demandRules(programme, problem);
      const solved = least(programme, costTerms(programme, problem));
      return solved && { cost: solved.value, laid: solved.laid };
    },

    /** The fewest sessions of the earlier layout that leave their days in any layout of just this cost. */
    fewestMoves(problem: WeekProblem, cost: number): number {
      const programme = new LinearProgramme();
      demandRules(programme, problem);
      programme.demand(costTerms(programme, problem), '<=', cost);
      const earlier = categoryIds.flatMap((category) =>
        days
          .filter((day) => (((problem.before?.[category] ?? 0) >> day) & 1) === 1)
          .map((day) => hasSession(category, day)),
      );
      const solved = least(
        programme,
        earlier.map((name) => [-1, name]),
      );
      if (!solved) throw new Error(`no layout costs ${cost}`);
      return earlier.length + solved.value;
    },

    /**
     * The least sum of squares of lengths that a layout of no more cost can have, with the same days and sums, and settled
     * sessions where they are.
     */
    leastSquares(problem: WeekProblem, laid: Laid, cost: number): number {
      const programme = new LinearProgramme();
      demandRules(programme, problem);
      programme.demand(costTerms(programme, problem), '<=', cost);
      const squares = problem.kinds.flatMap((need) => demandOutline(programme, need, laid[need.category]));
      const solved = least(
        programme,
        squares.map((name) => [1, name]),
      );
      if (!solved) throw new Error('the layout itself is one');
      return solved.value;
    },
  };
}

/** Holds a kind to its days and its sum; gives variables that are no smaller than the squares of its lengths. */
function demandOutline(
  programme: LinearProgramme,
  { category, sessions }: KindNeed,
  lengths: readonly number[],
): string[] {
  const sum = lengths.reduce((total, steps) => total + steps, 0);
  programme.demand(
    days.map((day) => [1, stepsOf(category, day)]),
    '=',
    sum,
  );
  return days.map((day) => {
    if (sessions) programme.demand([[1, stepsOf(category, day)]], '=', lengths[day] ?? 0);
    programme.demand([[1, hasSession(category, day)]], '=', (lengths[day] ?? 0) > 0 ? 1 : 0);
    const square = programme.whole(`square_${category}_${day}`, sum * sum);
    // Between two whole numbers the line through their squares is below no whole number's square.
    for (let below = 0; below < sum; below += 1)
      programme.demand(
        [
          [1, square],
          [-(2 * below + 1), stepsOf(category, day)],
        ],
        '>=',
        -below * (below + 1),
      );
    return square;
  });
}
