import type { Scenario } from '../../plan/scenarios/document.js';
import type { GroupId, RowGroup, SheetRow } from '../../plan/scenarios/rows.js';
import { gridBlock, type GridPlace, type GridShape } from './grid-moves.js';

/** The column of row heads. */
export const headColumn = 'head';

/** A cell whose details are open; `scenario` is null for the head of a row. */
export interface OpenCell {
  readonly row: SheetRow;
  readonly scenario: string | null;
  /** The quantity that is explained: that of the row, until one goes on to another. */
  readonly quantity: string | null;
}

/** Groups that stay shut until somebody wants them. */
const shutAtFirst: readonly GroupId[] = ['rules', 'inputs', 'limits', 'splits'];

/** Where a person is in the grid, what is marked, which groups are open, and which cell is opened. */
export class GridState {
  place: GridPlace = { row: 'group planned', column: headColumn };
  /** The other corner of the block that is marked; null where only the place itself is. */
  anchor: GridPlace | null = null;
  open: OpenCell | null = null;
  readonly #shut = new Set<GroupId>(shutAtFirst);

  isShut(group: GroupId): boolean {
    return this.#shut.has(group);
  }

  toggle(group: GroupId): void {
    if (!this.#shut.delete(group)) this.#shut.add(group);
  }

  shape(groups: readonly RowGroup[], scenarios: readonly Scenario[]): GridShape {
    const rows = groups.flatMap(({ id, rows: each }) => [
      groupRow(id),
      ...(this.isShut(id) ? [] : each.map((row) => row.id)),
    ]);
    return { rows, columns: [headColumn, ...scenarios.map(({ id }) => id)] };
  }

  /** Goes to a place; with `mark` the block from where one was is marked. */
  go(place: GridPlace, { mark }: { readonly mark: boolean }): void {
    this.anchor = mark ? (this.anchor ?? this.place) : null;
    this.place = place;
  }

  /** Goes back to where something is, after the row or the column of the place has gone. */
  stayIn({ rows, columns }: GridShape): void {
    const [row = this.place.row] = rows.includes(this.place.row) ? [this.place.row] : rows;
    const column = columns.includes(this.place.column) ? this.place.column : headColumn;
    if (row !== this.place.row || column !== this.place.column) this.go({ row, column }, { mark: false });
  }

  /** The rows and columns that are marked, null where there is no block. */
  block(shape: GridShape): GridShape | null {
    return this.anchor && gridBlock(this.anchor, this.place, shape);
  }
}

/** The id of the row that heads a group. */
export const groupRow = (group: GroupId): string => `group ${group}`;
