import { cellsOf, type Cells } from './cells.js';
import { Column } from './column.js';
import type { FormulaBook } from './formula/compiled-formula.js';
import { link } from './link.js';
import type { SheetModel } from './model.js';
import type { Program } from './program.js';

/** A model ready to answer what-ifs: one program, and as many columns over it as there are scenarios. */
export interface Sheet {
  readonly model: SheetModel;
  readonly cells: Cells;
  readonly program: Program;
}

/** Prepares a model; `book` holds every formula text of the model, compiled. */
export function createSheet(model: SheetModel, book: FormulaBook): Sheet {
  const cells = cellsOf(model, book);
  return { model, cells, program: link(model, cells) };
}

/** A new column over the sheet, with the inputs that differ from their start. */
export function createColumn(sheet: Sheet, inputs: Readonly<Record<string, number>> = {}): Column {
  const column = new Column(sheet.program);
  column.set(inputs);
  return column;
}

/** Every formula text that a model needs compiled. */
export function formulaTexts(model: Pick<SheetModel, 'formulas' | 'rules'>): string[] {
  const texts = [
    ...model.formulas.map(({ formula }) => formula),
    ...model.rules.flatMap(({ when, value }) => [when, value]),
  ];
  return [...new Set(texts)];
}

/** The names of everything that a model gives a value to. */
export function quantityIds({ inputs, constants, formulas, blocks }: SheetModel): string[] {
  return [...[...inputs, ...constants, ...formulas].map(({ id }) => id), ...blocks.flatMap(({ writes }) => writes)];
}
