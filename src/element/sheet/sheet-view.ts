import type { Words } from '../../words/words.js';
import type { Details } from '../view.js';
import type { Bench } from './bench.js';
import type { ColumnTurns } from './column-turns.js';

/** All that the templates of the sheet read. */
export interface SheetView {
  readonly words: Words;
  readonly details: Details;
  readonly bench: Bench;
  readonly turns: ColumnTurns;
}
