import type { Words } from '../../words/words.js';
import type { FormulaName } from './completion.js';

/** Where and what is wrong in the text of a formula; characters are counted from 0. */
export interface FormulaFieldError {
  readonly position: number;
  readonly length: number;
  readonly reason: string;
}

export interface FormulaFieldOptions {
  /** Of its own within the shadow root. */
  readonly id: string;
  readonly label: string;
  readonly text: string;
  readonly error: FormulaFieldError | null;
  /** The live result, "= 84 minutes", or ''. */
  readonly result: string;
  readonly names: readonly FormulaName[];
  readonly words: Words;
  /** `input` has to keep the text at once: the next render writes it into the field. */
  readonly act: { input(text: string): void; commit(): void; cancel(): void };
}
