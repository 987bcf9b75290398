import type { Column } from '../../../../src/sheet/column.js';
import type { InputQuantity } from '../../../../src/sheet/model.js';
import { createColumn, createSheet, type Sheet } from '../../../../src/sheet/sheet.js';
import { builtInFormulas } from '../../../../src/training/method/built-in-formulas.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { expandMethod } from '../../../../src/training/method/expand.js';

export const builtInSheet: Sheet = createSheet(expandMethod(builtInMethod), builtInFormulas);

/** A developing runner in build, unless `inputs` says otherwise. */
export function builtInColumn(inputs: Readonly<Record<string, number>> = {}): Column {
  return createColumn(builtInSheet, inputs);
}

export function builtInInput(id: string): InputQuantity {
  return inputOf(builtInSheet, id);
}

export function inputOf({ model }: Sheet, id: string): InputQuantity {
  const input = model.inputs.find((each) => each.id === id);
  if (!input) throw new Error(`no input ${id}`);
  return input;
}
