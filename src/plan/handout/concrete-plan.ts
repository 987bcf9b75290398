import type { Outcome } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import type { Plan } from '../document.js';
import type { PlanCompletion } from '../plan-part.js';
import type { PlanRunning } from '../running/document.js';
import { runningPart } from '../running/running-part.js';
import type { PlanStrength } from '../strength/document.js';
import { strengthPart } from '../strength/strength-part.js';

/** A plan whose runs and strength sessions are concrete. */
export interface ConcretePlan extends Plan {
  readonly running: PlanRunning;
  readonly strength: PlanStrength;
}

/** What is told of a runner. */
export interface Told {
  readonly running: object;
  readonly strength: object;
}

/** What a plan was told of its runner. */
export const toldIn = ({ running, strength }: Pick<Plan, 'running' | 'strength'>): Told => ({
  running: running?.wishes ?? {},
  strength: strength?.wishes ?? {},
});

/**
 * A plan as it is handed over: what has not been made concrete yet is made so, as for a runner of whom just this is told.
 *
 * @param told what `toldIn` gives of a plan by the same method.
 */
export function concretePlan(method: Method, plan: Plan, told: Told): ConcretePlan {
  const withRuns = plan.running ? plan : completed(runningPart.read(told.running, method), plan);
  const whole = plan.strength ? withRuns : completed(strengthPart.read(told.strength, method), withRuns);
  const { running, strength } = whole;
  if (!running || !strength) throw new Error('what was told of a runner could be read before');
  return { ...whole, running, strength };
}

const completed = (read: Outcome<PlanCompletion>, plan: Plan): Plan => (read.ok ? read.value(plan) : plan);
