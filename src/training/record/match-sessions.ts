import type { CategoryId } from '../method/ids.js';
import type { DoneSession } from './done-session.js';

/** A session that is planned for a week. */
export interface DueSession {
  readonly category: CategoryId;
  readonly minutes: number;
  /** The day it is planned for, as an ISO date; null where any day of the week will do. */
  readonly date: string | null;
}

/** A planned session, and what was done of it. */
export interface MatchedSession extends DueSession {
  /** Null where it is still open. */
  readonly done: DoneSession | null;
}

/** A week as it was planned, held against what was done in it. */
export interface MatchedWeek {
  /** Every planned session, in the order given. */
  readonly planned: readonly MatchedSession[];
  /** What was done beyond the plan, in the order given. */
  readonly extra: readonly DoneSession[];
}

/**
 * Finds what was done of each planned session: of the same kind on its day, else of the same kind on any day, the nearest
 * in length first. Nothing that was done counts twice.
 *
 * @param done all sessions that were done in the week, and no others.
 */
export function matchSessions(planned: readonly DueSession[], done: readonly DoneSession[]): MatchedWeek {
  const pairs = pairsOf(planned, done);
  const doneAt = new Map<number, number>();
  const taken = new Set<number>();
  const match = (fits: (pair: Pair) => boolean): void => {
    for (const { at, of } of pairs.filter(fits)) {
      if (doneAt.has(at) || taken.has(of)) continue;
      doneAt.set(at, of);
      taken.add(of);
    }
  };
  match(({ isOnDay }) => isOnDay);
  match(() => true);
  return {
    planned: planned.map((session, at) => ({ ...session, done: done[doneAt.get(at) ?? -1] ?? null })),
    extra: done.filter((_, of) => !taken.has(of)),
  };
}

/** A planned session and one that was done, by their places: the same may stand twice in a list. */
interface Pair {
  readonly at: number;
  readonly of: number;
  readonly isOnDay: boolean;
  /** By how many minutes they differ. */
  readonly gap: number;
}

/** What is of the same kind, the nearest in length first. */
function pairsOf(planned: readonly DueSession[], done: readonly DoneSession[]): readonly Pair[] {
  return planned
    .flatMap(({ category, date, minutes }, at) =>
      done.flatMap((each, of) => {
        const pair = { at, of, isOnDay: each.date === date, gap: Math.abs(minutes - each.minutes) };
        return each.category === category ? [pair] : [];
      }),
    )
    .sort((one, other) => one.gap - other.gap);
}
