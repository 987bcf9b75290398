import { concretePlan, type Told } from '../../plan/handout/concrete-plan.js';
import type { PlannedWeek } from '../../plan/record/planned-week.js';
import type { Method } from '../../training/method/document.js';
import { isoDate, knownDay } from '../../training/season/iso-date.js';
import { dayCount } from '../../training/week/day-sets.js';
import { weekTitle } from '../season/phase-text.js';
import { datesOf } from '../season/dates.js';
import { sessionTitle } from '../strength/session-text.js';
import { dayName } from '../week/day-name.js';
import type { Words } from '../words.js';
import { sessionTexts, type SessionText } from './session-text.js';
import { strengthBlocks, type BlockText } from './strength-blocks.js';

/** A day of a week with its sessions; none on a day of rest. */
export interface DayText {
  /** "Monday" */
  readonly name: string;
  /** "Nov 30" */
  readonly date: string;
  readonly sessions: readonly SessionText[];
}

/** A strength session, set by set. */
export interface SetsText {
  /** "Session 1, Tuesday" */
  readonly title: string;
  readonly length: string;
  readonly blocks: readonly BlockText[];
}

/** A week as a runner takes it home, in words. */
export interface WeekText {
  /** "Nov 30 – Dec 6, 2026" */
  readonly when: string;
  /** "Week 3, base (easier)"; the phase alone without a season. */
  readonly inSeason: string;
  /** "7 sessions on 5 days, 4 hours in all." */
  readonly lead: string;
  /** Seven days, Monday first; null where the sessions are for any day. */
  readonly days: readonly DayText[] | null;
  readonly sessions: readonly SessionText[];
  readonly strength: readonly SetsText[];
}

/**
 * Puts a week into words.
 *
 * @param told what is told of the runner, by which runs and sets are made.
 */
export function weekText(
  words: Words,
  method: Method,
  { week, told }: { readonly week: PlannedWeek; readonly told: Told },
): WeekText {
  const plan = concretePlan(method, week.plan, told);
  const sessions = sessionTexts(words, method, plan);
  const dates = datesOf(words);
  const hasDays = sessions.some(({ day }) => day !== null);
  const dayText = (day: number): DayText => ({
    name: dayName(words, day),
    date: dates.short(isoDate(knownDay(week.start) + day)),
    sessions: sessions.filter((session) => session.day === day),
  });
  return {
    when: dates.week(week.start),
    inSeason: week.season ? weekTitle(words, week.season) : words.capital(words.say(`phase.${plan.inputs.phase}`)),
    lead: leadOf(words, sessions),
    days: hasDays ? Array.from({ length: dayCount }, (_, day) => dayText(day)) : null,
    sessions,
    strength: plan.strength.sessions.map((session, index) => ({
      title: sessionTitle(words, session, index),
      length: words.minutesShort(session.minutes),
      blocks: strengthBlocks(words, method, session),
    })),
  };
}

function leadOf(words: Words, sessions: readonly SessionText[]): string {
  const days = new Set(sessions.flatMap(({ day }) => (day === null ? [] : [day])));
  const counted = words.say('handout.sessions', { count: sessions.length });
  const all = words.hours(sessions.reduce((sum, { minutes }) => sum + minutes, 0) / 60);
  if (days.size === 0) return words.say('handout.sum', { sessions: counted, all });
  return words.say('handout.sum.days', {
    sessions: counted,
    days: words.say('handout.days', { count: days.size }),
    all,
  });
}
