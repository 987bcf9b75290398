import { kindSayer } from './guess-kinds.js';
import { fieldIds, type Field, type Mapping, type Vocabulary } from './mapping.js';
import { cellAt, type RawTable } from './raw-table.js';
import { readDecimal } from './read-decimal.js';
import { readDuration } from './read-duration.js';
import { saysOneOf } from './says-one-of.js';
import { isDate } from './tells-of-session.js';

/** What a column looks like is seen in its first rows. */
const rowsLookedAt = 200;

type Columns = Record<Field, number | null>;
type Look = (cells: readonly string[], title: string) => number;

/**
 * Which column tells which field: by the words of its title, first whole ones, then those among others; a field that no
 * title names, by what its cells look like. An effort may well not be told: without a word for it, only a column without
 * a title is taken for one.
 */
export function guessColumns(table: RawTable, vocabulary: Vocabulary): Mapping['columns'] {
  const columns: Columns = { date: null, category: null, minutes: null, effort: null };
  const sayers = fieldIds.map((field) => ({ field, says: saysOneOf(vocabulary.fields[field]) }));
  for (const how of [2, 1]) {
    for (const { field, says } of sayers) {
      columns[field] ??= free(table, columns).find((column) => says(table.head[column] ?? '') === how) ?? null;
    }
  }
  const looks = looksOf(vocabulary);
  for (const field of fieldIds) columns[field] ??= looksMost(table, columns, looks[field]);
  return columns;
}

function free({ head }: RawTable, columns: Columns): readonly number[] {
  const taken = Object.values(columns);
  return [...head.keys()].filter((column) => !taken.includes(column));
}

/** The free column that looks most like it, the first of equal ones; null where none does. */
function looksMost(table: RawTable, columns: Columns, look: Look): number | null {
  let best: { readonly column: number; readonly score: number } | null = null;
  const rows = table.rows.slice(0, rowsLookedAt);
  for (const column of free(table, columns)) {
    const cells = rows.map((row) => cellAt(row, column)).filter((cell) => cell !== '');
    const score = cells.length === 0 ? 0 : look(cells, table.head[column] ?? '');
    if (score > (best?.score ?? 0)) best = { column, score };
  }
  return best?.column ?? null;
}

/** Looks from 0, not at all, to 3. */
function looksOf({ kinds }: Vocabulary): Readonly<Record<Field, Look>> {
  const said = kindSayer(kinds);
  const isEffort = (cell: string): boolean => {
    const value = readDecimal(cell);
    return value !== null && value >= 0 && value <= 10;
  };
  return {
    date: (cells) => mostly(cells, isDate),
    category: (cells) => share(cells, (cell) => said(cell) !== null),
    // Hours and minutes look more like a duration than a number does, and a number above ten more than one below.
    minutes: (cells) => {
      const number = mostly(cells, (cell) => readDuration(cell, 'minutes') !== null);
      const isLarge = cells.some((cell) => (readDuration(cell, 'minutes') ?? 0) > 10);
      return 2 * mostly(cells, (cell) => readDuration(cell, 'hms') !== null) + number + (isLarge ? number : 0) / 2;
    },
    effort: (cells, title) => (title === '' ? mostly(cells, isEffort) : 0),
  };
}

const share = (cells: readonly string[], holds: (cell: string) => boolean): number =>
  cells.filter(holds).length / cells.length;

/** 1 where it holds for more than half of the cells, else 0. */
const mostly = (cells: readonly string[], holds: (cell: string) => boolean): 0 | 1 =>
  share(cells, holds) > 0.5 ? 1 : 0;
