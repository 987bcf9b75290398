import type { Words } from '../words.js';

/**
 * What a day's sessions take of its minutes.
 *
 * @param used minutes of its sessions.
 * @param available minutes that the day has; 0 is a day off.
 * @example dayTotalLine(words, 55, 60) // '55 of 60 min'
 */
export function dayTotalLine(words: Words, used: number, available: number): string {
  if (used === 0 && available === 0) return words.say('week.day-off');
  return words.say('week.day-total', { used: words.number(used), available: words.minutesShort(available) });
}
