import type { ByCategory, CategoryId, PhaseId } from '../../training/method/ids.js';
import type { CalendarWeek } from '../../training/season/season-weeks.js';
import type { HoursReason } from '../../training/season/season-hours.js';
import type { Notice, NoticeCode } from '../notice.js';
import type { SeasonWishes } from './wishes.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** What there is to say of a season beyond what the method says of its weeks. */
export const seasonNoticeCodes = [
  'too-few-weeks',
  'spare-weeks',
  'start-above-most',
  'most-not-reached',
  'fast-rise',
  'other-taper',
  'after-break',
  'ill',
  'steep-week',
  'above-most',
  'longer-run',
  'shorter-runs',
  'event-outside',
  'by-hand-outside',
  'input-held',
  'week-failed',
] as const;
export type SeasonNoticeCode = (typeof seasonNoticeCodes)[number];

/** What would help: another length, another number, another week. */
export const seasonChangeKinds = [
  'weeks',
  'phase-weeks',
  'taper-weeks',
  'most-hours',
  'rise',
  'week-hours',
  'week-sessions',
] as const;

/** A change of what is wished. */
export interface SeasonChange {
  readonly kind: (typeof seasonChangeKinds)[number];
  /** What it becomes: weeks, hours, or a share. */
  readonly amount: number;
  /** The phase, by its place among those wished, from 0. */
  readonly phase: number | null;
  /** The Monday of the week. */
  readonly start: string | null;
  readonly category: CategoryId | null;
  /** Durations in minutes. */
  readonly sessions: readonly number[] | null;
}

/** Something to know of a season or of one of its weeks. */
export interface SeasonNotice extends Omit<Notice, 'code'> {
  readonly code: NoticeCode | SeasonNoticeCode;
  /** What would help, the cheapest first. */
  readonly waysOut: readonly SeasonChange[];
}

/** Why a week has its hours. */
export interface HoursDerivation {
  /** What it follows from. */
  readonly reason: HoursReason;
  /** Hours that it starts from: the highest of the four weeks before, or before the taper, the rest or the break. */
  readonly base: number;
  /** The part of the base that the week has or, of a rise, that it adds; null where there is none. */
  readonly share: number | null;
  /** Most hours that the ceiling of the rise allows. */
  readonly ceiling: number;
  /** Weeks that rise, this one included; 0 where it does not rise. */
  readonly risesLeft: number;
}

/** A week of a season. */
export interface SeasonWeek extends CalendarWeek {
  /** The Monday, an ISO date. */
  readonly start: string;
  readonly phase: PhaseId;
  /** Hours a week. */
  readonly hours: number;
  readonly why: HoursDerivation;
  /** Exact minutes. */
  readonly minutes: ByCategory<number>;
  /** Minutes in whole steps. */
  readonly rounded: ByCategory<number>;
  /** Durations in minutes: those picked for the week, else the best way to cut its minutes. */
  readonly sessions: ByCategory<readonly number[]>;
  /** Effort times minutes, by the efforts of the method. */
  readonly load: number;
  /** Minutes of the longest run; 0 where there is none. */
  readonly longestRun: number;
  readonly notices: readonly SeasonNotice[];
}

/** The weeks up to an event, each one divided by the same method. */
export interface PlanSeason {
  readonly wishes: SeasonWishes;
  /** The phases before the taper as long as they are, in their order. */
  readonly phases: readonly { readonly phase: PhaseId; readonly weeks: number }[];
  readonly weeks: readonly SeasonWeek[];
  /** What concerns the season as a whole. */
  readonly notices: readonly SeasonNotice[];
}
