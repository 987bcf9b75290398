import { HyperFormula, type RawCellContent } from 'hyperformula';
import type { SheetModel } from '../../src/sheet/model.js';
import { rowsOf } from './rows.js';
import { spreadsheetFormula } from './spreadsheet-formula.js';

/** A model in a general spreadsheet engine: a quantity a row, a scenario a column. */
export class SpreadsheetPeer {
  private readonly engine: HyperFormula;
  private readonly rows: ReadonlyMap<string, number>;

  constructor(model: SheetModel, columns: number) {
    const fixed: [string, number][] = [
      ...Object.entries(model.names),
      ...model.inputs.map(({ id, start }): [string, number] => [id, start]),
      ...model.constants.map(({ id, constant }): [string, number] => [id, constant]),
    ];
    const formulas = rowsOf(model);
    this.rows = new Map(
      [...fixed.map(([name]) => name), ...formulas.map(({ name }) => name)].map((name, row) => [name, row]),
    );
    const cells = (column: number): RawCellContent[] => [
      ...fixed.map(([, value]) => value),
      ...formulas.map(({ text }) => spreadsheetFormula(text, (name) => this.address(name, column))),
    ];
    const byColumn = Array.from({ length: columns }, (_, column) => cells(column));
    const sheet = Array.from(this.rows, (_, row) => byColumn.map((contents) => contents[row] ?? null));
    this.engine = HyperFormula.buildFromArray(sheet, { licenseKey: 'gpl-v3' });
  }

  /** Sets an input in all columns; the engine computes once. */
  set(id: string, values: readonly number[]): void {
    const row = this.rowOf(id);
    this.engine.setCellContents({ sheet: 0, row, col: 0 }, [[...values]]);
  }

  value(id: string, column: number): number {
    return Number(this.engine.getCellValue({ sheet: 0, row: this.rowOf(id), col: column }));
  }

  private rowOf(name: string): number {
    const row = this.rows.get(name);
    if (row === undefined) throw new Error(`no row for ${name}`);
    return row;
  }

  private address(name: string, column: number): string {
    return `${String.fromCharCode(65 + column)}${this.rowOf(name) + 1}`;
  }
}
