import { categoryIds, type ByCategory } from '../method/ids.js';

/**
 * The load of a week: how hard a usual session of each kind feels (0 to 10) times its minutes, added up; a whole number,
 * for the measure is coarse.
 *
 * @param minutes planned minutes by category.
 * @param effort 0 to 10 by category; an assumption, not what a runner has felt.
 * @source session effort times minutes: Foster C. Med Sci Sports Exerc 1998;30(7):1164–1168, from memory: for the effort
 *   of a whole session as its runner rates it.
 * @example 72 minutes at 3 and 30 at 8: weekLoad(…) // 456
 */
export function weekLoad(minutes: ByCategory<number>, effort: ByCategory<number>): number {
  return Math.round(categoryIds.reduce((sum, id) => sum + minutes[id] * effort[id], 0));
}
