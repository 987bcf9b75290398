import { seasonLimits } from '../../training/method/season-rules.js';
import { weeksFrom } from '../../training/season/season-weeks.js';
import type { SeasonWishes } from './wishes.js';

/** An event so far off that the season would grow beyond its limit is not carried to, and told. */
export function isWithinReach({ start, date }: Pick<SeasonWishes, 'start' | 'date'>, event: string): boolean {
  const week = weeksFrom(start, event);
  return week >= 1 && (week <= weeksFrom(start, date) || week <= seasonLimits.weeks);
}
