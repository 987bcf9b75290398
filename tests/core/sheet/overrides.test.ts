import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Column } from '../../../src/sheet/column.js';
import type { Derivation } from '../../../src/sheet/derivation.js';
import { Deriver } from '../../../src/sheet/derive.js';
import { explainFailure } from '../../../src/sheet/explain-failure.js';
import type { Block, Override, Sharing } from '../../../src/sheet/model.js';
import { createColumn, type Sheet } from '../../../src/sheet/sheet.js';
import { runs } from '../../reference/runs.js';
import { ruleOf, sheetOf, type SheetParts } from './sheet-of.js';

/** Halves what it reads, in whole numbers, and minds what is held. */
const halving: Block = {
  id: 'halving',
  reads: ['a', 'b'],
  writes: ['half', 'rest'],
  compute: ([a = 0, b = 0], held = []) => {
    const half = held[0] ?? (held[1] === undefined ? (a + b) / 2 : a + b - held[1]);
    return [half, held[1] ?? a + b - half];
  },
};
const parts: SheetParts = {
  inputs: { hours: 8, zero: 0 },
  constants: { cap: 60 },
  formulas: { a: 'hours * 10', b: '20', total: 'a + b', own: 'total * 2' },
  rules: [ruleOf({ id: 'cap-a', on: 'a', when: 'value > cap', value: 'cap', to: 'b' })],
  blocks: [halving],
};
const names = ['hours', 'cap', 'a', 'b', 'total', 'own', 'half', 'rest'];

const overriding = (on: string, formula: string, more: SheetParts = {}): Sheet =>
  sheetOf({ ...parts, ...more, overrides: [{ on, formula }] });
const valuesOf = (column: Column): readonly number[] => names.map((id) => column.value(id));
const derive = (sheet: Sheet, id: string): Derivation => new Deriver(sheet, createColumn(sheet)).derive(id);

describe('a value or formula put over', () => {
  // Without any: hours 8, cap 60, a 80 - 20 = 60, b 20 + 20 = 40, total 100, own 200, half and rest 50.
  test.each<[what: string, on: string, formula: string, before: number, values: readonly number[]]>([
    ['an input', 'hours', '5', 8, [5, 60, 50, 20, 70, 140, 35, 35]],
    ['an input, by a formula', 'hours', 'value / 2 + 3', 8, [7, 60, 60, 30, 90, 180, 45, 45]],
    ['a constant', 'cap', 'hours * 5', 60, [8, 40, 40, 60, 100, 200, 50, 50]],
    ['a formula', 'total', '70', 100, [8, 60, 60, 40, 70, 140, 50, 50]],
    ['a formula with rules, after them', 'a', 'value + 5', 60, [8, 60, 65, 40, 105, 210, 52.5, 52.5]],
    ['what a rule hands on to, after it', 'b', 'value * 2', 40, [8, 60, 60, 80, 140, 280, 70, 70]],
    ['a row that nothing reads', 'own', '-1', 200, [8, 60, 60, 40, 100, -1, 50, 50]],
    ['what a block writes, which minds it', 'half', '30', 50, [8, 60, 60, 40, 100, 200, 30, 70]],
    ['the other thing that it writes', 'rest', 'value - 10', 50, [8, 60, 60, 40, 100, 200, 60, 40]],
    ['a quantity, reading others as they are then', 'b', 'hours + cap', 40, [8, 60, 60, 68, 128, 256, 64, 64]],
  ])('%s', (_, on, formula, before, values) => {
    const sheet = overriding(on, formula);
    expect(valuesOf(createColumn(sheet))).toEqual(values);
    const { byHand, value, rules } = derive(sheet, on);
    expect(byHand).toMatchObject({ kind: 'override', formula, before, to: [] });
    expect(value).toBe(values[names.indexOf(on)]);
    expect(rules).toHaveLength(on === 'a' || on === 'b' ? 1 : 0);
  });

  test('an input hides its setting, which is kept', () => {
    const column = createColumn(overriding('hours', '5'));
    column.set({ hours: 3 });
    expect([column.value('hours'), column.setting('hours')]).toEqual([5, 3]);
    const doubled = createColumn(overriding('hours', 'value * 2'), { hours: 3 });
    expect([doubled.value('hours'), doubled.setting('hours'), doubled.value('total')]).toEqual([6, 3, 80]);
  });

  test('a quantity shows what its formula reads, without what it replaces', () => {
    const { byHand } = derive(overriding('b', 'value + hours * cap'), 'b');
    expect(byHand?.readings).toEqual([
      { name: 'hours', value: 8 },
      { name: 'cap', value: 60 },
    ]);
  });

  test('one result of a block makes the other give way', () => {
    expect(derive(overriding('half', '30'), 'rest').byHand).toEqual({
      kind: 'gives-way',
      formula: null,
      readings: [{ name: 'half', value: 30 }],
      before: 50,
      to: ['half'],
    });
  });

  test.each(names)('%s is gone once it is lifted, and leaves no trace', (on) => {
    const plain = sheetOf(parts);
    const lifted = sheetOf({ ...parts, overrides: [], sharings: [] });
    expect(overriding(on, '7').hands?.registersOf(on)).not.toEqual([]);
    expect(lifted.hands).toBeNull();
    expect(lifted.program).toEqual(plain.program);
    for (const id of names) expect(derive(lifted, id)).toEqual(derive(plain, id));
    for (const id of names) expect(derive(lifted, id).byHand).toBeNull();
  });

  test('gives what a sheet gives that has the value instead', () => {
    const edits = fc.record({ hours: fc.integer({ min: 0, max: 20 }), cap: fc.integer({ min: 0, max: 99 }) });
    fc.assert(
      fc.property(edits, edits, (over, set) => {
        const overrides = Object.entries(over).map(([on, value]): Override => ({ on, formula: String(value) }));
        const column = createColumn(sheetOf({ ...parts, overrides }));
        column.set(set);
        expect(valuesOf(column)).toEqual(valuesOf(createColumn(sheetOf(parts), over)));
      }),
      runs(200, 20_000),
    );
  });
});

