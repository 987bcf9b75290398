/** A row of a table. */
export interface RawRow {
  /** The line of the text on which it begins, counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

/** A table as text. */
export interface RawTable {
  /** A title for every column, empty where there is none. */
  readonly head: readonly string[];
  /** A row may have fewer cells than there are columns. */
  readonly rows: readonly RawRow[];
}

/** A cell without the space around it; empty where the row is too short or the column is none. */
export const cellAt = ({ cells }: RawRow, column: number | null): string => cells[column ?? -1]?.trim() ?? '';
