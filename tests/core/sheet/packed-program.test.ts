import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Deriver } from '../../../src/sheet/derive.js';
import { packProgram, type PackedProgram } from '../../../src/sheet/packed-program.js';
import { createColumn, createSheet, formulaTexts, type Sheet } from '../../../src/sheet/sheet.js';
import { unpackSheet } from '../../../src/sheet/unpack-sheet.js';
import { builtInFormulas } from '../../../src/training/method/built-in-formulas.js';
import { builtInMethod, builtInProgram } from '../../../src/training/method/built-in.js';
import { expandMethod } from '../../../src/training/method/expand.js';
import { readMethod } from '../../../src/training/method/read-method.js';
import { runs } from '../../reference/runs.js';
import { valueOf } from '../training/method/documents.js';
import { randomMethods } from '../training/method/random-methods.js';
import { compileAll, ruleOf, sheetOf } from './sheet-of.js';

const builtInSheet = createSheet(expandMethod(builtInMethod), builtInFormulas);

/** The sheet again, by way of the text that is shipped. */
function shipped(sheet: Sheet): Sheet {
  const packed = JSON.parse(JSON.stringify(packProgram(sheet.program, sheet.model))) as PackedProgram;
  return unpackSheet(sheet.model, packed);
}

const inputs = fc.record({
  weekly_hours: fc.double({ min: 0.5, max: 20, noNaN: true }),
  season_phase: fc.nat({ max: 5 }),
  athlete_level: fc.nat({ max: 3 }),
  target_event: fc.nat({ max: 5 }),
  strength_cap: fc.integer({ min: 90, max: 120 }),
});

/** Every cell and every derivation that works, after some settings. */
function everything(sheet: Sheet, settings: readonly Readonly<Record<string, number>>[]): object {
  const column = createColumn(sheet);
  const deriver = new Deriver(sheet, column);
  return settings.map((set) => ({
    changed: column.set(set),
    registers: [...column.registers],
    derivations: deriver.quantities
      .map((id) => deriver.derive(id))
      .map(({ error, ...rest }) => ({ ...rest, failed: error !== null })),
  }));
}

describe('unpackSheet(model, packProgram(program, model))', () => {
  test('is the program of the built-in method, which is what ships', () => {
    expect(packProgram(builtInSheet.program, builtInSheet.model)).toEqual(builtInProgram);
    expect(unpackSheet(builtInSheet.model, builtInProgram).program).toEqual(builtInSheet.program);
    expect(shipped(builtInSheet).cells.stages).toEqual(builtInSheet.cells.stages);
  });

  test('computes and explains as the linked sheet does', () => {
    const unpacked = unpackSheet(builtInSheet.model, builtInProgram);
    fc.assert(
      fc.property(fc.array(inputs, { minLength: 1, maxLength: 4 }), (settings) => {
        expect(everything(unpacked, settings)).toEqual(everything(builtInSheet, settings));
      }),
      runs(40, 5000),
    );
  });

  test('does so for any method without faults', () => {
    fc.assert(
      fc.property(randomMethods, fc.array(inputs, { minLength: 1, maxLength: 3 }), (document, settings) => {
        const model = expandMethod(valueOf(readMethod(document)));
        const sheet = createSheet(model, compileAll(formulaTexts(model)));
        fc.pre(sheet.program.errors.size === 0);
        const again = shipped(sheet);
        expect(again.program).toEqual(sheet.program);
        expect(everything(again, settings)).toEqual(everything(sheet, settings));
      }),
      runs(40, 5000),
    );
  });

  test('says of a cell that fails only that it does', () => {
    const sheet = shipped(sheetOf({ inputs: { x: 0 }, formulas: { y: '1 / x', z: 'y + 1' } }));
    expect(sheet.explain(createColumn(sheet), 'z')).toEqual({ code: 'not-a-number', operation: 'z' });
    expect(sheet.explain(createColumn(sheet, { x: 1 }), 'z')).toBeNull();
  });
});

describe('packProgram(program, model)', () => {
  test.each([
    ['a circle', sheetOf({ formulas: { a: 'b', b: 'a' } })],
    ['a name that is nowhere', sheetOf({ formulas: { a: 'nowhere' } })],
    ['a rule on nothing', sheetOf({ formulas: { a: '1' }, rules: [ruleOf({ id: 'r', on: 'nowhere', value: '1' })] })],
    ['a value put over a quantity', sheetOf({ formulas: { a: '1' }, overrides: [{ on: 'a', formula: '2' }] })],
  ])('refuses %s', (_, { program, model }) => {
    expect(() => packProgram(program, model)).toThrow('only a program without faults can be packed');
  });

  test('refuses a model that the program is not of', () => {
    const { program } = sheetOf({ inputs: { x: 1 }, formulas: { a: 'x' } });
    const { model } = sheetOf({ inputs: { x: 1 }, formulas: { b: 'x' } });
    expect(() => packProgram(program, model)).toThrow('do not follow from the model');
  });
});
