import { builtInPlanner } from '../../../src/plan.js';
import type { Plan, PlanInputs } from '../../../src/plan/document.js';
import type { PlanStrength } from '../../../src/plan/strength/document.js';
import { strengthPart } from '../../../src/plan/strength/strength-part.js';
import type { DaySession } from '../../../src/plan/week/wishes.js';
import type { Outcome } from '../../../src/problem.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import type { Method } from '../../../src/training/method/document.js';

const outcome = builtInPlanner().plan({ hours: 4, week: { days: [60, 60, 60, 60, 60, 90, 120] } });
if (!outcome.ok || !outcome.value.week) throw new Error('the week is refused');
const plan: Plan = outcome.value;
const { week } = outcome.value;

/** A week that is made up for a test: sessions by day, or the minutes of strength sessions that are on no day. */
export interface MadeUpWeek extends Partial<Pick<PlanInputs, 'phase' | 'level'>> {
  readonly days?: readonly (readonly DaySession[])[] | undefined;
  readonly strength?: readonly number[] | undefined;
}

/** A plan with that week. */
export function planOf({ days, strength, phase = 'base', level = 'developing' }: MadeUpWeek): Plan {
  return {
    ...plan,
    inputs: { ...plan.inputs, phase, level },
    sessions: { ...plan.sessions, strength: strength ?? [] },
    week: days ? { ...week, days } : null,
  };
}

/** What a request for strength gives in such a week; `given` is data from outside. */
export function askStrength(given: unknown, made: MadeUpWeek, method: Method = builtInMethod): Outcome<PlanStrength> {
  const read = strengthPart.read(given, method);
  if (!read.ok) return read;
  const { strength } = read.value(planOf(made));
  if (!strength) throw new Error('there is no strength');
  return { ok: true, value: strength };
}

/** The strength of a request that must be answered. */
export function strengthOf(given: unknown, made: MadeUpWeek, method?: Method): PlanStrength {
  const answer = askStrength(given, made, method);
  if (!answer.ok) throw new Error(`Refused: ${JSON.stringify(answer.problems)}`);
  return answer.value;
}
