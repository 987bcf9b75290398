import { answerPlan, nothingMore } from './plan-answer.js';
import { planRoster } from './plan-roster.js';
import { planText } from './plan-text.js';
import { plannerOf } from './planner-of.js';
import { readText } from './read-text.js';
import { requestOf } from './request-of.js';
import { problemLines, refuse, type Session } from './session.js';

/** `weekwright plan`: one week, or a roster of them. */
export async function planCommand(session: Session): Promise<number> {
  const planner = await plannerOf(session);
  if (!planner.ok) return refuse(session, planner.lines);
  const roster = await readText(session, 'roster');
  if (!roster.ok) return refuse(session, problemLines(session.speech, roster.problems));
  if (roster.value !== null)
    return planRoster(session, planner.value, { text: roster.value, defaults: requestOf(session) });
  const { words } = session.speech;
  return answerPlan(session, planner.value, {
    asked: nothingMore,
    answer: { document: (plan) => plan, text: (method, plan) => planText(words, method, plan) },
  });
}