describe('what is put over a quantity and gives nothing', () => {
  const failure = (on: string, formula: string, asked = on, more: SheetParts = {}) =>
    explainFailure(createColumn(overriding(on, formula, more)), asked);

  test.each([
    ['by its own name is a circle', 'a', 'a + 1', { code: 'circle', path: ['a', 'a'] }],
    ['by what depends on it is one', 'hours', 'a / 10', { code: 'circle', path: ['hours', 'a', 'hours'] }],
    ['by a block is one', 'a', 'half', { code: 'circle', path: ['a', 'half', 'a'] }],
    ['divides by zero', 'cap', '1 / zero', { code: 'division-by-zero' }],
    ['reads a name that is nowhere', 'b', 'nowhere + 1', { code: 'unknown-name', name: 'nowhere' }],
    ['reads `other`, which only rules have', 'b', 'other', { code: 'unknown-name', name: 'other' }],
  ])('%s', (_, on, formula, error) => {
    expect(failure(on, formula)).toEqual(error);
    expect(derive(overriding(on, formula), on)).toMatchObject({ value: null, error });
  });

  test('reads itself by `value` without a circle', () => {
    expect(failure('a', 'value + 1')).toBeNull();
    expect(failure('hours', 'value + 1')).toBeNull();
  });

  test('fails what depends on it, and nothing else', () => {
    const column = createColumn(overriding('b', '1 / zero'));
    expect(explainFailure(column, 'total')).toEqual({
      code: 'depends-on',
      name: 'b',
      cause: { code: 'division-by-zero' },
    });
    expect([column.value('a'), column.value('hours')]).toEqual([60, 8]);
  });

  test('is a circle where it reads what gives way to it', () => {
    const sharings = [{ members: ['a', 'b'], givesWay: [] }];
    expect(failure('a', 'b', 'a', { sharings })).toEqual({ code: 'circle', path: ['a', 'b', 'a'] });
    expect(failure('a', 'total / 2', 'b', { sharings })).toEqual({ code: 'circle', path: ['b', 'a', 'total', 'b'] });
  });

  test('is named where an edited formula closes the circle', () => {
    const formulas = { ...parts.formulas, total: 'own / 2' };
    expect(failure('b', '5', 'own', { formulas })).toEqual({ code: 'circle', path: ['own', 'total', 'own'] });
  });
});

