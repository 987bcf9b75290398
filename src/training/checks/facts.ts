import { categoryIds } from '../method/ids.js';

/** What the sheet of every method says of a week. */
export const sheetFactIds = ['weekly_hours', 'strength_cap', 'running_minutes'] as const;

/** What its sessions say. */
export const sessionFactIds = [
  'running_sessions',
  'hard_sessions',
  'strength_sessions',
  'longest_run',
  'week_load',
] as const;

/** What its days say. */
export const dayFactIds = ['rest_days', 'hard_gap', 'strength_gap', 'load_monotony', 'week_strain'] as const;

/** How hard its minutes are for the body. */
export const activityFactIds = ['moderate_minutes', 'vigorous_minutes', 'activity_minutes'] as const;

/** What a runner tells of the weeks before. */
export const toldFactIds = ['hours_before', 'longest_run_before', 'own_load', 'own_monotony', 'own_strain'] as const;

/** What a season says. */
export const seasonFactIds = ['season_rise', 'season_run_rise'] as const;

/** The exact minutes of each kind: `slow_minutes`. */
export const minuteFactIds = categoryIds.map((id) => `${id}_minutes` as const);

export type FactId =
  | (typeof sheetFactIds)[number]
  | (typeof sessionFactIds)[number]
  | (typeof dayFactIds)[number]
  | (typeof activityFactIds)[number]
  | (typeof toldFactIds)[number]
  | (typeof seasonFactIds)[number]
  | (typeof minuteFactIds)[number];

/** What checks measure from, by names that a sheet has too; what is not known is not there, or null. */
export type Facts = Readonly<Partial<Record<FactId, number | null>>>;
