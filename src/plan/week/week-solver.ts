import { conflictIn } from '../../training/week/conflict.js';
import { laidOut } from '../../training/week/lay.js';
import { WeekSearch } from '../../training/week/search.js';
import { allAtOnce, type Steps } from '../../training/week/steps.js';
import { waysOut } from '../../training/week/ways-out.js';
import type { Laid, WeekProblem } from '../../training/week/week-problem.js';
import type { Conflict } from '../../training/week/wish.js';

/** How far a week has been solved. */
export type Solution =
  | { readonly state: 'laid'; readonly laid: Laid }
  | { readonly state: 'looking' }
  /** The conflict is null while it is being looked for. */
  | { readonly state: 'nothing-fits'; readonly conflict: Conflict | null };

export type WeekSolver = (problem: WeekProblem) => Solution;

/** Nodes of the search that make a step: about a millisecond. */
const nodesInAStep = 200;

/** Solves a week step by step: whether something fits, then, where nothing does, why and what would help. */
export function* solving(problem: WeekProblem, tell: (solution: Solution) => void = () => undefined): Steps<Solution> {
  const search = new WeekSearch(problem);
  while (!search.run(nodesInAStep)) yield;
  if (search.best) return { state: 'laid', laid: laidOut(problem, search.best) };
  tell({ state: 'nothing-fits', conflict: null });
  yield;
  const wishes = yield* conflictIn(problem);
  return { state: 'nothing-fits', conflict: { wishes, waysOut: yield* waysOut(problem, wishes) } };
}

/** Solves a week, however long it takes. */
export const solveWeek: WeekSolver = (problem) => allAtOnce(solving(problem));

/** What was worked out once is not worked out again; the oldest goes where there are too many. */
export function remembering<T>(solve: (problem: WeekProblem) => T, most = 500): (problem: WeekProblem) => T {
  const known = new Map<string, T>();
  return (problem) => {
    const key = JSON.stringify(problem);
    const found = known.get(key);
    if (found !== undefined) return found;
    const solution = solve(problem);
    known.set(key, solution);
    const [oldest] = known.keys();
    if (known.size > most && oldest !== undefined) known.delete(oldest);
    return solution;
  };
}
