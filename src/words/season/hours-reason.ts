import type { PlanSeason, SeasonWeek } from '../../plan/season/document.js';
import type { Words } from '../words.js';

/**
 * Why a week of a season has its hours.
 *
 * @example 'An easier week: 70% of 4 hours 20 minutes, the highest of the four weeks before.'
 */
export function hoursReason(
  words: Words,
  { wishes }: Pick<PlanSeason, 'wishes'>,
  { start, hours, why }: SeasonWeek,
): string {
  const { reason, base, share, risesLeft } = why;
  const values = {
    base: words.hours(base),
    // A rise is told as it is once it is in whole steps.
    share: words.share(reason === 'rise' ? hours / base - 1 : (share ?? 0)),
    drop: words.share(wishes.taperDrop),
    most: words.hours(wishes.mostHours),
    limit: words.share(wishes.rise),
    left: words.say('hours-reason.rise.left', { count: risesLeft }),
  };
  if (reason !== 'by-hand') return words.say(`hours-reason.${reason}`, values);
  const set = wishes.byHand.find((week) => week.start === start);
  return words.say(`hours-reason.by-hand.${set?.reason ?? 'other'}`);
}
