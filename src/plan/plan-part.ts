import type { Outcome } from '../problem.js';
import type { Method } from '../training/method/document.js';
import type { Plan } from './document.js';

/** The parts of a request that make minutes concrete. */
export const planPartNames = ['running', 'strength'] as const;
export type PlanPartName = (typeof planPartNames)[number];

/** Adds to a plan what was asked for. */
export type PlanCompletion = (plan: Plan) => Plan;

/** A part of a request that needs nothing but the finished plan. */
export interface PlanPart {
  readonly name: PlanPartName;
  /** Checks what a request says, and gives what completes a plan; the paths of problems begin with the part's name. */
  readonly read: (given: unknown, method: Method) => Outcome<PlanCompletion>;
}
