import type { Problem } from '../problem.js';
import { printable } from './printable.js';
import { plannerOf } from './planner-of.js';
import { optionOf, requestOf } from './request-of.js';
import { asSeasonOption, seasonOf } from './season-options.js';
import { seasonText } from './season-text.js';
import { exitCodes, problemLines, refuse, type Session } from './session.js';

/** `weekwright season`: every week up to an event. */
export async function seasonCommand(session: Session): Promise<number> {
  const { io, options, speech } = session;
  const planner = await plannerOf(session);
  if (!planner.ok) return refuse(session, planner.lines);
  const plan = planner.value.plan({ ...requestOf(session), season: seasonOf(session) });
  if (!plan.ok) return refuse(session, optionLines(session, plan.problems));
  const { method, inputs, season } = plan.value;
  if (!season) throw new Error('a planner that knows of seasons gives one');
  const { hours, level, event, strengthCap } = inputs;
  const document = {
    format: 'weekwright-season',
    version: 1,
    method,
    inputs: { hours, level, event, strengthCap },
    ...season,
  };
  if (options.json !== undefined) io.write(`${JSON.stringify(document, null, 2)}\n`);
  else io.write(printable(seasonText(speech.words, planner.value.method, { inputs, season })));
  return exitCodes.done;
}

function optionLines({ speech }: Session, problems: readonly Problem[]): string[] {
  return problemLines(speech, problems.map(asSeasonOption), (path) => optionOf(speech.words, path));
}
