/** How many times as many random cases as usual are tried: RUNS_FACTOR, 1 if not set. */
export const runsFactor = readNumber('RUNS_FACTOR', 1);

/** Milliseconds that a random test may take. */
export const patience = 60_000 * Math.max(1, runsFactor);

/**
 * How often a random test tries: `usual` times RUNS_FACTOR, but not more than `most`; from the seed SEED if one is set.
 * A failing property prints its seed and path, and `SEED=<seed>` repeats the run.
 */
export function runs(usual: number, most: number): { readonly numRuns: number; readonly seed?: number } {
  const numRuns = Math.max(1, Math.min(most, Math.round(usual * runsFactor)));
  return process.env['SEED'] === undefined ? { numRuns } : { numRuns, seed: readNumber('SEED', 0) };
}

function readNumber(name: string, otherwise: number): number {
  const text = process.env[name];
  const value = text === undefined ? otherwise : Number(text);
  if (!Number.isFinite(value)) throw new Error(`${name} must be a number, not "${String(text)}"`);
  return value;
}
