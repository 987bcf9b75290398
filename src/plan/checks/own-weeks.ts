import { loadSpread } from '../../training/load/load-spread.js';
import type { PlanLoad } from './document.js';

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const highest = (values: readonly (number | null)[]): number | null => {
  const known = values.filter((value) => value !== null);
  return known.length > 0 ? Math.max(...known) : null;
};

/**
 * What a runner's own weeks come to: their mean load, rounded, and their highest monotony and strain.
 *
 * @param weeks loads of each week: seven days, Monday first, or the whole week as one number.
 */
export function ownWeeks(weeks: readonly (readonly number[])[]): PlanLoad['own'] {
  if (weeks.length === 0) return { load: null, monotony: null, strain: null, dayWeeks: 0 };
  const spreads = weeks.filter((days) => days.length === 7).map(loadSpread);
  const loads = weeks.map((days) => days.reduce((sum, load) => sum + load, 0));
  return {
    load: Math.round(mean(loads)),
    monotony: highest(spreads.map(({ monotony }) => monotony)),
    strain: highest(spreads.map(({ strain }) => strain)),
    dayWeeks: spreads.length,
  };
}
