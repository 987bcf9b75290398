import { checksAsked, ofRunner } from './checks-options.js';
import { checksText } from './checks-text.js';
import { answerPlan, partOf } from './plan-answer.js';
import { plannerOf } from './planner-of.js';
import { refuse, type Session } from './session.js';

/** `weekwright checks`: the plan of a week held against what is known; no plan where the answers say stop. */
export async function checksCommand(session: Session): Promise<number> {
  const planner = await plannerOf(session);
  if (!planner.ok) return refuse(session, planner.lines);
  return answerPlan(session, planner.value, {
    asked: checksAsked(session),
    answer: {
      // The answers are no part of it.
      document: ({ method, inputs, load, checks }) => ({
        ...{ format: 'weekwright-checks', version: 1, method, inputs },
        ...{ load: partOf(load), checks },
      }),
      text: (method, { week, load, checks }) =>
        checksText(session.speech.words, method, { week, load: partOf(load), checks, ...ofRunner(session) }),
    },
  });
}
