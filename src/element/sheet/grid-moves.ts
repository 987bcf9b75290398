/** A place in the grid: a row and a column by their ids. */
export interface GridPlace {
  readonly row: string;
  readonly column: string;
}

/** Everything that can be gone to, in the order of the screen. */
export interface GridShape {
  readonly rows: readonly string[];
  readonly columns: readonly string[];
}

/** Steps of the keys that move by one, in rows and columns. */
const steps: Readonly<Record<string, readonly [rows: number, columns: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
  PageUp: [-10, 0],
  PageDown: [10, 0],
};

/** A key as it was pressed; `isMirrored` on pages that read from right to left, where the arrows point the other way. */
export interface GridKey {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly isMirrored: boolean;
}

/**
 * Where a key leads in a grid, by the grid pattern of the ARIA Authoring Practices; null where it is no key of a grid.
 * At an edge it stays.
 */
export function gridMove(place: GridPlace, { key, ctrlKey, isMirrored }: GridKey, shape: GridShape): GridPlace | null {
  const [row, column] = [indexIn(shape.rows, place.row), indexIn(shape.columns, place.column)];
  const at = (rowIndex: number, columnIndex: number): GridPlace => ({
    row: clampedAt(shape.rows, rowIndex) ?? place.row,
    column: clampedAt(shape.columns, columnIndex) ?? place.column,
  });
  if (key === 'Home') return at(ctrlKey ? 0 : row, 0);
  if (key === 'End') return at(ctrlKey ? Infinity : row, Infinity);
  const step = Object.hasOwn(steps, key) ? steps[key] : undefined;
  if (!step) return null;
  const [down, across] = step;
  return at(row + down, column + (isMirrored ? -across : across));
}

const indexIn = (list: readonly string[], id: string): number => Math.max(0, list.indexOf(id));

const clampedAt = (list: readonly string[], index: number): string | undefined =>
  list[Math.max(0, Math.min(index, list.length - 1))];

/** The rows and columns of the block between two places. */
export function gridBlock(one: GridPlace, other: GridPlace, { rows, columns }: GridShape): GridShape {
  return { rows: between(rows, one.row, other.row), columns: between(columns, one.column, other.column) };
}

function between(list: readonly string[], one: string, other: string): readonly string[] {
  const [first = 0, last = 0] = [indexIn(list, one), indexIn(list, other)].sort((a, b) => a - b);
  return list.slice(first, last + 1);
}
