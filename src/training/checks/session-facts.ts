import { weekLoad } from '../load/week-load.js';
import { byCategory, type ByCategory } from '../method/ids.js';
import type { Facts, sessionFactIds } from './facts.js';

/**
 * What checks need of a week's sessions.
 *
 * @param sessions minutes of each session, by category.
 * @param efforts 0 to 10 by category.
 * @example sessions of 45 and 30 slow, 35 tempo, 25 intervals: 4 runs, 2 of them hard, the longest 45
 */
export function sessionFacts(
  sessions: ByCategory<readonly number[]>,
  efforts: ByCategory<number>,
): Facts & Readonly<Record<(typeof sessionFactIds)[number], number>> {
  const { slow, tempo, intervals, strength } = sessions;
  return {
    running_sessions: slow.length + tempo.length + intervals.length,
    hard_sessions: tempo.length + intervals.length,
    strength_sessions: strength.length,
    longest_run: Math.max(0, ...slow, ...tempo, ...intervals),
    week_load: weekLoad(
      byCategory((id) => sessions[id].reduce((sum, minutes) => sum + minutes, 0)),
      efforts,
    ),
  };
}
