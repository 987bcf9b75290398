import type { ProblemCode } from '../problem.js';

/** What a value has to be where that is no list of names. */
export type Expected = 'colour' | 'length' | 'origin';

/** One fault of the page's address: what was given, and what is allowed. */
export interface Fault {
  readonly name: string;
  readonly value: string;
  readonly code: ProblemCode & ('unknown-field' | 'not-one-of' | 'duplicate');
  readonly allowed: readonly string[] | Expected;
}
