import type { Plan } from '../plan.js';
import { answerPlan, partOf } from './plan-answer.js';
import { plannerOf } from './planner-of.js';
import { seasonAsked } from './season-options.js';
import { seasonText } from './season-text.js';
import { refuse, type Session } from './session.js';

/** `weekwright season`: every week up to an event. */
export async function seasonCommand(session: Session): Promise<number> {
  const planner = await plannerOf(session);
  if (!planner.ok) return refuse(session, planner.lines);
  const { words } = session.speech;
  return answerPlan(session, planner.value, {
    asked: seasonAsked(session),
    answer: {
      document: seasonDocument,
      text: (method, { inputs, season }) => seasonText(words, method, { inputs, season: partOf(season) }),
    },
  });
}

/** A phase is none of its inputs: each week has its own. */
function seasonDocument({ method, inputs: { hours, level, event, strengthCap }, season }: Plan): object {
  const inputs = { hours, level, event, strengthCap };
  return { format: 'weekwright-season', version: 1, method, inputs, ...partOf(season) };
}
