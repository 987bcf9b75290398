import { conflictIn } from '../../training/week/conflict.js';
import { lay } from '../../training/week/lay.js';
import { waysOut } from '../../training/week/ways-out.js';
import type { Laid, WeekProblem } from '../../training/week/week-problem.js';
import type { Conflict } from '../../training/week/wish.js';

/** How far a week has been solved. */
export type Solution =
  | { readonly state: 'laid'; readonly laid: Laid }
  /** The search goes on, or what would help is still being looked for. */
  | { readonly state: 'looking' }
  | { readonly state: 'nothing-fits'; readonly conflict: Conflict };

export type WeekSolver = (problem: WeekProblem) => Solution;

/** Solves a week, however long it takes. */
export const solveWeek: WeekSolver = (problem) => {
  const laid = lay(problem);
  return laid ? { state: 'laid', laid } : { state: 'nothing-fits', conflict: explain(problem) };
};

/** Why nothing fits, and what would help. */
export function explain(problem: WeekProblem): Conflict {
  const wishes = conflictIn(problem);
  return { wishes, waysOut: waysOut(problem, wishes) };
}

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
