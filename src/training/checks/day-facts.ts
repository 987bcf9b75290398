import { dayLoads } from '../load/day-loads.js';
import { loadSpread } from '../load/load-spread.js';
import type { ByCategory, CategoryId } from '../method/ids.js';
import type { dayFactIds, Facts } from './facts.js';

/** Sessions of one day, in the order in which they are done. */
export type CheckedDay = readonly { readonly category: CategoryId; readonly minutes: number }[];

const hardIds: readonly CategoryId[] = ['tempo', 'intervals'];

/**
 * What checks need of a week's days, the week taken as a circle: Sunday meets Monday.
 *
 * @param days seven lists of sessions, Monday first.
 * @param efforts 0 to 10 by category.
 * @returns the load of the week; days of rest; least days from one hard run to the next, and from a strength session to the
 *   hard run that follows it (0 later on the same day; 7 where it is the one a week later; null where there is none);
 *   monotony and strain, null where all days are alike.
 */
export function dayFacts(
  days: readonly CheckedDay[],
  efforts: ByCategory<number>,
): Facts & Readonly<Record<(typeof dayFactIds)[number], number | null>> {
  const hard = placesOf(days, hardIds);
  const { week, monotony, strain } = loadSpread(dayLoads(days, efforts));
  return {
    week_load: week,
    rest_days: days.filter((sessions) => sessions.length === 0).length,
    hard_gap: leastGap(hard, hard),
    strength_gap: leastGap(placesOf(days, ['strength']), hard),
    load_monotony: monotony,
    week_strain: strain,
  };
}

/** Where a session stands in the week. */
interface Place {
  readonly day: number;
  readonly order: number;
}

const placesOf = (days: readonly CheckedDay[], ids: readonly CategoryId[]): readonly Place[] =>
  days.flatMap((sessions, day) =>
    sessions.flatMap(({ category }, order) => (ids.includes(category) ? [{ day, order }] : [])),
  );

/** Least days from one of `first` to the next of `then`; null where one of them is empty. */
function leastGap(first: readonly Place[], then: readonly Place[]): number | null {
  const gaps = first.flatMap((one) => then.map((other) => daysTo(one, other)));
  return gaps.length > 0 ? Math.min(...gaps) : null;
}

/** What is not later on the same day comes a week later. */
function daysTo(one: Place, other: Place): number {
  const days = (other.day - one.day + 7) % 7;
  return days === 0 && other.order <= one.order ? 7 : days;
}
