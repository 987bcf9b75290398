import type { SeasonWeek } from '../../plan/season/document.js';
import { joined } from '../joined.js';
import type { Words } from '../words.js';
import { eventName } from './event-name.js';

/**
 * The phase of a week, and what is special of it.
 *
 * @example 'build (easier, 10 km)'
 */
export function phaseText(words: Words, { phase, isEasier, events }: SeasonWeek): string {
  const special = [
    ...(isEasier ? [words.say('season.easier')] : []),
    ...events.map(({ event }) => eventName(words, event)),
  ];
  const name = words.say(`phase.${phase}`);
  return special.length === 0 ? name : `${name} (${joined(words, special, 'comma')})`;
}

/**
 * A week of a season by its number and its phase.
 *
 * @example 'Week 3, build (easier)'
 */
export const weekTitle = (words: Words, week: SeasonWeek): string =>
  joined(words, [words.say('season.week-number', { number: week.number }), phaseText(words, week)], 'comma');
