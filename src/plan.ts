import type { Outcome } from './problem.js';
import type { Planner } from './plan/planner.js';
import type { Plan, PlanRequest } from './plan/document.js';
import { FullPlanner } from './plan/full-planner.js';
import { builtInPlanner as makeBuiltIn } from './plan/built-in-planner.js';
import { createPlanner as makePlanner } from './plan/create-planner.js';
import { createSeasonMaker } from './plan/season/create-season-maker.js';
import { createWeekMaker } from './plan/week/create-week-maker.js';

export type { Planner } from './plan/planner.js';
export type {
  Notice,
  NoticeCode,
  Plan,
  PlanDerivation,
  PlanInputs,
  PlanRequest,
  RuleOutcome,
} from './plan/document.js';
export type { PlanSeason, SeasonChange, SeasonNotice, SeasonWeek } from './plan/season/document.js';
export type { CheckResult, PlanLoad } from './plan/checks/document.js';
export type { ChecksRequest, ChecksWishes } from './plan/checks/wishes.js';
export type { PlanRunning } from './plan/running/document.js';
export type { RunningRequest, RunningWishes } from './plan/running/wishes.js';
export type { PlanStrength, StrengthSession } from './plan/strength/document.js';
export type { StrengthRequest, StrengthWishes } from './plan/strength/wishes.js';
export type { SeasonRequest, SeasonWishes } from './plan/season/wishes.js';
export type { PlanWeek } from './plan/week/document.js';
export type { DaySession, PlacedSession, WeekRequest, WeekWishes } from './plan/week/wishes.js';

/** A planner with the built-in method, whose formulas ship compiled: no parser is loaded. */
export function builtInPlanner(): Planner {
  return complete(makeBuiltIn(FullPlanner));
}

/**
 * A planner with a coach's own method.
 *
 * @param document the method as plain data, checked against shared/schema/method.schema.json and beyond it.
 * @returns the planner, or every problem with its path, the value given and what is allowed.
 */
export async function createPlanner(document: unknown): Promise<Outcome<Planner>> {
  const outcome = await makePlanner(document, FullPlanner);
  return outcome.ok ? { ok: true, value: complete(outcome.value) } : outcome;
}

/** With everything that a request may ask for. */
function complete(planner: Planner): Planner {
  planner.learnWeeks(createWeekMaker());
  planner.learnSeasons(createSeasonMaker());
  return planner;
}

let shared: Planner | undefined;

/**
 * The plan of a week by the built-in method: hours in, sessions out; on days, where days are given.
 *
 * @example planWeek({ hours: 4, phase: 'build', level: 'developing', event: 'half-marathon' })
 *   // { ok: true, value: { rounded: { strength: 75, slow: 70, … }, … } }
 * @example planWeek({ hours: 4, week: { days: [60, 0, 45, 60, 0, 90, 120] } })
 *   // { ok: true, value: { week: { cost: 2, days: [[…], [], …], … }, … } }
 */
export function planWeek(request: PlanRequest): Outcome<Plan> {
  shared ??= builtInPlanner();
  return shared.plan(request);
}
