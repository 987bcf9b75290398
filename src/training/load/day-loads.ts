import type { ByCategory, CategoryId } from '../method/ids.js';

/**
 * Effort times minutes of each day, whole numbers, for the measure is coarse.
 *
 * @param days sessions of each day.
 * @param efforts 0 to 10 by category.
 * @example a day with 30 minutes at 5 and 40 at 3: 270
 */
export const dayLoads = (
  days: readonly (readonly { readonly category: CategoryId; readonly minutes: number }[])[],
  efforts: ByCategory<number>,
): readonly number[] =>
  days.map((sessions) =>
    Math.round(sessions.reduce((sum, { category, minutes }) => sum + minutes * efforts[category], 0)),
  );
