import type { InputRange } from '../../../../src/sheet/explore/grid.js';
import { createColumn, type Sheet } from '../../../../src/sheet/sheet.js';
import type { Column } from '../../../../src/sheet/column.js';
import { sheetOf, type SheetParts } from '../sheet-of.js';

/** The input `x`, from 0 to 10 by quarters. */
export const quarters: InputRange = { id: 'x', least: 0, most: 10, step: 0.25, isChoice: false };

/** A choice `x` of five. */
export const fiveChoices: InputRange = { id: 'x', least: 0, most: 4, step: 1, isChoice: true };

/** A sheet in which `y` is a formula over `x`. */
export function curveSheet(formula: string, parts: SheetParts = {}): Sheet {
  return sheetOf({ inputs: { x: 1 }, ...parts, formulas: { y: formula, ...parts.formulas } });
}

export function curveColumn(formula: string, parts: SheetParts = {}): Column {
  return createColumn(curveSheet(formula, parts));
}
