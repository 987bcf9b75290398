import { answerPlan, partOf } from './plan-answer.js';
import { plannerOf } from './planner-of.js';
import { runningAsked } from './running-options.js';
import { runningText } from './running-text.js';
import { refuse, type Session } from './session.js';

/** `weekwright running`: paces, heart rates, and every run of a week. */
export async function runningCommand(session: Session): Promise<number> {
  const planner = await plannerOf(session);
  if (!planner.ok) return refuse(session, planner.lines);
  return answerPlan(session, planner.value, {
    asked: runningAsked(session),
    answer: {
      document: ({ method, inputs, running }) => ({
        ...{ format: 'weekwright-running', version: 1, method, inputs },
        ...partOf(running),
      }),
      text: (method, { week, running }) => runningText(session.speech, method, { week, running: partOf(running) }),
    },
  });
}
