import { planWeek } from '../../src/plan.js';
import type { Plan, PlanRequest } from '../../src/plan/document.js';
import type { WeekQuestion } from './week-reference.js';

/** The plan for a request that must be answered. */
export function planOf(request: PlanRequest): Plan {
  const outcome = planWeek(request);
  if (!outcome.ok) throw new Error(`Refused: ${JSON.stringify(outcome.problems)}`);
  return outcome.value;
}

/** The planner's plan for an athlete of the reference. */
export function planFor(question: WeekQuestion): Plan {
  const { grains, grainsPerMinute, phase, level, event, strengthCap } = question;
  return planOf({ hours: grains / (60 * grainsPerMinute), phase, level, event, strengthCap });
}
