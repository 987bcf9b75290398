import type { Facts, seasonFactIds } from '../../training/checks/facts.js';
import type { Method } from '../../training/method/document.js';
import { longestBefore } from '../../training/season/single-run.js';
import type { PlanSeason } from '../season/document.js';
import { seasonRules } from '../season/season-ground.js';

type SeasonFacts = Facts & Readonly<Record<(typeof seasonFactIds)[number], number | null>>;

/**
 * The steepest that a season has: hours of a week over what it starts from, and its longest run over the longest of the
 * weeks before, both as what comes to it, as a share; null without a season.
 */
export function seasonFacts(season: PlanSeason | null, method: Pick<Method, 'season'>): SeasonFacts {
  if (!season) return { season_rise: null, season_run_rise: null };
  const { weeks, wishes } = season;
  const { weeks: back } = seasonRules(method).single_run;
  const runs = weeks.map(({ longestRun }) => longestRun);
  const rises = weeks.map(({ hours, why }) => riseOf(hours, why.base));
  const longer = runs.map((run, week) => riseOf(run, longestBefore(runs, wishes.longestRun, { week, weeks: back })));
  return { season_rise: Math.max(0, ...rises), season_run_rise: Math.max(0, ...longer) };
}

const riseOf = (value: number, before: number): number => (before > 0 ? value / before - 1 : 0);