const ids = ['m0', 'm1', 'm2', 'm3', 'm4'];

/** Five quantities that keep their sum; `amounts` are what they are by their formulas. */
function shared(amounts: readonly number[], overrides: readonly Override[], givesWay: readonly string[] = []): Sheet {
  const inputs = Object.fromEntries(amounts.map((amount, index) => [`i${String(index)}`, amount]));
  const formulas = Object.fromEntries(ids.map((id, index) => [id, `i${String(index)}`]));
  const sharings: readonly Sharing[] = [{ members: ids, givesWay }];
  return sheetOf({
    inputs: { ...inputs, zero: 0 },
    formulas: { ...formulas, sum: ids.join(' + ') },
    overrides,
    sharings,
  });
}
const sharesOf = (sheet: Sheet): readonly number[] => {
  const column = createColumn(sheet);
  return ids.map((id) => column.value(id));
};
const over = (values: Readonly<Record<string, number>>): Override[] =>
  Object.entries(values).map(([on, value]) => ({ on, formula: String(value) }));
const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

describe('members of a sharing', () => {
  const amounts = [72, 36, 24, 36, 72];

  test.each<[what: string, held: Readonly<Record<string, number>>, givesWay: readonly string[], expected: number[]]>([
    // Each other member × (240 - 100) / 168.
    ['give way in proportion', { m4: 100 }, [], [60, 30, 20, 30, 100]],
    ['get in proportion what is set free', { m4: 30 }, [], [90, 45, 30, 45, 30]],
    ['give all that they have', { m4: 240 }, [], [0, 0, 0, 0, 240]],
    ['give way to several together', { m4: 100, m0: 92 }, [], [92, 18, 12, 18, 100]],
    ['give way alone where they are named', { m4: 100 }, ['m0'], [44, 36, 24, 36, 100]],
    ['share what is asked of those named', { m4: 90 }, ['m0', 'm1'], [60, 30, 24, 36, 90]],
    ['give way all where those named are held', { m4: 100, m0: 92 }, ['m0'], [92, 18, 12, 18, 100]],
    ['give way as those named that are left', { m4: 82, m0: 72 }, ['m0', 'm3'], [72, 36, 24, 26, 82]],
    ['stay as they are where nothing changes', { m4: 72 }, [], [72, 36, 24, 36, 72]],
    ['are just that where all are held', { m0: 1, m1: 2, m2: 3, m3: 4, m4: 500 }, [], [1, 2, 3, 4, 500]],
  ])('%s', (_, held, givesWay, expected) => {
    sharesOf(shared(amounts, over(held), givesWay)).forEach((value, index) => {
      expect(value).toBeCloseTo(expected[index] ?? NaN, 9);
    });
  });

  test('that have nothing share evenly what is set free', () => {
    expect(sharesOf(shared([100, 0, 0, 0, 0], over({ m0: 60 })))).toEqual([60, 10, 10, 10, 10]);
    expect(sharesOf(shared([50, 0, 0, 25, 25], over({ m0: 30 }), ['m1', 'm2']))).toEqual([30, 10, 10, 25, 25]);
    expect(sharesOf(shared([0, 0, 0, 0, 0], over({ m0: 0 })))).toEqual([0, 0, 0, 0, 0]);
  });

  test.each<[what: string, held: Readonly<Record<string, number>>, givesWay: readonly string[], amount: number]>([
    ['one holds more than there is', { m0: 250 }, [], 10],
    ['several do together', { m0: 200, m1: 100.5 }, [], 60.5],
    ['those named have too little', { m4: 150 }, ['m0'], 6],
  ])('have nothing left where %s', (_, held, givesWay, amount) => {
    const sheet = shared(amounts, over(held), givesWay);
    const column = createColumn(sheet);
    const givers = ids.filter((id) => !(id in held) && (givesWay.length === 0 || givesWay.includes(id)));
    expect(givers.length).toBeGreaterThan(0);
    for (const id of givers) expect(explainFailure(column, id)).toEqual({ code: 'nothing-left', over: amount });
    for (const [id, value] of Object.entries(held)) expect(column.value(id)).toBe(value);
    expect(explainFailure(column, 'sum')).toMatchObject({ code: 'depends-on', cause: { code: 'nothing-left' } });
  });

  test('say to whom they give way, and what they were', () => {
    const sheet = shared(amounts, over({ m4: 100, m0: 92 }));
    const deriver = new Deriver(sheet, createColumn(sheet));
    expect(deriver.derive('m1').byHand).toEqual({
      kind: 'gives-way',
      formula: null,
      readings: [
        { name: 'm0', value: 92 },
        { name: 'm4', value: 100 },
      ],
      before: 36,
      to: ['m0', 'm4'],
    });
    expect(deriver.derive('sum').byHand).toBeNull();
  });

  test('fail with what is put over one of them', () => {
    const column = createColumn(shared(amounts, [{ on: 'm0', formula: '1 / zero' }]));
    expect(explainFailure(column, 'm3')).toEqual({
      code: 'depends-on',
      name: 'm0',
      cause: { code: 'division-by-zero' },
    });
  });

  const anyAmounts = fc.array(
    fc.oneof(fc.constantFrom(0, 0.1, 0.3), fc.double({ min: 1e-6, max: 1000, noNaN: true })),
    {
      minLength: 5,
      maxLength: 5,
    },
  );
  const anyHeld = fc.dictionary(fc.constantFrom(...ids), fc.nat({ max: 400 }), { minKeys: 1, maxKeys: 4 });

  test('keep their sum, are not negative, and keep their proportions', () => {
    fc.assert(
      fc.property(anyAmounts, anyHeld, fc.subarray(ids), (amounts, held, givesWay) => {
        const values = sharesOf(shared(amounts, over(held), givesWay));
        const isHeld = (index: number): boolean => ids[index]! in held;
        const free = [0, 1, 2, 3, 4].filter((index) => !isHeld(index));
        const named = free.filter((index) => givesWay.includes(ids[index]!));
        const givers = named.length > 0 ? named : free;
        const left =
          sumOf(amounts) -
          sumOf(Object.values(held)) -
          sumOf(free.filter((each) => !givers.includes(each)).map((each) => amounts[each]!));
        fc.pre(Math.abs(left) > 1e-9);
        if (left < 0) return void expect(givers.every((index) => Number.isNaN(values[index]))).toBe(true);
        const had = sumOf(givers.map((index) => amounts[index]!));
        const scale = Math.max(1, ...amounts, ...Object.values(held));
        expect(Math.abs(sumOf(values) - sumOf(amounts))).toBeLessThanOrEqual(1e-9 * scale);
        values.forEach((value, index) => {
          const share = had === 0 ? left / givers.length : amounts[index]! * (left / had);
          const expected = isHeld(index) ? held[ids[index]!]! : givers.includes(index) ? share : amounts[index]!;
          expect(value).toBeGreaterThanOrEqual(0);
          expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-9 * scale);
        });
      }),
      runs(300, 50_000),
    );
  });

  test('compute in steps what they compute at once', () => {
    fc.assert(
      fc.property(anyAmounts, anyAmounts, anyHeld, (first, second, held) => {
        const overrides = Object.entries(held).map(([on, value]) => ({
          on,
          formula: `value / 2 + ${String(value / 8)}`,
        }));
        const column = createColumn(shared(first, overrides));
        column.set(Object.fromEntries(second.map((amount, index) => [`i${String(index)}`, amount])));
        expect(ids.map((id) => column.value(id))).toEqual(sharesOf(shared(second, overrides)));
      }),
      runs(200, 20_000),
    );
  });
});
