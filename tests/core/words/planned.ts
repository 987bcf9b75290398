import { builtInPlanner, type Plan, type Planner, type PlanRequest } from '../../../src/plan.js';
import { loadWords } from '../../../src/words/load-words.js';
import type { Method } from '../../../src/training/method/document.js';

export const planner = builtInPlanner();
export const german = await loadWords('de');

/** The plan for a request and the method that made it; throws where the request is refused. */
export function planned(request: PlanRequest, by: Planner = planner): { readonly method: Method; readonly plan: Plan } {
  const outcome = by.plan(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return { method: by.method, plan: outcome.value };
}
