import { runningRules } from '../../plan/running/running-ground.js';
import type { Method } from '../../training/method/document.js';
import type { EqualTime } from '../../training/running/equal-times.js';
import type { Words } from '../words.js';
import { clockTime } from './clock-time.js';

/** Why the slower end of an equal time is later than the equations say. */
export function wideningLine(words: Words, method: Method, reason: NonNullable<EqualTime['widened']>): string {
  const { marathon_minutes, outside_share, least_seconds, most_seconds } = runningRules(method).equal_times;
  return words.say(`running.equal.${reason}`, {
    minutes: words.minutes(marathon_minutes),
    share: words.share(outside_share),
    least: clockTime(least_seconds),
    most: clockTime(most_seconds),
  });
}
