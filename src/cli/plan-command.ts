import type { Planner } from '../plan.js';
import { planRoster } from './plan-roster.js';
import { planText } from './plan-text.js';
import { plannerOf } from './planner-of.js';
import { printable } from './printable.js';
import { readText } from './read-text.js';
import { optionOf, requestOf } from './request-of.js';
import { exitCodes, problemLines, refuse, type Session } from './session.js';

/** `weekwright plan`: one week, or a roster of them. */
export async function planCommand(session: Session): Promise<number> {
  const planner = await plannerOf(session);
  if (!planner.ok) return refuse(session, planner.lines);
  const roster = await readText(session, 'roster');
  if (!roster.ok) return refuse(session, problemLines(session.speech, roster.problems));
  const request = requestOf(session);
  if (roster.value === null) return planOne(session, planner.value, request);
  return planRoster(session, planner.value, { text: roster.value, defaults: request });
}

function planOne(session: Session, planner: Planner, request: Readonly<Record<string, unknown>>): number {
  const { io, options, speech } = session;
  const plan = planner.plan(request);
  if (!plan.ok)
    return refuse(
      session,
      problemLines(speech, plan.problems, (path) => optionOf(speech.words, path)),
    );
  if (options.json !== undefined) io.write(`${JSON.stringify(plan.value, null, 2)}\n`);
  else io.write(printable(planText(speech.words, planner.method, plan.value)));
  return exitCodes.done;
}
