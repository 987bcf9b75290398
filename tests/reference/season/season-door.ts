import { builtInPlanner } from '../../../src/plan.js';
import type { Plan, PlanRequest } from '../../../src/plan/document.js';
import type { PlanSeason } from '../../../src/plan/season/document.js';
import type { SeasonRequest } from '../../../src/plan/season/wishes.js';

const planner = builtInPlanner();

/** The plan of a request with a season, which must be answered. */
export function planWithSeason(request: PlanRequest): Plan & { readonly season: PlanSeason } {
  const outcome = planner.plan(request);
  if (!outcome.ok) throw new Error(`Refused: ${JSON.stringify(outcome.problems)}`);
  const { season } = outcome.value;
  if (!season) throw new Error('there is no season');
  return { ...outcome.value, season };
}

/** The season of a request that must be answered, by the built-in method. */
export function seasonOf(season: SeasonRequest, others: Omit<PlanRequest, 'season'> = {}): PlanSeason {
  return planWithSeason({ ...others, season }).season;
}
