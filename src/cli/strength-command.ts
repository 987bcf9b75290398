import { answerPlan, partOf } from './plan-answer.js';
import { plannerOf } from './planner-of.js';
import { refuse, type Session } from './session.js';
import { strengthAsked } from './strength-options.js';
import { strengthText } from './strength-text.js';

/** `weekwright strength`: the strength sessions of a week, set by set. */
export async function strengthCommand(session: Session): Promise<number> {
  const planner = await plannerOf(session);
  if (!planner.ok) return refuse(session, planner.lines);
  return answerPlan(session, planner.value, {
    asked: strengthAsked(session),
    answer: {
      document: ({ method, inputs, strength }) => ({
        ...{ format: 'weekwright-strength', version: 1, method, inputs },
        ...partOf(strength),
      }),
      text: (method, { week, strength }) => strengthText(session.speech, method, { week, strength: partOf(strength) }),
    },
  });
}
