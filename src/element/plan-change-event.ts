import type { Plan } from '../plan.js';

/** Fired on the planner when a person changed something; `detail` is the whole plan, as plain data. */
export class PlanChangeEvent extends CustomEvent<Plan> {
  constructor(plan: Plan) {
    super('plan-change', { detail: plan, bubbles: true, composed: true });
  }
}
