import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sweep } from '../../../../src/sheet/explore/sweep.js';
import { createColumn, quantityIds } from '../../../../src/sheet/sheet.js';
import { runs } from '../../../reference/runs.js';
import { anyNumber } from '../formula-texts.js';
import { partsOf, randomSheets } from '../random-sheets.js';
import { sheetOf } from '../sheet-of.js';
import { curveColumn } from './ranges.js';

describe('sweep(column, { input, values, cells })', () => {
  test('records the cells at each value, in the order of the values, NaN where they fail', () => {
    const { input, values, series } = sweep(curveColumn('6 / x', { formulas: { z: 'y + 1' } }), {
      input: 'x',
      values: [2, 0, 3],
      cells: ['z', 'x'],
    });
    expect([input, values]).toEqual(['x', [2, 0, 3]]);
    expect([...series]).toEqual([
      ['z', Float64Array.of(4, NaN, 3)],
      ['x', Float64Array.of(2, 0, 3)],
    ]);
  });

  test('leaves the column as it is', () => {
    const column = curveColumn('6 / x');
    const before = column.registers.slice();
    sweep(column, { input: 'x', values: [5, 7], cells: ['y'] });
    expect(column.registers).toEqual(before);
    expect(column.set({ x: 2 })).toEqual(['y']);
  });

  test('throws for names that the sheet does not have or cannot set', () => {
    const column = curveColumn('6 / x');
    expect(() => sweep(column, { input: 'nothing', values: [1], cells: [] })).toThrow('no quantity nothing');
    expect(() => sweep(column, { input: 'y', values: [1], cells: [] })).toThrow('y is computed');
    expect(() => sweep(column, { input: 'x', values: [1], cells: ['nothing'] })).toThrow('no quantity nothing');
  });

  test('gives what a new column gives at each value', () => {
    const input = fc.constantFrom('i0', 'i1', 'k0');
    fc.assert(
      fc.property(randomSheets, input, fc.array(anyNumber, { maxLength: 8 }), (random, id, values) => {
        const sheet = sheetOf(partsOf(random));
        const cells = quantityIds(sheet.model);
        const { series } = sweep(createColumn(sheet), { input: id, values, cells });
        const expected = values.map((value) => createColumn(sheet, { [id]: value }));
        for (const cell of cells)
          expect(series.get(cell)).toEqual(Float64Array.from(expected, (column) => column.value(cell)));
      }),
      runs(200, 20_000),
    );
  });
});
