import { cellsOf } from './cells.js';
import type { Chained } from './chains.js';
import { Column } from './column.js';
import type { CellError } from './errors.js';
import { explainFailure } from './explain-failure.js';
import { explainHands, type HandExplainer } from './explain-hands.js';
import type { FormulaBook } from './formula/compiled-formula.js';
import { link } from './link.js';
import type { SheetModel } from './model.js';
import type { Program } from './program.js';

/** A model ready to answer what-ifs: one program, and as many columns over it as there are scenarios. */
export interface Sheet {
  readonly model: SheetModel;
  readonly cells: Chained;
  readonly program: Program;
  /** Why a cell of a column has no number; null where it has one. */
  readonly explain: (column: Column, id: string) => CellError | null;
  /** Tells what people put over quantities; null where nobody put anything. */
  readonly hands: HandExplainer | null;
}

/** Prepares a model; `book` holds every formula text of the model, compiled. */
export function createSheet(model: SheetModel, book: FormulaBook): Sheet {
  const cells = cellsOf(model, book);
  const program = link(model, cells);
  const hands = cells.hands.size > 0 ? explainHands(program, cells.hands) : null;
  return { model, cells, program, explain: explainFailure, hands };
}

/** A new column over the sheet, with the inputs that differ from their start. */
export function createColumn(sheet: Sheet, inputs: Readonly<Record<string, number>> = {}): Column {
  const column = new Column(sheet.program);
  column.set(inputs);
  return column;
}

/** Every formula text that a model needs compiled. */
export function formulaTexts({ formulas, rules, overrides }: SheetModel): string[] {
  const texts = [
    ...[...formulas, ...overrides].map(({ formula }) => formula),
    ...rules.flatMap(({ when, value }) => [when, value]),
  ];
  return [...new Set(texts)];
}

/** The names of everything that a model gives a value to. */
export function quantityIds({ inputs, constants, formulas, blocks }: SheetModel): string[] {
  return [...[...inputs, ...constants, ...formulas].map(({ id }) => id), ...blocks.flatMap(({ writes }) => writes)];
}
