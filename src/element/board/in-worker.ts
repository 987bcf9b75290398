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
    const address = trusted(new URL('./weekwright-week-worker.js', import.meta.url));
    const worker: unknown = Reflect.construct(Worker, [address, { type: 'module' }]);
    return worker instanceof Worker ? worker : null;
  } catch {
    isPossible = false;
    return null;
  }
}

/** Made once: a page may allow a name for one policy only. */
let policy: unknown;

/** Where a page trusts addresses of scripts only by a policy, ours is named `weekwright`. TypeScript does not know of them. */
function trusted(url: URL): unknown {
  policy ??= call(Reflect.get(globalThis, 'trustedTypes'), 'createPolicy', [
    'weekwright',
    { createScriptURL: (text: string) => text },
  ]);
  return call(policy, 'createScriptURL', [url.href]) ?? url;
}

function call(object: unknown, name: string, values: readonly unknown[]): unknown {
  if (typeof object !== 'object' || object === null) return undefined;
  const method: unknown = Reflect.get(object, name);
  return typeof method === 'function' ? Reflect.apply(method, object, values) : undefined;
}
