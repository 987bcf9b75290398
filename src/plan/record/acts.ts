import type { DoneSession } from '../../training/record/done-session.js';

/*
 * What people do to a record: each function gives another record, in the order of the dates, and leaves the one it got.
 */

type Done = readonly DoneSession[];

/** In the order of the dates; of a day, in the order given. */
export const inOrder = (record: Done): Done =>
  [...record].sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));

/** Puts a session in. */
export const addDone = (record: Done, session: DoneSession): Done => inOrder([...record, session]);

/** Takes a session out. */
export const removeDone = (record: Done, session: DoneSession): Done => record.filter((each) => each !== session);

/** Puts another in place of a session. */
export const replaceDone = (record: Done, session: DoneSession, by: DoneSession): Done =>
  addDone(removeDone(record, session), by);

/** A record with what came from elsewhere. */
export interface Merged {
  readonly record: Done;
  /** How many came in. */
  readonly added: number;
  /** How many were there before: of the same day, kind and minutes, each counted once. */
  readonly known: number;
}

/** Puts sessions in that are not there yet. Two alike on one day are two, where the record has one of them one comes in. */
export function mergeDone(record: Done, sessions: Done): Merged {
  const left = new Map<string, number>();
  for (const id of record.map(idOf)) left.set(id, (left.get(id) ?? 0) + 1);
  const isKnown = (session: DoneSession): boolean => {
    const id = idOf(session);
    const count = left.get(id) ?? 0;
    left.set(id, count - 1);
    return count > 0;
  };
  const added = sessions.filter((session) => !isKnown(session));
  return {
    record: inOrder([...record, ...added]),
    added: added.length,
    known: sessions.length - added.length,
  };
}

const idOf = ({ date, category, minutes }: DoneSession): string => `${date} ${category} ${minutes}`;

/** The sessions of a week, from its Monday on. */
export function doneInWeek(record: Done, { start, end }: { readonly start: string; readonly end: string }): Done {
  return record.filter(({ date }) => date >= start && date <= end);
}
