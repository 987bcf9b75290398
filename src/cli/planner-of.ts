import type { Planner } from '../plan.js';
import { readPlanner } from './read-planner.js';
import { readText } from './read-text.js';
import { problemLines, type Session } from './session.js';

/** The planner of the method that a command line names, or what stands in the way, a line each. */
export async function plannerOf(
  session: Session,
): Promise<{ readonly ok: true; readonly value: Planner } | { readonly ok: false; readonly lines: readonly string[] }> {
  const { speech } = session;
  const method = await readText(session, 'method');
  if (!method.ok) return { ok: false, lines: problemLines(speech, method.problems) };
  const planner = await readPlanner(method.value);
  if (planner.ok) return planner;
  const faults = problemLines(speech, planner.problems).map((line) => `- ${line}`);
  return { ok: false, lines: [speech.words.say('problem.faulty-method'), ...faults] };
}
