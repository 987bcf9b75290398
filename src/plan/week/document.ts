import type { ByCategory } from '../../training/method/ids.js';
import type { Clash } from '../../training/week/clashes.js';
import type { Conflict } from '../../training/week/wish.js';
import type { DaySession, WeekWishes } from './wishes.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

export const weekStates = ['laid', 'looking', 'nothing-fits'] as const;

/** Sessions on the days of a week. */
export interface PlanWeek {
  readonly wishes: WeekWishes;
  /** Lengths that were picked for kinds beside the wishes, in minutes; they count where they are still among the options. */
  readonly picks: Partial<ByCategory<readonly number[]>>;
  /** `laid`: proven that no week costs less. `looking`: the search goes on. `nothing-fits`: proven that there is no week. */
  readonly state: (typeof weekStates)[number];
  /** Seven lists of sessions, Monday first, each in the order of the day; null where there is no week, or none yet. */
  readonly days: readonly (readonly DaySession[])[] | null;
  /** The lengths chosen for each kind, in minutes. */
  readonly sessions: ByCategory<readonly number[]>;
  /** The sum of the costs of all clashes; null where there is no week. */
  readonly cost: number | null;
  readonly clashes: readonly Clash[];
  /** Null where a week was found, or where it is still being looked for. */
  readonly conflict: Conflict | null;
}
