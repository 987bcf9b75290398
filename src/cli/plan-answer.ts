import type { Plan, Planner } from '../plan.js';
import type { Problem } from '../problem.js';
import type { Method } from '../training/method/document.js';
import { printable } from './printable.js';
import { optionOf, requestOf } from './request-of.js';
import { exitCodes, problemLines, refuse, type Session } from './session.js';

/** What a command asks for beyond the week. */
export interface Asked {
  /** Fields of the request to the planner. */
  readonly request: Readonly<Record<string, unknown>>;
  /** What could not be read at all, by the names of the options. */
  readonly problems: readonly Problem[];
  /** A problem that the planner has as its author met it. */
  readonly asOption: (problem: Problem) => Problem;
}

/** A plan as a command answers with it. */
export interface Answer {
  readonly document: (plan: Plan) => object;
  readonly text: (method: Method, plan: Plan) => string;
}

export const nothingMore: Asked = { request: {}, problems: [], asOption: (problem) => problem };

/** Plans what a command line asks for, and answers with text or JSON; or says all that stands in the way. */
export function answerPlan(
  session: Session,
  planner: Planner,
  { asked, answer }: { asked: Asked; answer: Answer },
): number {
  const { io, options, speech } = session;
  const plan = planner.plan({ ...requestOf(session), ...asked.request });
  const problems = [...asked.problems, ...(plan.ok ? [] : plan.problems.map(asked.asOption))];
  if (!plan.ok || problems.length > 0)
    return refuse(
      session,
      problemLines(speech, problems, (path) => optionOf(speech.words, path)),
    );
  if (options.json !== undefined) io.write(`${JSON.stringify(answer.document(plan.value), null, 2)}\n`);
  else io.write(printable(answer.text(planner.method, plan.value)));
  return exitCodes.done;
}

/** A part of a plan that was asked for. */
export function partOf<T>(part: T | null): T {
  if (part === null) throw new Error('a planner that knows of a part gives it where it is asked for');
  return part;
}
