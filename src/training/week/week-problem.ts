import type { WeekRules } from '../method/document.js';
import type { CategoryId } from '../method/ids.js';
import type { DaySet } from './day-sets.js';

/** What a kind of training needs of a week. All lengths are in steps of the method's rounding, 5 minutes by default. */
export interface KindNeed {
  readonly category: CategoryId;
  readonly shortest: number;
  readonly longest: number;
  /** The least and the most that its sessions may add up to. */
  readonly least: number;
  readonly most: number;
  /** Its rounded minutes, between two whole steps where a person has set them off the step. */
  readonly rounded: number;
  /** The wished number of sessions; 0 where it has no minutes. */
  readonly wished: number;
  /** Its sessions, where they are settled; else every cut within the limits above may be chosen. */
  readonly sessions: readonly number[] | null;
}

/** A session that stays where it is. */
export interface FixedSession {
  readonly category: CategoryId;
  readonly steps: number;
  readonly day: number;
  /** Over and done: neither the minutes of its day nor a day off can forbid it. */
  readonly isDone: boolean;
}

/** Sessions to be laid on the seven days. */
export interface WeekProblem {
  readonly rules: WeekRules;
  /** Minutes of a step. */
  readonly step: number;
  /** Every kind of training once, in the order of `categoryIds`. */
  readonly kinds: readonly KindNeed[];
  /** Whole steps that each day has, Monday first. */
  readonly room: readonly number[];
  /** Days that must stay free, whatever room they have. */
  readonly free: DaySet;
  /** Days that are over: nothing is put on them. */
  readonly passed: DaySet;
  readonly sessionsADay: number;
  readonly restDays: number;
  /** The day that the long run wants, or null. */
  readonly longRun: number | null;
  readonly fixed: readonly FixedSession[];
  /** Days of each kind in the layout from which as little as possible should move; null where there is none. */
  readonly before: Readonly<Partial<Record<CategoryId, DaySet>>> | null;
}

/** Lengths of the sessions of each kind by day, in steps; 0 where there is none. */
export type Laid = Readonly<Record<CategoryId, readonly number[]>>;
