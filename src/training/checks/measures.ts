import type { MeasureId } from '../method/check-rules.js';
import type { FactId, Facts } from './facts.js';

/** What measured values are counted in. */
export const checkUnits = ['days', 'hours', 'load', 'minutes', 'sessions', 'share', 'strain', 'times'] as const;
export type CheckUnit = (typeof checkUnits)[number];

/** Facts that are all known. */
type Known = Readonly<Record<FactId, number>>;

/** Something that can be measured of a week. */
export interface Measure {
  readonly unit: CheckUnit;
  /** What it is worked out from, and what is told with it. */
  readonly reads: readonly FactId[];
  /** Only called where all of `reads` are known; null where there is nothing to measure. */
  readonly of: (facts: Known) => number | null;
  /** Of what the value is a share: what would have to change is counted in it. */
  readonly whole?: FactId;
  /** What that is counted in. */
  readonly changes?: CheckUnit;
}

const itself = (id: FactId, unit: CheckUnit): Measure => ({ unit, reads: [id], of: (facts) => facts[id] });

/** By how much one number is above another, as a share of the other. */
const rise = (id: FactId, before: FactId, changes: CheckUnit): Measure => ({
  unit: 'share',
  reads: [id, before],
  of: (facts) => (facts[before] > 0 ? facts[id] / facts[before] - 1 : null),
  whole: before,
  changes,
});

/** Everything that can be measured, by name. */
export const measures: Readonly<Record<MeasureId, Measure>> = {
  activity_minutes: {
    ...itself('activity_minutes', 'minutes'),
    reads: ['activity_minutes', 'moderate_minutes', 'vigorous_minutes'],
  },
  hard_minutes_share: {
    unit: 'share',
    reads: ['tempo_minutes', 'intervals_minutes', 'running_minutes', 'hard_sessions', 'running_sessions'],
    of: ({ tempo_minutes, intervals_minutes, running_minutes }) =>
      running_minutes > 0 ? (tempo_minutes + intervals_minutes) / running_minutes : null,
    whole: 'running_minutes',
    changes: 'minutes',
  },
  hard_sessions_share: {
    unit: 'share',
    reads: ['hard_sessions', 'running_sessions'],
    of: ({ hard_sessions, running_sessions }) => (running_sessions > 0 ? hard_sessions / running_sessions : null),
    whole: 'running_sessions',
    changes: 'sessions',
  },
  hard_gap: itself('hard_gap', 'days'),
  hours_rise: rise('weekly_hours', 'hours_before', 'hours'),
  load_rise: rise('week_load', 'own_load', 'load'),
  longest_run_rise: rise('longest_run', 'longest_run_before', 'minutes'),
  monotony_rise: rise('load_monotony', 'own_monotony', 'times'),
  rest_days: itself('rest_days', 'days'),
  season_rise: itself('season_rise', 'share'),
  season_run_rise: itself('season_run_rise', 'share'),
  strain_rise: rise('week_strain', 'own_strain', 'strain'),
  strength_gap: itself('strength_gap', 'days'),
  strength_minutes: itself('strength_minutes', 'minutes'),
  strength_sessions: itself('strength_sessions', 'sessions'),
  weekly_hours: itself('weekly_hours', 'hours'),
};

/** The value of a measure, or the first fact that it lacks. */
export function measured(
  { reads, of }: Measure,
  facts: Facts,
): { readonly value: number | null; readonly missing: FactId | null } {
  const missing = reads.find((id) => typeof facts[id] !== 'number') ?? null;
  return { value: missing === null && isKnown(facts, reads) ? of(facts) : null, missing };
}

const isKnown = (facts: Facts, reads: readonly FactId[]): facts is Known =>
  reads.every((id) => typeof facts[id] === 'number');
