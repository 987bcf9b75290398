import type { PlanInputs } from '../../plan/document.js';
import type { PlanSeason, SeasonWeek } from '../../plan/season/document.js';
import type { Words } from '../words.js';
import { datesOf } from './dates.js';

/**
 * The season in one sentence; a season may lead to a day without a race.
 *
 * @example 'Half marathon on Sunday, April 11, 2027: 16 weeks, from 4 hours a week to 6 hours in week 11, the last 2 weeks a taper.'
 */
export function seasonHeadline(words: Words, { event }: Pick<PlanInputs, 'event'>, season: PlanSeason): string {
  const before = season.weeks.filter(({ weeksToGo }) => weeksToGo >= 0);
  const taper = before.filter(({ phase }) => phase === 'taper').length;
  return words.say(event === 'none' ? 'season.headline.none' : 'season.headline', {
    event: words.capital(words.say(`event.${event}`)),
    date: datesOf(words).full(season.wishes.date),
    weeks: words.say('season.weeks', { count: before.length }),
    course: course(words, before),
    taper: taper === 0 ? '' : words.say('season.headline.taper', { count: taper }),
  });
}

function course(words: Words, weeks: readonly SeasonWeek[]): string {
  const [first] = weeks;
  // What is set by hand is an exception.
  const hours = weeks.map((week) => (week.why.reason === 'by-hand' ? 0 : week.hours));
  const most = Math.max(0, ...hours);
  const peak = weeks[hours.indexOf(most)];
  if (!first || !peak || most <= first.hours) return words.say('season.course.level', { most: words.hours(most) });
  const values = { from: words.hours(first.hours), most: words.hours(most), number: peak.number };
  return words.say('season.course.rise', values);
}
