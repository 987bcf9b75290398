import { cellAt, type RawRow } from './raw-table.js';
import { readDate } from './read-date.js';
import { readDuration } from './read-duration.js';

/** Whether a cell is a date, whichever order its parts have. */
export const isDate = (cell: string): boolean => readDate(cell, 'dmy') !== null || readDate(cell, 'mdy') !== null;

/** Whether a row has a date, and a number or a duration beside it. */
export function tellsOfSession(row: RawRow): boolean {
  const cells = row.cells.map((_, column) => cellAt(row, column));
  const others = cells.filter((cell) => !isDate(cell));
  return others.length < cells.length && others.some((cell) => readDuration(cell, 'minutes') !== null);
}
