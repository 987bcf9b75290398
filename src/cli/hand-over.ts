import { toldIn, type Told } from '../plan/handout/concrete-plan.js';
import { weekPlanner, type PlannedWeek, type WeekPlanner } from '../plan/record/planned-week.js';
import type { Plan } from '../plan.js';
import type { Method } from '../training/method/document.js';
import { handoutAsked, mondayAsked, weekFaults } from './handout-options.js';
import { faultLines, type OptionFaults } from './option-faults.js';
import { planAsked } from './plan-answer.js';
import { plannerOf } from './planner-of.js';
import { printable } from './printable.js';
import { exitCodes, refuse, type Session } from './session.js';

/** A plan that is handed over: one week of it, or its season. */
export interface Handed {
  readonly method: Method;
  readonly plan: Plan;
  readonly told: Told;
  readonly weeks: WeekPlanner;
  /** The Monday of the week; null where it is the season. */
  readonly monday: string | null;
}

interface Making {
  /** What is wrong with options of its own. */
  readonly own: OptionFaults;
  /** The text of the file, and the weeks that it has session by session; null where there is nothing to write. */
  readonly write: (handed: Handed) => { readonly text: string; readonly weeks: readonly PlannedWeek[] } | null;
}

/** Answers with a file on standard output; or says all that stands in the way. */
export async function handOver(session: Session, { own, write }: Making): Promise<number> {
  const planner = await plannerOf(session);
  if (!planner.ok) return refuse(session, planner.lines);
  const plan = planAsked(session, planner.value, handoutAsked(session));
  const faults = [weekFaults(session), own].flatMap((each) => faultLines(session.speech, each));
  const lines = [...faults, ...(plan.ok ? [] : plan.lines)];
  if (!plan.ok || lines.length > 0) return refuse(session, lines);
  const { method } = planner.value;
  const weeks = weekPlanner(method, plan.value);
  const file = write({ method, plan: plan.value, told: toldIn(plan.value), weeks, monday: mondayAsked(session) });
  if (!file) return refuse(session, [session.speech.words.say('handout.no-sessions')]);
  session.io.write(file.text);
  if (plan.value.week) noteAnyDay(session, file.weeks);
  return exitCodes.done;
}

/** Days were given: who finds none of them in the file has to know why. */
function noteAnyDay({ io, speech: { words, texts } }: Session, weeks: readonly PlannedWeek[]): void {
  const unlaid = weeks.filter(({ sessions }) => sessions.some(({ date }) => date === null));
  if (unlaid.length === 0) return;
  const mondays = words.list(unlaid.map(({ start }) => start));
  io.writeError(printable(`${texts.say('note.any-day', { count: unlaid.length, weeks: mondays })}\n`));
}
