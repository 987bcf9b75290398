import type { GridCell } from './shown-cell.js';

/** Columns that are brought up to date at one time, beside the one on show: what a slow phone draws within a frame. */
const atOnce = 2;

/**
 * Lets the columns of the grid take turns: one change can touch every cell of six columns, and drawing all of them in one
 * task would hold up the slider that moves. A column that waits shows what it showed; every column has its turn before one
 * has its second.
 */
export class ColumnTurns {
  readonly #shown = new Map<string, Map<string, GridCell>>();
  readonly #waiting = new Set<string>();
  #fresh: ReadonlySet<string> = new Set();

  /** Something has changed: every column may be out of date. */
  outdate(columns: readonly string[]): void {
    for (const id of this.#shown.keys()) if (!columns.includes(id)) this.#shown.delete(id);
    for (const id of this.#waiting) if (!columns.includes(id)) this.#waiting.delete(id);
    for (const id of columns) this.#waiting.add(id);
  }

  /** Begins a turn; true where columns are left for another. */
  take(onShow: string): boolean {
    this.#waiting.delete(onShow);
    const next = [...this.#waiting].slice(0, atOnce);
    for (const id of next) this.#waiting.delete(id);
    this.#fresh = new Set([onShow, ...next]);
    return this.#waiting.size > 0;
  }

  /** A cell: worked out where its column has its turn, else as it was. */
  cell(column: string, row: string, work: () => GridCell): GridCell {
    const cells = this.#shown.get(column) ?? new Map<string, GridCell>();
    this.#shown.set(column, cells);
    const known = this.#fresh.has(column) ? undefined : cells.get(row);
    const cell = known ?? work();
    cells.set(row, cell);
    return cell;
  }
}
