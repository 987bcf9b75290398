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
  const { io, options } = session;
  const plan = planAsked(session, planner, asked);
  if (!plan.ok) return refuse(session, plan.lines);
  if (options.json !== undefined) io.write(`${JSON.stringify(answer.document(plan.value), null, 2)}\n`);
  else io.write(printable(answer.text(planner.method, plan.value)));
  return exitCodes.done;
}

/** The plan that a command line asks for, or all that stands in the way, a line each. */
export function planAsked(
  session: Pick<Session, 'options' | 'speech'>,
  planner: Planner,
  { request, problems, asOption }: Asked,
): { readonly ok: true; readonly value: Plan } | { readonly ok: false; readonly lines: readonly string[] } {
  const { speech } = session;
  const plan = planner.plan({ ...requestOf(session), ...request });
  const all = [...problems, ...(plan.ok ? [] : plan.problems.map(asOption))];
  if (plan.ok && all.length === 0) return plan;
  return { ok: false, lines: problemLines(speech, all, (path) => optionOf(speech.words, path)) };
}

/** A part of a plan that was asked for. */
export function partOf<T>(part: T | null): T {
  if (part === null) throw new Error('a planner that knows of a part gives it where it is asked for');
  return part;
}
