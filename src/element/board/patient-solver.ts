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
 * `arrived` is called when it is there. Only so many go on; with another one asked for, the oldest is cancelled.
 */
export class PatientSolver {
  readonly #known = new Map<string, Solution>();
  /** What stops the weeks that are being solved, in the order in which they were asked for. */
  readonly #going = new Map<string, () => void>();
  readonly #mostGoing: number;
  readonly #arrived: () => void;

  constructor(arrived: () => void, mostGoing: number) {
    this.#arrived = arrived;
    this.#mostGoing = mostGoing;
  }

  readonly solve = (problem: WeekProblem): Solution => {
    const key = JSON.stringify(problem);
    const known = this.#known.get(key);
    if (known) return known;
    let solution: Solution = looking;
    const steps = solving(problem, (found) => {
      solution = found;
      // That nothing fits is worth knowing before it is known why.
      this.#known.set(key, found);
    });
    const done = runUntil(steps, performance.now() + patienceMilliseconds);
    if (done) return this.#keep(key, done);
    this.#goOn(key, problem, steps);
    return this.#keep(key, solution);
  };

  /** Leaves what is not ready; true where there was something. */
  stop(): boolean {
    const wasGoing = this.#going.size > 0;
    for (const key of this.#going.keys()) this.#cancel(key);
    return wasGoing;
  }

  #goOn(key: string, problem: WeekProblem, steps: Steps<Solution>): void {
    const finish = (solution: Solution): void => {
      this.#going.delete(key);
      this.#keep(key, solution);
      this.#arrived();
    };
    const slices = (): (() => void) => inSlices(steps, finish);
    this.#going.set(key, inWorker(problem, finish, slices) ?? slices());
    const [oldest] = this.#going.keys();
    if (this.#going.size > this.#mostGoing && oldest !== undefined) this.#cancel(oldest);
  }

  /** What was left half done is not known. */
  #cancel(key: string): void {
    this.#going.get(key)?.();
    this.#going.delete(key);
    this.#known.delete(key);
  }

  #keep(key: string, solution: Solution): Solution {
    this.#known.set(key, solution);
    const oldest = [...this.#known.keys()].find((each) => !this.#going.has(each));
    if (this.#known.size > mostKnown && oldest !== undefined) this.#known.delete(oldest);
    return solution;
  }
}

const looking: Solution = { state: 'looking' };
