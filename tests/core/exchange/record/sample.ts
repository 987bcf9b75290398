import type { CategoryId } from '../../../../src/training/method/ids.js';
import type { Field, Mapping, Vocabulary } from '../../../../src/exchange/record/mapping.js';
import { readTable } from '../../../../src/exchange/record/read-table.js';
import type { RawTable } from '../../../../src/exchange/record/raw-table.js';

export const head: Readonly<Record<Field, string>> = {
  date: 'Date',
  category: 'Kind',
  minutes: 'Minutes',
  effort: 'Effort',
};

export const kinds: Readonly<Record<CategoryId, string>> = {
  slow: 'slow running',
  tempo: 'tempo running',
  intervals: 'intervals',
  cross: 'cross-training',
  strength: 'strength',
};

/** Words of two languages, as a page may have them. */
export const vocabulary: Vocabulary = {
  fields: {
    date: ['Date', 'Day', 'Datum', 'Tag'],
    category: ['Kind', 'Type', 'Art'],
    minutes: ['Minutes', 'Duration', 'Dauer', 'Minuten'],
    effort: ['Effort', 'Anstrengung'],
  },
  kinds: {
    slow: [kinds.slow, 'easy', 'langsam'],
    tempo: [kinds.tempo, 'Tempo'],
    intervals: [kinds.intervals, 'Intervalle'],
    cross: [kinds.cross, 'cycling', 'Radfahren'],
    strength: [kinds.strength, 'Kraft'],
  },
};

export const byName: Mapping = {
  columns: { date: 0, category: 1, minutes: 2, effort: 3 },
  dates: 'ymd',
  times: 'minutes',
  kinds: { slow: 'slow', strength: 'strength', 'easy run': 'slow', rest: null },
};

/** The table of a text; throws for a text that is none. */
export function tableOf(text: string): RawTable {
  const outcome = readTable(text);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}
