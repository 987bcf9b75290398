import { dayName } from '../words/week/day-name.js';
import type { Words } from '../words/words.js';
import { numberOrText } from './number-or-text.js';

/** What a request says of a week of which only the minutes of the days are known. */
export interface DaysAsked {
  readonly days: readonly (number | string)[];
}

/**
 * The minutes of the days in a text, Monday first, for the planner to check.
 *
 * @example daysIn('60,0,45,60,0,90,120', ',') // { days: [60, 0, 45, 60, 0, 90, 120] }
 */
export function daysIn(text: string, separator: string | RegExp): DaysAsked {
  return { days: text.split(separator).map((minutes) => numberOrText(minutes.trim())) };
}

/** A field of a request by what its days are called where they were given: `--days[1]` for `week.days[1]`. */
export function daysAs(name: string, path: string): string {
  return path.replace(/^week\.days/, name);
}

/**
 * The same for a person, who does not count days from 0.
 *
 * @example withDayName(words, '--days[1]') // '--days (Tuesday)'
 */
export function withDayName(words: Words, field: string): string {
  const [, days, day] = /^(.*\bdays)\[([0-6])\]$/.exec(field) ?? [];
  return days === undefined ? field : `${days} (${dayName(words, Number(day))})`;
}
