import { inputNames } from '../plan/inputs.js';
import type { Plan, PlanRequest } from '../plan.js';
import type { Planner } from '../plan/planner.js';
import type { Outcome, Problem } from '../problem.js';

/** Whoever makes plans; one of `versions` is another after every change that no request shows. */
export interface PlanMaker {
  readonly versions: readonly unknown[];
  readonly plan: (planner: Planner, request: PlanRequest) => Outcome<Plan>;
}

/** The week on show, planned again only where something is another than before. */
export class Week {
  /** The last week that could be planned; null until there is one. */
  plan: Plan | null = null;
  outcome: Outcome<Plan> | null = null;
  #planned: { readonly by: Planner; readonly versions: readonly unknown[]; readonly request: PlanRequest } | null =
    null;

  /** What is wrong with what was asked for last. */
  get problems(): readonly Problem[] {
    return this.outcome?.ok === false ? this.outcome.problems : [];
  }

  /** Plans for a request, unless that was the last one. */
  replan(by: Planner, maker: PlanMaker, request: PlanRequest): void {
    const last = this.#planned;
    if (last?.by === by && isSameList(last.versions, maker.versions) && isSameRequest(last.request, request)) return;
    const outcome = maker.plan(by, request);
    this.#planned = { by, versions: maker.versions, request };
    this.outcome = outcome;
    if (outcome.ok) this.plan = outcome.value;
    else if (this.plan?.method.id !== by.method.id) this.plan = startingPlan(by);
  }
}

const isSameList = (one: readonly unknown[], other: readonly unknown[]): boolean =>
  one.every((each, index) => each === other[index]);

function isSameRequest(one: PlanRequest, other: PlanRequest): boolean {
  return (
    inputNames.every((name) => Object.is(one[name], other[name])) &&
    isSameList([one.sessions, one.week, one.season], [other.sessions, other.week, other.season])
  );
}

/** Where the very first request cannot be met, the week at the method's starting values is shown beside the problem. */
function startingPlan(planner: Planner): Plan | null {
  const start = planner.plan({});
  return start.ok ? start.value : null;
}
