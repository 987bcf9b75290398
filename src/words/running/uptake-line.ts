import type { RunningBasis } from '../../plan/running/document.js';
import type { Words } from '../words.js';
import { clockTime } from './clock-time.js';

/** The oxygen uptake that a race or a threshold pace implies, and what share of it is held for so long. */
export const uptakeLine = (words: Words, { uptake, held, seconds }: RunningBasis): string =>
  words.say('running.uptake', {
    uptake: words.number(uptake, 0),
    held: words.share(Math.round(held * 100) / 100),
    time: clockTime(seconds),
  });
