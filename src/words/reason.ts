import type { Founded } from '../training/method/founded.js';
import type { Words } from './words.js';

/** What a number rests on. */
export interface Reason {
  readonly text: string;
  /** How well it is founded, in words. */
  readonly status: string;
  /** Ids of entries in shared/evidence. */
  readonly sources: readonly string[];
}

/** What a number of the method rests on, in words. */
export const reasonOf = (words: Words, { reason, status, sources = [] }: Founded): Reason => ({
  text: words.text(reason),
  status: words.say(`status.${status}`),
  sources,
});
