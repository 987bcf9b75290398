import type { Planner } from '../plan.js';
import { daysAs, daysIn, withDayName } from './days.js';
import { requestFields } from './options.js';
import { planText } from './plan-text.js';
import { printable } from './printable.js';
import { numberOrText } from './number-or-text.js';
import { readPlanner } from './read-planner.js';
import { readText } from './read-text.js';
import { planRoster } from './plan-roster.js';
import { exitCodes, problemLines, refuse, type Session } from './session.js';

/** `weekwright plan`: one week, or a roster of them. */
export async function planCommand(session: Session): Promise<number> {
  const { speech } = session;
  const method = await readText(session, 'method');
  if (!method.ok) return refuse(session, problemLines(speech, method.problems));
  const planner = await readPlanner(method.value);
  if (!planner.ok) {
    const faults = problemLines(speech, planner.problems).map((line) => `- ${line}`);
    return refuse(session, [speech.words.say('problem.faulty-method'), ...faults]);
  }
  const roster = await readText(session, 'roster');
  if (!roster.ok) return refuse(session, problemLines(speech, roster.problems));
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
      problemLines(speech, plan.problems, (path) => withDayName(speech.words, optionOf(path))),
    );
  if (options.json !== undefined) io.write(`${JSON.stringify(plan.value, null, 2)}\n`);
  else io.write(printable(planText(speech.words, planner.method, plan.value)));
  return exitCodes.done;
}

const fieldsByOption = Object.entries(requestFields);

function requestOf({ options }: Session): Readonly<Record<string, unknown>> {
  const values: Readonly<Record<string, string | undefined>> = options;
  const given = fieldsByOption.flatMap(([option, field]) => {
    const text = values[option];
    return text === undefined ? [] : [[field, isNumeric(field) ? numberOrText(text) : text] as const];
  });
  const week = options.days === undefined ? {} : { week: daysIn(options.days, ',') };
  return { ...Object.fromEntries(given), ...week };
}

const isNumeric = (field: string): boolean => field === 'hours' || field === 'strengthCap';

/** What a field of the request is called on the command line. */
function optionOf(path: string): string {
  const option = fieldsByOption.find(([, field]) => field === path)?.[0];
  return option === undefined ? daysAs('--days', path) : `--${option}`;
}
