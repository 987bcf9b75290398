import { planWeek } from '../../../src/plan.js';
import type { CheckResult, PlanLoad } from '../../../src/plan/checks/document.js';
import type { Plan, PlanRequest } from '../../../src/plan/document.js';

/** A plan that was checked. */
export type CheckedPlan = Plan & { readonly load: PlanLoad };

/** The plan of a request with checks, which must be answered. */
export function checkedPlan(request: PlanRequest): CheckedPlan {
  const outcome = planWeek({ checks: {}, ...request });
  if (!outcome.ok) throw new Error(`Refused: ${JSON.stringify(outcome.problems)}`);
  const { load } = outcome.value;
  if (!load) throw new Error('there is no load');
  return { ...outcome.value, load };
}

/** A check of a plan, by its id; undefined where it was not made. */
export const checkOf = ({ checks }: Pick<Plan, 'checks'>, id: string): CheckResult | undefined =>
  checks.find((each) => each.id === id);
