// The library without a page: plans from requests, and methods checked.
export { builtInPlanner, createPlanner, planWeek } from './plan.js';
export type {
  Planner,
  Notice,
  NoticeCode,
  Plan,
  PlanDerivation,
  PlanInputs,
  PlanRequest,
  RuleOutcome,
} from './plan.js';
export type { Outcome, Problem, ProblemCode } from './problem.js';
export type { Method } from './training/method/document.js';
export { categoryIds, eventIds, levelIds, phaseIds } from './training/method/ids.js';
export type { CategoryId, EventId, LevelId, PhaseId, Status } from './training/method/ids.js';
