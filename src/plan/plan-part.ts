import type { Outcome } from '../problem.js';
import type { Method } from '../training/method/document.js';
import type { Plan } from './document.js';

/** The parts of a request that come to a finished plan. */
export const planPartNames = ['running', 'strength', 'checks'] as const;
export type PlanPartName = (typeof planPartNames)[number];

/** Adds to a plan what was asked for. */
export type PlanCompletion = (plan: Plan) => Plan;

/** A part of a request that needs nothing but the finished plan. */
export interface PlanPart {
  readonly name: PlanPartName;
  /** Checks what a request says, and gives what completes a plan; the paths of problems begin with the part's name. */
  readonly read: (given: unknown, method: Method) => Outcome<PlanCompletion>;
}
