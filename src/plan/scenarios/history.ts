/** A value with those before it and those taken back: what undo and redo need, and nothing else. */
export interface History<T> {
  readonly present: T;
  readonly past: readonly T[];
  readonly future: readonly T[];
  /** What the last act was about; an act on the same thing goes on with it. Null after undo, redo and acts that stand alone. */
  readonly act: string | null;
}

/** Most steps that can be taken back. */
const mostSteps = 500;

/** A history that begins with a value. */
export function beginHistory<T>(present: T): History<T> {
  return { present, past: [], future: [], act: null };
}

/**
 * The history after an act. A slider that moves makes many values and one step: values of the same `act` follow each
 * other without a step between them.
 *
 * @param act what the act is about, such as `hours of b`; null for an act that stands alone.
 */
export function record<T>(history: History<T>, present: T, act: string | null = null): History<T> {
  if (Object.is(present, history.present)) return history;
  const goesOn = act !== null && act === history.act;
  const past = goesOn ? history.past : [...history.past, history.present].slice(-mostSteps);
  return { present, past, future: [], act };
}

/** The history one step back; the same where there is none. */
export function undo<T>(history: History<T>): History<T> {
  const present = history.past.at(-1);
  if (present === undefined) return history;
  return { present, past: history.past.slice(0, -1), future: [history.present, ...history.future], act: null };
}

/** The history with the last step taken back done again; the same where there is none. */
export function redo<T>(history: History<T>): History<T> {
  const [present, ...future] = history.future;
  if (present === undefined) return history;
  return { present, past: [...history.past, history.present], future, act: null };
}

/** The history after an act that has come to its end: the next act is a step of its own, also on the same thing. */
export function settle<T>(history: History<T>): History<T> {
  return history.act === null ? history : { ...history, act: null };
}
