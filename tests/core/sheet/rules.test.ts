import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SheetRule } from '../../../src/sheet/model.js';
import { createColumn } from '../../../src/sheet/sheet.js';
import { runs } from '../../reference/runs.js';
import { ruleOf, sheetOf } from './sheet-of.js';

const inputs = { hours: 8, zero: 0 };
const formulas = { a: '100', b: '20', total: 'a + b' };

/** The quantities a, b and total under rules. */
function ruled(...rules: readonly SheetRule[]): readonly number[] {
  const column = createColumn(sheetOf({ inputs, formulas, rules }));
  return ['a', 'b', 'total'].map((id) => column.value(id));
}

describe('a rule', () => {
  test.each<[what: string, rule: Partial<SheetRule>, expected: readonly number[]]>([
    ['sees the quantity so far as `value`', { value: 'value / 2' }, [50, 20, 70]],
    ['hands what it takes off on to `to`', { value: '60', to: 'b' }, [60, 60, 120]],
    ['takes what it adds from `to`', { value: '130', to: 'b' }, [130, -10, 120]],
    ['sees `to` so far as `other`', { value: 'min(150, value + other)', to: 'b' }, [120, 0, 120]],
    ['acts where its condition holds', { when: 'hours > 6 and value > 60', value: '60' }, [60, 20, 80]],
    ['acts where its condition is any number but zero', { when: '-0.5', value: '60' }, [60, 20, 80]],
    ['leaves all alone where it does not hold', { when: 'hours < 6', value: '60', to: 'b' }, [100, 20, 120]],
    ['may fail where it does not act', { when: 'zero', value: '1 / zero', to: 'b' }, [100, 20, 120]],
    ['acts on nothing while it is switched off', { enabled: false, value: '60', to: 'b' }, [100, 20, 120]],
  ])('%s', (_, rule, expected) => {
    expect(ruled(ruleOf({ id: 'rule', on: 'a', value: 'value', ...rule }))).toEqual(expected);
  });

  test('reads other quantities with their rules applied', () => {
    const rules = [
      ruleOf({ id: 'late', on: 'total', value: 'value + a' }),
      ruleOf({ id: 'early', on: 'a', value: '1' }),
    ];
    expect(ruled(...rules)).toEqual([1, 20, 22]);
  });

  test.each(['hours', 'fixed'])('cannot act on what people set: %s', (on) => {
    const sheet = () => sheetOf({ inputs, constants: { fixed: 1 }, rules: [ruleOf({ id: 'rule', on, value: '1' })] });
    expect(sheet).toThrow(`a rule cannot act on ${on}`);
  });
});

describe('rules on one quantity', () => {
  const double = ruleOf({ id: 'double', on: 'a', value: 'value * 2' });
  const addTen = ruleOf({ id: 'add-ten', on: 'a', value: 'value + 10' });

  test('act in the order of the document', () => {
    expect(ruled(double, addTen)[0]).toBe(210);
    expect(ruled(addTen, double)[0]).toBe(220);
  });

  test('pass on minutes along a chain', () => {
    const first = ruleOf({ id: 'first', on: 'a', value: '60', to: 'b' });
    const second = ruleOf({ id: 'second', on: 'b', value: 'value / 2', to: 'a' });
    expect(ruled(first, second)).toEqual([90, 30, 120]);
  });
});

describe('a rule that is switched off', () => {
  test.each<[what: string, rule: Partial<SheetRule>]>([
    ['does not spread a failure', { on: 'failed', to: 'b', value: '0' }],
    ['closes no circle', { on: 'a', to: 'b', value: 'total' }],
    ['may have a condition that fails', { on: 'a', when: '1 / zero', value: '0' }],
  ])('%s', (_, rule) => {
    const rules = [ruleOf({ id: 'off', on: 'a', value: '1', enabled: false, ...rule })];
    const column = createColumn(sheetOf({ inputs, formulas: { ...formulas, failed: '1 / zero' }, rules }));
    expect(['a', 'b', 'total'].map((id) => column.value(id))).toEqual([100, 20, 120]);
  });
});

describe('a rule that does not act', () => {
  test('does not spread a failure of the quantity it is for', () => {
    const rules = [ruleOf({ id: 'move', on: 'failed', to: 'b', when: 'zero', value: '0' })];
    const column = createColumn(sheetOf({ inputs, formulas: { ...formulas, failed: '1 / zero' }, rules }));
    expect(column.value('failed')).toBeNaN();
    expect(column.value('b')).toBe(20);
  });
});

describe('minutes that are handed on', () => {
  const amounts = fc.record({
    a: fc.double({ min: 0, max: 1e4, noNaN: true }),
    b: fc.double({ min: 0, max: 1e4, noNaN: true }),
  });
  const values = fc.constantFrom(
    '0',
    'value / 3',
    'min(value, 20)',
    'value + other',
    'min(100, value + other)',
    'max(other, value)',
  );
  const moves = fc.array(fc.tuple(fc.boolean(), values, fc.constantFrom('1', 'value > other', 'value > 50', '0')), {
    minLength: 1,
    maxLength: 6,
  });

  test('are neither lost nor made, whatever the rules', () => {
    fc.assert(
      fc.property(amounts, moves, (inputs, drawn) => {
        const rules = drawn.map(([isForward, value, when], index): SheetRule => {
          const [on, to] = isForward ? ['a_minutes', 'b_minutes'] : ['b_minutes', 'a_minutes'];
          return ruleOf({ id: `rule-${String(index)}`, on: on ?? '', to, value, when });
        });
        const column = createColumn(sheetOf({ inputs, formulas: { a_minutes: 'a', b_minutes: 'b' }, rules }));
        const sum = column.value('a_minutes') + column.value('b_minutes');
        expect(Math.abs(sum - inputs.a - inputs.b)).toBeLessThanOrEqual(1e-9 * Math.max(1, inputs.a + inputs.b));
      }),
      runs(300, 50_000),
    );
  });
});
