import { guessMapping } from '../../exchange/record/guess-mapping.js';
import type { Mapping, Vocabulary } from '../../exchange/record/mapping.js';
import type { RawTable } from '../../exchange/record/raw-table.js';
import { readSessions, type ReadSessions } from '../../exchange/record/read-sessions.js';
import { readTable, tableLimits } from '../../exchange/record/read-table.js';
import { guessKinds } from '../../exchange/record/guess-kinds.js';
import { kindsIn } from '../../exchange/record/kinds-in.js';
import type { Problem } from '../../problem.js';

/** A table that somebody brings in, and how it is read. */
export class TableDesk {
  /** What was pasted or opened; empty where nothing is. */
  text = '';
  table: RawTable | null = null;
  mapping: Mapping | null = null;
  /** What is wrong with the table as a whole. */
  problems: readonly Problem[] = [];
  readonly #update: () => void;
  #vocabulary: Vocabulary | null = null;
  #read: { readonly table: RawTable; readonly mapping: Mapping; readonly sessions: ReadSessions } | null = null;

  constructor(update: () => void) {
    this.#update = update;
  }

  /** Reads a text; how it may be meant is guessed, and can be changed. */
  take(text: string, vocabulary: Vocabulary): void {
    this.text = text;
    this.#vocabulary = vocabulary;
    const read = text.trim() === '' ? null : readTable(text);
    this.problems = read?.ok === false ? read.problems : [];
    this.table = read?.ok ? read.value : null;
    this.mapping = this.table && guessMapping(this.table, vocabulary);
    this.#update();
  }

  /** Reads a file from a disk. */
  async takeFile(file: File, vocabulary: Vocabulary): Promise<void> {
    // A character has one byte and more: what is longer cannot be read anyway.
    const isShort = file.size <= 4 * tableLimits.characters;
    const text = isShort ? await file.text() : '';
    if (text.trim() !== '') {
      this.take(text, vocabulary);
      return;
    }
    this.clear();
    const allowed = { most: tableLimits.characters };
    const problem = isShort ? ({ code: 'missing', allowed: {} } as const) : ({ code: 'too-long', allowed } as const);
    this.problems = [{ path: '', value: file.name, ...problem }];
    this.#update();
  }

  clear(): void {
    this.text = '';
    this.table = null;
    this.mapping = null;
    this.problems = [];
    this.#update();
  }

  /** Changes how the table is read; the kinds of another column are guessed anew. */
  map(change: Partial<Mapping>): void {
    const { table, mapping } = this;
    if (!table || !mapping) return;
    const next = { ...mapping, ...change };
    const { category } = next.columns;
    const isOther = category !== mapping.columns.category;
    const kinds =
      isOther && category !== null
        ? guessKinds(kindsIn(table, category), this.#vocabulary?.kinds ?? noWords)
        : next.kinds;
    this.mapping = { ...next, kinds };
    this.#update();
  }

  /** What the table says by the mapping; null while there is none. */
  get sessions(): ReadSessions | null {
    const { table, mapping } = this;
    if (!table || !mapping) return null;
    if (this.#read?.table !== table || this.#read.mapping !== mapping)
      this.#read = { table, mapping, sessions: readSessions(table, mapping) };
    return this.#read.sessions;
  }
}

const noWords: Vocabulary['kinds'] = { slow: [], tempo: [], intervals: [], cross: [], strength: [] };
