import type { CategoryId } from '../method/ids.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

export const wishKinds = [
  'day-minutes',
  'free-day',
  'long-run',
  'rest-days',
  'sessions-a-day',
  'pinned',
  'minutes',
] as const;

/** A wish among those that cannot hold together. */
export interface Wish {
  /** `day-minutes`: a day has no more than its minutes; `minutes`: a kind of training has its minutes. */
  readonly kind: (typeof wishKinds)[number];
  /** The day it is about, 0 for Monday; null where it is about none. */
  readonly day: number | null;
  readonly category: CategoryId | null;
  /** Minutes of a day, a session or a kind; days or sessions where the wish counts them; 0 where it counts nothing. */
  readonly amount: number;
}

export const changeKinds = [
  'more-minutes',
  'use-free-day',
  'any-long-run',
  'fewer-rest-days',
  'more-sessions-a-day',
  'unpin',
  'settle-sessions',
] as const;

/** A change to the wishes that would help. */
export interface Change {
  readonly kind: (typeof changeKinds)[number];
  /** The day it is about, 0 for Monday; null where it is about none. */
  readonly day: number | null;
  readonly category: CategoryId | null;
  /** Minutes more on a day; rest days or sessions a day as they would be; minutes of the session that is unpinned. */
  readonly amount: number;
  /** The lengths in minutes that a kind would have; null where the change is about something else. */
  readonly sessions: readonly number[] | null;
}

/** Changes that help together, and what the week would cost then. */
export interface WayOut {
  readonly changes: readonly Change[];
  readonly cost: number;
}

/** Why nothing fits, and what would help. */
export interface Conflict {
  /** Wishes that cannot hold together; without any one of them the others can. */
  readonly wishes: readonly Wish[];
  /** The cheapest first. */
  readonly waysOut: readonly WayOut[];
}
