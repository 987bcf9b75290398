import type { Words } from '../../words/words.js';
import type { Details } from '../view.js';
import type { Bench } from './bench.js';

/** All that the templates of the sheet read. */
export interface SheetView {
  readonly words: Words;
  readonly details: Details;
  readonly bench: Bench;
}
