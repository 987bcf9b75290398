import { describe, expect, test } from 'vitest';
import type { CellError } from '../../../src/sheet/errors.js';
import { explainFailure } from '../../../src/sheet/explain-failure.js';
import { createColumn } from '../../../src/sheet/sheet.js';
import { ruleOf, sheetOf, type SheetParts } from './sheet-of.js';

const inputs = { one: 1, zero: 0, negative: -4, huge: 1e308 };

function failure(parts: SheetParts, id: string): CellError | null {
  return explainFailure(createColumn(sheetOf({ inputs, ...parts })), id);
}

const dividing = { code: 'division-by-zero' } as const;
const tooLarge = { code: 'too-large' } as const;
const noRoot = { code: 'not-a-number', operation: 'sqrt' } as const;

describe('a formula that fails is an error that says why', () => {
  test.each<[formula: string, error: CellError]>([
    ['1 / zero', dividing],
    ['zero / zero', dividing],
    ['1 % zero', dividing],
    ['one mod (one - 1)', dividing],
    ['zero ^ -1', dividing],
    ['sqrt(negative)', noRoot],
    ['negative ^ 0.5', { code: 'not-a-number', operation: '^' }],
    ['huge * 10', tooLarge],
    ['huge + huge', tooLarge],
    ['10 ^ 400', tooLarge],
    ['1e-5 / 1e-308 / 1e-308', tooLarge],
    ['nowhere + 1', { code: 'unknown-name', name: 'nowhere' }],
    ['constructor', { code: 'unknown-name', name: 'constructor' }],
    ['__proto__ + 1', { code: 'unknown-name', name: '__proto__' }],
    ['result + 1', { code: 'circle', path: ['result', 'result'] }],
  ])('%s', (result, error) => {
    const column = createColumn(sheetOf({ inputs, formulas: { result } }));
    expect(column.value('result')).toBeNaN();
    expect(explainFailure(column, 'result')).toEqual(error);
  });
});

describe('no failure turns into a number on its way', () => {
  test.each<[formula: string, error: CellError]>([
    ['(1 / zero) ^ 0', dividing],
    ['1 ^ sqrt(negative)', noRoot],
    ['1 / (huge * 10)', tooLarge],
    ['huge * 10 > 5', tooLarge],
    ['5 < huge * 10', tooLarge],
    ['huge * 10 == huge * 10', tooLarge],
    ['min(1, huge * 10)', tooLarge],
    ['max(1, 1 / zero)', dividing],
    ['sqrt(negative) == sqrt(negative)', noRoot],
    ['sqrt(negative) != 1', noRoot],
    ['not (1 / zero)', dividing],
    ['1 / zero ? 1 : 2', dividing],
    ['1 / zero and zero', dividing],
    ['1 / zero or one', dividing],
    ['one and 1 / zero', dividing],
    ['zero or 1 / zero', dividing],
    ['clamp(1 / zero, 1, 2)', dividing],
    ['0 * (huge * 10)', tooLarge],
    ['round(1 / zero) + 1', dividing],
    ['1 < 1 / zero < 0', dividing],
  ])('%s', (result, error) => {
    expect(failure({ formulas: { result } }, 'result')).toEqual(error);
  });
});

describe('what a formula does not look at may fail', () => {
  test.each([
    ['one ? 5 : 1 / zero', 5],
    ['zero ? 1 / zero : 5', 5],
    ['zero and 1 / zero', 0],
    ['one or 1 / zero', 1],
    ['zero > 0 and 1 / zero > 2', 0],
    ['2 < 1 < 1 / zero', 0],
    ['zero ? sqrt(negative) : one ? 5 : 1 / zero', 5],
  ])('%s is %d', (result, value) => {
    expect(createColumn(sheetOf({ inputs, formulas: { result } })).value('result')).toBe(value);
  });
});

describe('a cell that depends on one that failed', () => {
  test('points at it, and at what that one depends on', () => {
    const formulas = { a: '1 / zero', b: 'one + a', c: 'sqrt(b) * a' };
    const causeOfB = { code: 'depends-on', name: 'a', cause: dividing };
    expect(failure({ formulas }, 'b')).toEqual(causeOfB);
    expect(failure({ formulas }, 'c')).toEqual({ code: 'depends-on', name: 'b', cause: causeOfB });
  });

  test('has its own error where it fails by itself before', () => {
    expect(failure({ formulas: { a: '1 / zero', b: 'sqrt(negative) + a' } }, 'b')).toEqual(noRoot);
  });

  test('is told apart from one that only fails beside it', () => {
    // No inputs: the cell that failed then has the first place in the machine.
    const column = createColumn(sheetOf({ formulas: { a: '1 / 0', b: 'sqrt(0 - 1)', c: 'abs(sqrt(0 - 1))' } }));
    expect(explainFailure(column, 'b')).toEqual(noRoot);
    expect(explainFailure(column, 'c')).toEqual(noRoot);
  });

  test('points at a name that does not exist, and at a circle', () => {
    const formulas = { a: 'nowhere', b: 'a', c: 'd', d: 'c', e: 'd + 1' };
    const unknown = { code: 'unknown-name', name: 'nowhere' };
    expect(failure({ formulas }, 'b')).toEqual({ code: 'depends-on', name: 'a', cause: unknown });
    const circle = { code: 'circle', path: ['d', 'c', 'd'] };
    expect(failure({ formulas }, 'e')).toEqual({ code: 'depends-on', name: 'd', cause: circle });
  });

  test('points at an input that is no number', () => {
    for (const nothing of [NaN, Infinity, -Infinity]) {
      const column = createColumn(sheetOf({ inputs, formulas: { a: 'one * 2', b: 'one > 5' } }), { one: nothing });
      const cause = { code: 'not-a-number', operation: 'one' };
      expect(explainFailure(column, 'a')).toEqual({ code: 'depends-on', name: 'one', cause });
      expect(explainFailure(column, 'b')).toEqual({ code: 'depends-on', name: 'one', cause });
    }
  });

  test('has no error once the cause is gone', () => {
    const column = createColumn(sheetOf({ inputs, formulas: { a: '1 / zero', b: 'a + 1' } }));
    column.set({ zero: 2 });
    expect(explainFailure(column, 'b')).toBeNull();
    expect(column.value('b')).toBe(1.5);
  });
});

