import { withoutNoise } from '../../sheet/numbers.js';
import { strengthUpkeep } from '../../training/method/names.js';
import { byCategory, type ByCategory } from '../../training/method/ids.js';
import type { PlanInputs } from '../document.js';
import { inputValues } from '../inputs.js';
import type { Planner } from '../planner.js';
import type { PlanSeason, SeasonWeek } from './document.js';
import { upkeepMinutes } from './upkeep.js';

/** The season of a planner, with the inputs that all its weeks share. */
export interface SeasonOnShow {
  readonly planner: Planner;
  readonly inputs: PlanInputs;
  readonly season: PlanSeason;
}

/** A quantity of the sheet in every week of a season; NaN in a week off and where it has no number. */
export function seasonSeries({ planner, inputs, season }: SeasonOnShow, quantity: string): Float64Array {
  const column = planner.column.copy();
  return Float64Array.from(season.weeks, ({ hours, phase }) => {
    if (hours === 0) return NaN;
    const upkeep = upkeepMinutes(planner.method, season.wishes, phase);
    column.set({ ...inputValues({ ...inputs, hours, phase }), [strengthUpkeep]: upkeep });
    return withoutNoise(column.value(quantity));
  });
}

/** When a quantity reaches a value in a season: the first week and all others, or the most that it comes to. */
export interface Reached {
  /** The weeks in which it has the value or more, in their order. */
  readonly weeks: readonly SeasonWeek[];
  /** The week in which it is largest; null where it has a number in none. */
  readonly largest: { readonly week: SeasonWeek; readonly value: number } | null;
}

/** The weeks of a season in which a quantity is at least so much. */
export function whenReached(on: SeasonOnShow, quantity: string, value: number): Reached {
  const series = seasonSeries(on, quantity);
  const { weeks } = on.season;
  let largest: Reached['largest'] = null;
  weeks.forEach((week, index) => {
    const here = series[index] ?? NaN;
    if (Number.isFinite(here) && here > (largest?.value ?? -Infinity)) largest = { week, value: here };
  });
  return { weeks: weeks.filter((_, index) => (series[index] ?? NaN) >= value - 1e-9), largest };
}

/** A season in a few numbers, to be held against another. */
export interface SeasonSummary {
  /** Weeks up to the event, its own included. */
  readonly weeks: number;
  readonly mostHours: number;
  /** All hours up to the event. */
  readonly totalHours: number;
  /** All planned minutes up to the event. */
  readonly minutes: ByCategory<number>;
  readonly longestRun: number;
  readonly mostLoad: number;
  /** How often something is to be minded. */
  readonly cautions: number;
}

/** A season in a few numbers. */
export function seasonSummary({ weeks, notices }: PlanSeason): SeasonSummary {
  const before = weeks.filter(({ weeksToGo }) => weeksToGo >= 0);
  const most = (of: (week: SeasonWeek) => number): number => Math.max(0, ...before.map(of));
  const sum = (of: (week: SeasonWeek) => number): number => before.reduce((total, week) => total + of(week), 0);
  const all = [...notices, ...weeks.flatMap((week) => week.notices)];
  const minutes = byCategory((id) => sum(({ rounded }) => rounded[id]));
  return {
    weeks: before.length,
    mostHours: most(({ hours }) => hours),
    totalHours: sum(({ hours }) => hours),
    minutes,
    longestRun: most(({ longestRun }) => longestRun),
    mostLoad: most(({ load }) => load),
    cautions: all.filter(({ level }) => level === 'caution').length,
  };
}
