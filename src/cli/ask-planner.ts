import type { Plan, Planner, PlanRequest } from '../plan.js';
import type { Outcome } from '../problem.js';

/** Asks for a plan with fields from outside: the planner itself checks each, and says what is wrong with it. */
export function askPlanner(planner: Planner, fields: Readonly<Record<string, unknown>>): Outcome<Plan> {
  return planner.plan(asRequest(fields));
}

// The one place where data of unknown shape becomes a request: `plan` checks every field at run time.
function asRequest(fields: Readonly<Record<string, unknown>>): PlanRequest {
  return fields;
}
