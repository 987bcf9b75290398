import type { Solution } from '../../plan/week/week-solver.js';
import type { WeekProblem } from '../../training/week/week-problem.js';

/** False once a worker could not be made: a strict page, a script from elsewhere, the single file. */
let isPossible = typeof Worker !== 'undefined';

/**
 * Solves a week in a worker of its own.
 *
 * @param instead takes over where the worker cannot be had.
 * @returns what stops it; null where there are no workers.
 */
export function inWorker(
  problem: WeekProblem,
  finish: (solution: Solution) => void,
  instead: () => () => void,
): (() => void) | null {
  const worker = isPossible ? createWorker() : null;
  if (!worker) return null;
  let stop = (): void => {
    worker.terminate();
  };
  worker.addEventListener('message', ({ data }: MessageEvent<Solution>) => {
    worker.terminate();
    finish(data);
  });
  worker.addEventListener('error', () => {
    isPossible = false;
    worker.terminate();
    stop = instead();
  });
  worker.postMessage(problem);
  return () => {
    stop();
  };
}

function createWorker(): Worker | null {
  try {
    return new Worker(new URL('./weekwright-week-worker.js', import.meta.url), { type: 'module' });
  } catch {
    isPossible = false;
    return null;
  }
}
