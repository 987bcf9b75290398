import type { Problem } from '../../problem.js';
import type { DoneSession } from '../../training/record/done-session.js';
import type { Field, Mapping } from './mapping.js';
import { cellAt, type RawRow, type RawTable } from './raw-table.js';
import { tellCategory, tellDate, tellEffort, tellMinutes, type Told } from './tell-cell.js';

/** A session, and the line of the table that told it. */
export interface ReadLine {
  readonly line: number;
  readonly session: DoneSession;
}

/** A line that tells no session, and why: `path` is the title of the column, or the field where it has none. */
export interface UnreadLine {
  readonly line: number;
  readonly problems: readonly Problem[];
}

/** What a table told. */
export interface ReadSessions {
  readonly read: readonly ReadLine[];
  readonly unread: readonly UnreadLine[];
  /** Titles of the columns that no field has; `#3` for the third where it has none. */
  readonly unusedColumns: readonly string[];
}

/** Reads sessions by a mapping. Every row is in `read` or in `unread`. */
export function readSessions(table: RawTable, mapping: Mapping): ReadSessions {
  const read: ReadLine[] = [];
  const unread: UnreadLine[] = [];
  for (const row of table.rows) {
    const { session, problems } = readRow(row, { head: table.head, mapping });
    if (session) read.push({ line: row.line, session });
    else unread.push({ line: row.line, problems });
  }
  const used = new Set(Object.values(mapping.columns));
  const titles = table.head.map((title, column) => ({ title: title === '' ? `#${column + 1}` : title, column }));
  return { read, unread, unusedColumns: titles.flatMap(({ title, column }) => (used.has(column) ? [] : [title])) };
}

interface Reading {
  readonly head: readonly string[];
  readonly mapping: Mapping;
}

interface ReadRow {
  readonly session: DoneSession | null;
  readonly problems: readonly Problem[];
}

function readRow(row: RawRow, { head, mapping }: Reading): ReadRow {
  const problems: Problem[] = [];
  const { columns } = mapping;
  function take<T>(field: Field, read: (cell: string) => Told<T>): T | null {
    const cell = cellAt(row, columns[field]);
    const told = read(cell);
    if ('value' in told) return told.value;
    const title = head[columns[field] ?? -1] ?? '';
    problems.push({ path: title === '' ? field : title, value: cell, ...told });
    return null;
  }
  const date = take('date', (cell) => tellDate(cell, mapping));
  const category = take('category', (cell) => tellCategory(cell, mapping));
  const minutes = take('minutes', (cell) => tellMinutes(cell, mapping));
  const effort = take('effort', tellEffort);
  const isTold = date !== null && category !== null && minutes !== null && problems.length === 0;
  return { session: isTold ? { date, category, minutes, effort } : null, problems };
}
