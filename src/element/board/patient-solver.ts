import type { Steps } from '../../training/week/steps.js';
import type { WeekProblem } from '../../training/week/week-problem.js';
import { solving, type Solution } from '../../plan/week/week-solver.js';
import { inSlices, runUntil } from './in-slices.js';
import { inWorker } from './in-worker.js';

/** What a week may take of the task in which it is asked for; a frame has 16 milliseconds. */
const patienceMilliseconds = 10;
/** Weeks kept, for moving back and forth. */
const mostKnown = 300;

/**
 * Solves weeks without keeping the page waiting: a week that takes longer than a part of a frame goes on elsewhere, and
 * `arrived` is called when it is there. Only the week asked for last goes on; another one asked for cancels it.
 */
export class PatientSolver {
  readonly #known = new Map<string, Solution>();
  readonly #arrived: () => void;
  #going: { readonly key: string; readonly stop: () => void } | null = null;

  constructor(arrived: () => void) {
    this.#arrived = arrived;
  }

  readonly solve = (problem: WeekProblem): Solution => {
    const key = JSON.stringify(problem);
    const known = this.#known.get(key);
    if (known) return known;
    if (this.#going?.key === key) return looking;
    let solution: Solution = looking;
    const steps = solving(problem, (found) => {
      solution = found;
    });
    const end = performance.now() + patienceMilliseconds;
    const done = runUntil(steps, end);
    if (done) return this.#keep(key, done);
    this.#goOn(key, problem, steps);
    // That nothing fits is worth knowing before it is known why.
    return solution;
  };

  /** Leaves what is not ready. */
  stop(): void {
    this.#going?.stop();
    this.#going = null;
  }

  #goOn(key: string, problem: WeekProblem, steps: Steps<Solution>): void {
    this.stop();
    const finish = (solution: Solution): void => {
      if (this.#going?.key !== key) return;
      this.#going = null;
      this.#keep(key, solution);
      this.#arrived();
    };
    const slices = (): (() => void) => inSlices(steps, finish);
    this.#going = { key, stop: inWorker(problem, finish, slices) ?? slices() };
  }

  #keep(key: string, solution: Solution): Solution {
    this.#known.set(key, solution);
    const [oldest] = this.#known.keys();
    if (this.#known.size > mostKnown && oldest !== undefined) this.#known.delete(oldest);
    return solution;
  }
}

const looking: Solution = { state: 'looking' };
