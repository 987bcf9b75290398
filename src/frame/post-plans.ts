import type { WeekwrightPlanner } from '../element/weekwright-planner.js';
import type { Plan } from '../plan.js';

/** Sends the plan on show and each that follows to the page around, where that is of the origin named; else to nobody. */
export async function postPlans(planner: WeekwrightPlanner, origin: string): Promise<void> {
  const post = (plan: Plan): void => {
    parent.postMessage({ type: 'weekwright-plan', plan }, origin);
  };
  planner.addEventListener('plan-change', ({ detail }) => {
    post(detail);
  });
  await planner.updateComplete;
  if (planner.plan) post(planner.plan);
}
