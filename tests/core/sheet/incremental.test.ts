import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Column } from '../../../src/sheet/column.js';
import { createColumn, type Sheet } from '../../../src/sheet/sheet.js';
import { patience, runs } from '../../reference/runs.js';
import { oracleOf, partsOf, randomEdits, randomSheets } from './random-sheets.js';
import { sheetOf } from './sheet-of.js';

const valuesOf = (sheet: Sheet, column: Column): Readonly<Record<string, number>> =>
  Object.fromEntries([...sheet.program.registers.keys()].map((id) => [id, column.value(id)]));

/** The cells whose value is another now, in the order of their registers. */
function changedCells(sheet: Sheet, before: Readonly<Record<string, number>>, column: Column): string[] {
  const set = new Set([...sheet.model.inputs, ...sheet.model.constants].map(({ id }) => id));
  return [...sheet.program.registers.keys()].filter((id) => !set.has(id) && !Object.is(before[id], column.value(id)));
}

describe('after any edits of a random sheet', { timeout: patience }, () => {
  test('every value is that of a whole recomputation, and the ids are those of the cells that changed', () => {
    fc.assert(
      fc.property(randomSheets, randomEdits, (random, edits) => {
        const sheet = sheetOf(partsOf(random));
        const column = createColumn(sheet);
        let settings = {};
        for (const edit of edits) {
          settings = { ...settings, ...edit };
          const before = valuesOf(sheet, column);
          const changed = column.set(edit);
          expect(valuesOf(sheet, column)).toEqual(valuesOf(sheet, createColumn(sheet, settings)));
          expect([...changed].sort()).toEqual(changedCells(sheet, before, column).sort());
        }
      }),
      runs(400, 100_000),
    );
  });

  test('every quantity is what mathjs and plain arithmetic make of it', () => {
    fc.assert(
      fc.property(randomSheets, randomEdits, (random, edits) => {
        const sheet = sheetOf(partsOf(random));
        const column = createColumn(sheet);
        for (const edit of edits) column.set(edit);
        const settings = [random.inputs, random.constants, ...edits].reduce((all, edit) => ({ ...all, ...edit }));
        const expected = oracleOf(random, settings);
        const found = Object.fromEntries(Object.keys(expected).map((id) => [id, column.value(id)]));
        expect(found).toEqual(Object.fromEntries(Object.entries(expected).map(([id, value]) => [id, value + 0])));
      }),
      runs(500, 100_000),
    );
  });
});
