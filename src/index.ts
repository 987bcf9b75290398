// The element's class, without defining the tag: `define.js` does that.
export { WeekwrightPlanner } from './element/weekwright-planner.js';
export { PlanChangeEvent } from './element/plan-change-event.js';
export type { Plan, PlanInputs, PlanRequest } from './plan.js';
export type { Problem } from './problem.js';
export type { Method } from './training/method/document.js';
