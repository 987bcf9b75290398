import { dayLoads } from '../load/day-loads.js';
import { loadSpread } from '../load/load-spread.js';
import type { ByCategory, CategoryId } from '../method/ids.js';
import type { dayFactIds, Facts } from './facts.js';

/** Sessions of one day. */
export type CheckedDay = readonly { readonly category: CategoryId; readonly minutes: number }[];

const hardIds: readonly CategoryId[] = ['tempo', 'intervals'];

/**
 * What checks need of a week's days, the week taken as a circle: Sunday meets Monday.
 *
 * @param days seven lists of sessions, Monday first.
 * @param efforts 0 to 10 by category.
 * @returns days of rest; least days from one hard run to the next, and from a strength session to the next hard run
 *   (0 on the same day; 7 where there is none to follow); monotony and strain, null where all days are alike.
 */
export function dayFacts(
  days: readonly CheckedDay[],
  efforts: ByCategory<number>,
): Facts & Readonly<Record<(typeof dayFactIds)[number], number | null>> {
  const hard = daysWith(days, hardIds);
  const strength = daysWith(days, ['strength']);
  const { monotony, strain } = loadSpread(dayLoads(days, efforts));
  return {
    rest_days: days.filter((sessions) => sessions.length === 0).length,
    hard_gap: leastGap(hard, hard, 1),
    strength_gap: leastGap(strength, hard, 0),
    load_monotony: monotony,
    week_strain: strain,
  };
}

const daysWith = (days: readonly CheckedDay[], ids: readonly CategoryId[]): readonly number[] =>
  days.flatMap((sessions, day) => (sessions.some(({ category }) => ids.includes(category)) ? [day] : []));

/** Least days from one of `first` to the next of `then`, not fewer than `from`; a whole week where none follows sooner. */
function leastGap(first: readonly number[], then: readonly number[], from: 0 | 1): number {
  const gaps = first.flatMap((one) => then.map((other) => (other - one + 7) % 7));
  return Math.min(7, ...gaps.filter((gap) => gap >= from));
}
