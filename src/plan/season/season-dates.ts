import type { Outcome, Problem } from '../../problem.js';
import { seasonLimits } from '../../training/method/season-rules.js';
import { dateRange, dayOf, isoDate, mondayOf } from '../../training/season/iso-date.js';
import { faultyDate } from '../faulty-date.js';
import type { SeasonShape } from './season-shape.js';
import type { SeasonWishes } from './wishes.js';

type Dates = Pick<SeasonWishes, 'start' | 'date'>;

/**
 * The first day and the event of a season, from two of date, first day and weeks. Where only the first day is known, the
 * event is on the Sunday of the last week.
 *
 * @param usualWeeks where nothing else says how many.
 */
export function seasonDates({ start, date, weeks }: SeasonShape, usualWeeks: number): Outcome<Dates> {
  const problems = [...faultyDate('start', start), ...faultyDate('date', date)];
  if (problems.length > 0) return { ok: false, problems };
  const first = start === undefined ? null : dayOf(start);
  const last = date === undefined ? null : dayOf(date);
  if (first !== null && last !== null) return bothGiven(first, last, weeks);
  const span = 7 * ((weeks ?? usualWeeks) - 1);
  if (last !== null) return inRange({ start: mondayOf(last) - span, date: last }, 'date');
  if (first !== null) return inRange({ start: first, date: mondayOf(first) + span + 6 }, 'start');
  return { ok: false, problems: [{ path: 'date', value: undefined, code: 'missing', allowed: {} }] };
}

function bothGiven(start: number, date: number, weeks: number | undefined): Outcome<Dates> {
  const between = (mondayOf(date) - mondayOf(start)) / 7 + 1;
  const dates = { start: isoDate(start), date: isoDate(date) };
  const most = seasonLimits.weeks;
  const problems: Problem[] = [];
  if (between < 1 || between > most)
    problems.push({ path: 'date', value: dates.date, code: 'too-far-apart', allowed: { start: dates.start, most } });
  // All three given is one too many, unless they agree.
  else if (weeks !== undefined && weeks !== between)
    problems.push({ path: 'weeks', value: weeks, code: 'not-one-of', allowed: { choices: [between] } });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: dates };
}

/** `given` is the one that a person gave. */
function inRange(days: Readonly<Record<keyof Dates, number>>, given: keyof Dates): Outcome<Dates> {
  const dates = { start: isoDate(days.start), date: isoDate(days.date) };
  if (dayOf(dates.start) !== null && dayOf(dates.date) !== null) return { ok: true, value: dates };
  return { ok: false, problems: [{ path: given, value: dates[given], code: 'no-date', allowed: dateRange }] };
}
