import type { PlanRunning, RunningNotice } from '../../plan/running/document.js';
import type { Values } from '../phrases.js';
import type { Words } from '../words.js';
import { clockTime } from './clock-time.js';
import { distancesOf } from './distances.js';

/** What there is to say of paces and heart rates, as a sentence. */
export function runningNoticeLine(
  words: Words,
  { wishes }: PlanRunning,
  { code, level, values }: RunningNotice,
): string {
  const text = words.say(`running-notice.${code}`, { ...values, ...toldAs(words, wishes.unit, values) });
  return level === 'caution' ? words.say('planner.caution', { text }) : text;
}

function toldAs(
  words: Words,
  unit: PlanRunning['wishes']['unit'],
  { pace, seconds, least, most }: RunningNotice['values'],
): Values {
  const { toUnit, per } = distancesOf(words, unit);
  return {
    ...(pace === undefined ? {} : { pace: words.say('running.pace', { pace: clockTime(toUnit(pace)), per }) }),
    ...(seconds === undefined ? {} : { seconds: clockTime(seconds) }),
    ...(least === undefined ? {} : { least: clockTime(least) }),
    ...(most === undefined ? {} : { most: clockTime(most) }),
  };
}
