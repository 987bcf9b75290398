import type { CategoryId } from '../method/ids.js';

/** A session that was done. */
export interface DoneSession {
  /** The day it was done, as an ISO date. */
  readonly date: string;
  readonly category: CategoryId;
  /** How long it was, in whole minutes. */
  readonly minutes: number;
  /** How hard it felt as a whole, 0 to 10; null where it is not known. */
  readonly effort: number | null;
}

/** What a record may hold, ends included: minutes of a session, effort, sessions in all. */
export const recordLimits = {
  minutes: { least: 1, most: 1440 },
  effort: { least: 0, most: 10 },
  sessions: 5000,
} as const;
