import type { Words } from '../words.js';

/**
 * The name of a day of the week.
 *
 * @param day 0 for Monday to 6 for Sunday.
 * @example dayName(words, 0) // 'Monday'
 */
export function dayName(words: Words, day: number): string {
  return words.say(`day.${day}`);
}

/**
 * The same in short, for the head of a column.
 *
 * @example dayShort(words, 0) // 'Mon'
 */
export function dayShort(words: Words, day: number): string {
  return words.say(`day-short.${day}`);
}

/** Several days as a list, in the order given: "Sunday and Monday". */
export function dayNames(words: Words, days: readonly number[]): string {
  return words.list(days.map((day) => dayName(words, day)));
}
