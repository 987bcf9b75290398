import type { Solution } from '../../plan/week/week-solver.js';
import type { Steps } from '../../training/week/steps.js';

/** Half a frame: the other half is the page's. */
const sliceMilliseconds = 8;

/** Takes steps until a time is reached; null where they are not done by then. At least one is taken. */
export function runUntil(steps: Steps<Solution>, end: number): Solution | null {
  do {
    const { done, value } = steps.next();
    if (done === true) return value;
  } while (performance.now() < end);
  return null;
}

/** Goes on with a week a slice at a time, where there is no worker; gives what stops it. */
export function inSlices(steps: Steps<Solution>, finish: (solution: Solution) => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const next = (): void => {
    const solution = runUntil(steps, performance.now() + sliceMilliseconds);
    if (solution) finish(solution);
    else timer = setTimeout(next);
  };
  timer = setTimeout(next);
  return () => {
    clearTimeout(timer);
  };
}
