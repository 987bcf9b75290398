import type { Founded } from './founded.js';
import type { PhaseId } from './ids.js';

// The comments here are published: `npm run compile` copies them into shared/schema/method.schema.json.

/** Phases that a season can have before its taper. */
export const seasonPhaseIds = ['off-season', 'base', 'build', 'peak', 'recovery'] as const satisfies readonly PhaseId[];
export type SeasonPhaseId = (typeof seasonPhaseIds)[number];

/** From which phase on strength is only kept up. */
export const upkeepIds = ['never', 'taper', 'peak'] as const;
export type UpkeepId = (typeof upkeepIds)[number];

/** Most that a season may have; what it may have of hours is the method's affair. */
export const seasonLimits = {
  weeks: 104,
  phases: 12,
  easierEvery: 8,
  taperWeeks: 3,
  upkeepSessions: 3,
  recoveryWeeks: 8,
  events: 12,
} as const;

/** How a season is carried up to its event, where a person does not say otherwise. Parts and drops are shares of 1. */
export interface SeasonRules {
  /** Weeks up to the event, its own week included. */
  readonly weeks: number;
  /** The phases before the taper, in their order. */
  readonly phases: readonly {
    readonly phase: SeasonPhaseId;
    /** Its share of the weeks before the taper, against the shares of the others. */
    readonly share: number;
    /** Its least weeks. */
    readonly least: number;
  }[];
  /** Phases in which the hours rise; in the others they stay. */
  readonly rises: readonly SeasonPhaseId[];
  /** How fast the hours rise. */
  readonly rise: Founded & {
    /** Most that a week may have above the highest of the four weeks before it. */
    readonly share: number;
    /** A rise above this is worth a look. */
    readonly look: number;
    /** The most hours of a week, as a multiple of those at the start. */
    readonly most: number;
  };
  /** Weeks that are easier than those before and after. */
  readonly easier: Founded & {
    /** Every so many weeks one is easier; 0 for none. */
    readonly every_weeks: number;
    /** What an easier week, or that of an event on the way, loses. */
    readonly drop: number;
  };
  /** The last weeks before the event. */
  readonly taper: Founded & {
    readonly weeks: number;
    /** What all weeks of the taper together lose. */
    readonly drop: number;
    /** The least drop that the reviews found to help. */
    readonly least: number;
    /** The largest. */
    readonly most: number;
  };
  /** Strength is only kept up from some phase on. */
  readonly upkeep: Founded & { readonly from: UpkeepId; readonly sessions: number };
  /** The weeks after the event. */
  readonly recovery: Founded & { readonly weeks: number; readonly share: number };
  /** The first weeks after weeks off. */
  readonly way_back: Founded & {
    /** A week set by hand to this share or less of the weeks before it is a week off. */
    readonly off_share: number;
    /** After so many weeks off or more, the first weeks have these shares of the hours before. */
    readonly steps: readonly { readonly weeks: number; readonly shares: readonly number[] }[];
  };
  /** The longest run of a week against those of the weeks before it. */
  readonly single_run: Founded & { readonly most: number; readonly weeks: number };
}
