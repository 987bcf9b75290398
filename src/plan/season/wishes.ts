import type { ByCategory, EventId } from '../../training/method/ids.js';
import type { SeasonPhaseId, UpkeepId } from '../../training/method/season-rules.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** Why a week is set by hand. */
export const byHandReasons = ['holiday', 'ill', 'other'] as const;
export type ByHandReason = (typeof byHandReasons)[number];

/** A phase before the taper. */
export interface WishedPhase {
  readonly phase: SeasonPhaseId;
  /** Its weeks; null for its share of the weeks that the others leave. */
  readonly weeks: number | null;
}

/** An event that is not the main one. */
export interface OtherEvent {
  /** ISO date. */
  readonly date: string;
  readonly event: EventId;
}

/** A week that a person has set. */
export interface ByHandWeek {
  /** A day of the week, as an ISO date; in a plan its Monday. */
  readonly start: string;
  /** Its hours; null where they follow from the season. 0 is a week off. */
  readonly hours: number | null;
  readonly reason: ByHandReason;
  /** Durations picked for a category, in minutes. */
  readonly sessions: Partial<ByCategory<readonly number[]>>;
}

/** What a person wants of a season. Shares and drops are parts of 1. */
export interface SeasonWishes {
  /** A day of the first week, as an ISO date. */
  readonly start: string;
  /** The day of the main event, as an ISO date; which event it is stands among the inputs. */
  readonly date: string;
  /** Hours a week before the season. */
  readonly hours: number;
  /** The most hours of a week. */
  readonly mostHours: number;
  /** Most that a week may have above the highest of the four weeks before it. */
  readonly rise: number;
  /** Every so many weeks one is easier; 0 for none. */
  readonly easierEvery: number;
  /** What an easier week loses. */
  readonly easierDrop: number;
  /** Weeks of the taper, that of the event included. */
  readonly taperWeeks: number;
  /** What all weeks of the taper together lose. */
  readonly taperDrop: number;
  /** From which phase on strength is only kept up. */
  readonly upkeepFrom: UpkeepId;
  /** Strength sessions a week that keep it up. */
  readonly upkeepSessions: number;
  /** Weeks of rest after the event. */
  readonly recoveryWeeks: number;
  /** The phases before the taper, in their order. */
  readonly phases: readonly WishedPhase[];
  /** Events on the way, and after the main one. */
  readonly events: readonly OtherEvent[];
  /** Weeks that a person has set: holidays, illness. */
  readonly byHand: readonly ByHandWeek[];
  /** Weeks without training just before the season; `hours` are those before them. */
  readonly weeksOff: number;
  /** Minutes of the longest run in the four weeks before the season; null where it is not known. */
  readonly longestRun: number | null;
}

/**
 * A season as it is asked for: its date, its first day or its weeks (two of these three, or one and the method's usual
 * weeks), and what differs from the method's usual season.
 */
export type SeasonRequest = {
  readonly [K in Exclude<keyof SeasonWishes, 'byHand'>]?: SeasonWishes[K] | undefined;
} & {
  /** Weeks up to the event, its own included. */
  readonly weeks?: number | undefined;
  readonly byHand?: readonly (Pick<ByHandWeek, 'start'> & Partial<ByHandWeek>)[] | undefined;
};
