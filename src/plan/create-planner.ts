import type { Outcome } from '../problem.js';
import { Planner } from './planner.js';

/**
 * A planner with a coach's own method.
 *
 * @param document the method as plain data, checked against shared/schema/method.schema.json and beyond it.
 * @param Made what to make; a planner that only divides weeks where it is left out.
 * @returns the planner, or every problem with its path, the value given and what is allowed.
 */
export async function createPlanner(document: unknown, Made: typeof Planner = Planner): Promise<Outcome<Planner>> {
  const { loadMethod } = await import('../training/method/load-method.js');
  const loaded = await loadMethod(document);
  if (!loaded.ok) return loaded;
  const planner = new Made(loaded.value);
  const trial = planner.plan({});
  return trial.ok ? { ok: true, value: planner } : trial;
}