describe('a rule that fails', () => {
  const formulas = { a: '10', b: '20', c: 'a + 1' };

  test('by its value is an error of the quantity, whose stages nobody has to know', () => {
    const rules = [
      ruleOf({ id: 'first', on: 'a', value: 'value / zero' }),
      ruleOf({ id: 'second', on: 'a', value: 'value + 1' }),
    ];
    expect(failure({ formulas, rules }, 'a')).toEqual(dividing);
    expect(failure({ formulas, rules }, 'c')).toEqual({ code: 'depends-on', name: 'a', cause: dividing });
  });

  test('by its condition is named', () => {
    const rules = [ruleOf({ id: 'odd', on: 'a', when: '1 / zero', value: '1' })];
    expect(failure({ formulas, rules }, 'a')).toEqual({ code: 'depends-on', name: 'odd', cause: dividing });
  });

  test('fails the quantity that gets the difference, too', () => {
    const rules = [ruleOf({ id: 'move', on: 'a', to: 'b', value: 'value / zero' })];
    expect(failure({ formulas, rules }, 'b')).toEqual({ code: 'depends-on', name: 'a', cause: dividing });
  });

  test('names the quantity it acts on, where there is none', () => {
    const rules = [ruleOf({ id: 'move', on: 'nowhere', to: 'b', value: '1' })];
    expect(failure({ formulas, rules }, 'b')).toEqual({ code: 'unknown-name', name: 'nowhere' });
    expect(failure({ formulas, rules }, 'a')).toBeNull();
  });
});

describe('a block that fails', () => {
  const block = {
    id: 'halving',
    reads: ['a'],
    writes: ['half', 'rest'],
    compute: ([a = 0]: readonly number[]) => (a < 0 ? [] : [a / 2]),
  };

  test.each<[formula: string, half: CellError | null, rest: CellError]>([
    ['4', null, { code: 'not-a-number', operation: 'halving' }],
    ['-4', { code: 'not-a-number', operation: 'halving' }, { code: 'not-a-number', operation: 'halving' }],
    [
      '1 / zero',
      { code: 'depends-on', name: 'a', cause: dividing },
      { code: 'depends-on', name: 'a', cause: dividing },
    ],
  ])('for a = %s', (a, half, rest) => {
    expect(failure({ formulas: { a }, blocks: [block] }, 'half')).toEqual(half);
    expect(failure({ formulas: { a }, blocks: [block] }, 'rest')).toEqual(rest);
  });

  test('is not asked for numbers it cannot have, and gives none that are not finite', () => {
    const asked: (readonly number[])[] = [];
    const compute = (reads: readonly number[]) => {
      asked.push(reads);
      return [Infinity];
    };
    const blocks = [{ id: 'endless', reads: ['a'], writes: ['end'], compute }];
    const column = createColumn(sheetOf({ inputs: { zero: 0 }, formulas: { a: '1 / zero', b: 'end > 5' }, blocks }));
    expect(asked).toEqual([]);
    column.set({ zero: 1 });
    expect(asked).toEqual([[1]]);
    expect(column.value('end')).toBeNaN();
    expect(column.value('b')).toBeNaN();
  });

  test('names what it would read', () => {
    const blocks = [{ ...block, reads: ['nowhere'] }];
    expect(failure({ blocks }, 'half')).toEqual({ code: 'unknown-name', name: 'nowhere' });
  });
});

describe('minus zero', () => {
  test.each([
    '-zero',
    'zero * negative',
    'zero / negative',
    'round(-0.3)',
    'ceil(-0.5)',
    '-(0)',
    'min(0, -zero)',
    'signed',
    '-abs(zero)',
  ])('%s is plain zero', (result) => {
    const column = createColumn(sheetOf({ inputs: { ...inputs, signed: -0 }, formulas: { result } }));
    expect(column.value('result')).toBe(0);
  });

  test('is no change of an input, and no other value of one', () => {
    const column = createColumn(sheetOf({ inputs: { a: 0 }, constants: { b: -0 }, formulas: { c: 'a' } }));
    expect(column.set({ a: -0 })).toEqual([]);
    expect([column.value('a'), column.value('b'), column.value('c')]).toEqual([0, 0, 0]);
  });
});
