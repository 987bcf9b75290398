import type { Outcome } from '../problem.js';
import { unpackSheet } from '../sheet/unpack-sheet.js';
import { builtInMethod, builtInProgram } from '../training/method/built-in.js';
import { expandMethod } from '../training/method/expand.js';
import { Planner } from './planner.js';

/** A planner with the built-in method, whose formulas ship compiled: no parser is loaded. */
export function builtInPlanner(): Planner {
  const sheet = unpackSheet(expandMethod(builtInMethod), builtInProgram);
  return new Planner({ method: builtInMethod, sheet });
}

/**
 * A planner with a coach's own method.
 *
 * @param document the method as plain data, checked against shared/schema/method.schema.json and beyond it.
 * @returns the planner, or every problem with its path, the value given and what is allowed.
 */
export async function createPlanner(document: unknown): Promise<Outcome<Planner>> {
  const { loadMethod } = await import('../training/method/load-method.js');
  const loaded = await loadMethod(document);
  if (!loaded.ok) return loaded;
  const planner = new Planner(loaded.value);
  const trial = planner.plan({});
  return trial.ok ? { ok: true, value: planner } : trial;
}
