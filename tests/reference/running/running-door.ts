import { builtInPlanner } from '../../../src/plan.js';
import type { Plan, PlanRequest } from '../../../src/plan/document.js';
import type { PlanRunning } from '../../../src/plan/running/document.js';
import type { RunningRequest } from '../../../src/plan/running/wishes.js';

const planner = builtInPlanner();

/** The plan of a request with running, which must be answered. */
export function planWithRunning(request: PlanRequest): Plan & { readonly running: PlanRunning } {
  const outcome = planner.plan(request);
  if (!outcome.ok) throw new Error(`Refused: ${JSON.stringify(outcome.problems)}`);
  const { running } = outcome.value;
  if (!running) throw new Error('there is no running');
  return { ...outcome.value, running };
}

/** The running of a request that must be answered, by the built-in method: four hours if not said otherwise. */
export function runningOf(running: RunningRequest, others: Omit<PlanRequest, 'running'> = {}): PlanRunning {
  return planWithRunning({ hours: 4, ...others, running }).running;
}
