import type { PlanRunning } from '../../plan/running/document.js';
import type { Words } from '../words.js';
import { distancesOf } from './distances.js';

/**
 * The running of the week in one sentence.
 *
 * @example 'Slow runs at 5:20 to 6:15 a kilometre: 22 to 26 km this week.'
 */
export function runningHeadline(words: Words, { guides, wishes, metres }: PlanRunning): string {
  const pace = guides.find(({ category }) => category === 'slow')?.pace;
  if (!pace || !metres) return words.say('running.headline.by-feel');
  const distances = distancesOf(words, wishes.unit);
  if (metres.to === 0) return words.say('running.headline.none', { pace: distances.pace(pace) });
  return words.say('running.headline', { pace: distances.pace(pace), distance: distances.span(metres, 0) });
}
