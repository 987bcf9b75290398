import type { Outcome, Problem } from '../../problem.js';
import { unguarded } from '../formula-guard.js';
import { findRecords } from './find-records.js';
import { guessDelimiter } from './guess-delimiter.js';
import { tellsOfSession } from './tells-of-session.js';
import type { RawRow, RawTable } from './raw-table.js';

/** Most characters, rows and columns of a table that is read. */
export const tableLimits = { characters: 2_000_000, rows: 10_000, columns: 100 } as const;

/** A spreadsheet may have written many rows of nothing but delimiters; there is an end to passing over them. */
const mostLines = 10 * tableLimits.rows;
const tooManyRows = { path: 'rows', code: 'too-long', allowed: { most: tableLimits.rows } } as const;

/**
 * Reads a table that was saved as CSV or copied from a spreadsheet: comma, semicolon or tab, any line breaks, quotation
 * marks as in RFC 4180. A row in which nothing stands is no row. Without a row of titles (the first row has a date and a
 * number) every title is empty. An apostrophe that guards a text against being run as a formula is taken away.
 *
 * @returns the table; or what is wrong: `too-long` (of characters, `rows` or `columns`), `missing` where nothing stands,
 *   `damaged` with the line from which quotation marks do not match
 */
export function readTable(text: string): Outcome<RawTable> {
  const { characters, rows, columns } = tableLimits;
  if (text.length > characters) return fault(text, { path: '', code: 'too-long', allowed: { most: characters } });
  const delimiter = guessDelimiter(text);
  const { records, damagedLine } = findRecords(text, delimiter, mostLines + 1);
  if (damagedLine !== null) return fault(text, { path: '', code: 'damaged', allowed: { line: damagedLine } });
  if (records.length > mostLines) return fault(mostLines + 1, tooManyRows);
  const found = records
    .map(({ line, cells }): RawRow => ({ line, cells: cells.map(unguarded) }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  const [first] = found;
  if (!first) return fault(text, { path: '', code: 'missing', allowed: {} });
  const width = found.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  if (width > columns) return fault(width, { path: 'columns', code: 'too-long', allowed: { most: columns } });
  const [titles, body] = tellsOfSession(first) ? [[], found] : [first.cells, found.slice(1)];
  if (body.length > rows) return fault(body.length, tooManyRows);
  const head = Array.from({ length: width }, (_, column) => titles[column]?.trim() ?? '');
  return { ok: true, value: { head, rows: body } };
}

function fault(given: string | number, problem: Omit<Problem, 'value'>): Outcome<never> {
  const value = typeof given === 'string' ? given.trim().slice(0, 40) : given;
  return { ok: false, problems: [{ ...problem, value }] };
}
