import type { Problem } from '../problem.js';
import type { Values } from '../words/phrases.js';

/** One runner of a roster: where the line stands, and what is asked of the planner. */
export interface RosterEntry {
  /** Counted from 1. */
  readonly line: number;
  readonly name: string;
  readonly request: Readonly<Record<string, unknown>>;
  /** A problem of the request in the terms of this line. */
  readonly asMet: (problem: Problem) => Problem;
}

/** What is wrong with a line: a problem of one field, or of the line as such (words for `key` are in `texts`). */
export type RosterFault = { readonly line: number; readonly name: string } & (
  { readonly problem: Problem } | { readonly key: string; readonly values: Values }
);

/** A roster as read: the sound lines, and what is wrong with the others. */
export interface Roster {
  readonly entries: readonly RosterEntry[];
  readonly faults: readonly RosterFault[];
}
