import type { ByCategory, CategoryId } from '../../training/method/ids.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** A session of a day. */
export interface DaySession {
  readonly category: CategoryId;
  /** How long it is. */
  readonly minutes: number;
}

/** A session that is to stay on its day. */
export interface PlacedSession extends DaySession {
  /** 0 for Monday to 6 for Sunday. */
  readonly day: number;
}

/** What a person wants of a week. Days are counted from 0 for Monday. */
export interface WeekWishes {
  /** Minutes available on each day, Monday first; 0 is a day off. */
  readonly days: readonly number[];
  /** Days that must stay free, whatever minutes they have. */
  readonly free: readonly number[];
  /** The day that the long run wants; null where any will do. */
  readonly longRun: number | null;
  /** Least days without a session. */
  readonly restDays: number;
  /** Most sessions on one day. */
  readonly sessionsADay: number;
  /** Sessions that stay where they are: a club evening, a card put on its day. */
  readonly pinned: readonly PlacedSession[];
  /** Sessions that are done: they stay, whatever the day has. */
  readonly done: readonly PlacedSession[];
  /** How many days of the week are over: nothing new is put on them. */
  readonly passed: number;
  /** Lengths that a person has settled for a kind, in minutes; kinds left out are cut as fits the week best. */
  readonly sessions: Partial<ByCategory<readonly number[]>>;
  /** The week from which as few sessions as possible should move; null where it does not matter. */
  readonly before: readonly (readonly DaySession[])[] | null;
}

/** Wishes as they are asked for: the minutes of the days, and what differs from the method's usual week. */
export type WeekRequest = Pick<WeekWishes, 'days'> & { readonly [K in keyof WeekWishes]?: WeekWishes[K] | undefined };
