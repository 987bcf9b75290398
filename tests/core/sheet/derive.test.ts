import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Derivation } from '../../../src/sheet/derivation.js';
import { Deriver } from '../../../src/sheet/derive.js';
import { createColumn } from '../../../src/sheet/sheet.js';
import { patience, runs } from '../../reference/runs.js';
import { partsOf, randomEdits, randomSheets } from './random-sheets.js';
import { ruleOf, sheetOf } from './sheet-of.js';

const sheet = sheetOf({
  inputs: { hours: 8, phase: 1 },
  constants: { share: 0.25, cap: 100 },
  formulas: {
    minutes: 'hours * 60',
    strength: 'minutes * share',
    slow: 'minutes - strength_base',
    strength_base: 'phase == phase_build ? 120 : 60',
    broken: 'minutes / (hours - 8)',
    after_broken: 'broken + 1',
  },
  rules: [
    ruleOf({ id: 'cap', on: 'strength', when: 'hours > 6 and value > cap', value: 'cap', to: 'slow' }),
    ruleOf({ id: 'off', on: 'strength', value: '0', enabled: false }),
    ruleOf({ id: 'late', on: 'strength', when: 'value < 20', value: 'value + 5', to: 'slow' }),
  ],
  blocks: [
    { id: 'halving', reads: ['strength', 'slow'], writes: ['half'], compute: ([strength = 0]) => [strength / 2] },
  ],
  names: { phase_build: 1 },
});

function derive(id: string, inputs: Readonly<Record<string, number>> = {}): Derivation {
  return new Deriver(sheet, createColumn(sheet, inputs)).derive(id);
}

describe('the derivation of', () => {
  const plain = { formula: null, readings: [], rules: [], byHand: null, error: null };

  test('an input is its value', () => {
    expect(derive('hours', { hours: 9 })).toEqual({ ...plain, quantity: 'hours', kind: 'input', value: 9 });
  });

  test('a constant is the number of the method, or the one a person set', () => {
    expect(derive('cap')).toEqual({ ...plain, quantity: 'cap', kind: 'constant', value: 100 });
    expect(derive('cap', { cap: 90 }).value).toBe(90);
  });

  test('a formula is its text, and what it read; names of choices are no quantities', () => {
    expect(derive('strength_base')).toEqual({
      ...plain,
      quantity: 'strength_base',
      kind: 'formula',
      value: 120,
      formula: 'phase == phase_build ? 120 : 60',
      readings: [{ name: 'phase', value: 1 }],
    });
  });

  test('a quantity under rules is its base formula, then each rule with the value before and after', () => {
    expect(derive('strength')).toEqual({
      quantity: 'strength',
      kind: 'formula',
      value: 100,
      formula: 'minutes * share',
      readings: [
        { name: 'minutes', value: 480 },
        { name: 'share', value: 0.25 },
      ],
      rules: [
        {
          rule: 'cap',
          role: 'on',
          enabled: true,
          acted: true,
          when: 'hours > 6 and value > cap',
          formula: 'cap',
          before: 120,
          after: 100,
        },
        { rule: 'off', role: 'on', enabled: false, acted: false, when: '1', formula: '0', before: 100, after: 100 },
        {
          rule: 'late',
          role: 'on',
          enabled: true,
          acted: false,
          when: 'value < 20',
          formula: 'value + 5',
          before: 100,
          after: 100,
        },
      ],
      byHand: null,
      error: null,
    });
  });

  test('a quantity that gets what a rule takes off shows that, too', () => {
    const { value, rules } = derive('slow');
    expect(value).toBe(380);
    expect(rules.map(({ rule, role, acted, before, after }) => [rule, role, acted, before, after])).toEqual([
      ['cap', 'to', true, 360, 380],
      ['late', 'to', false, 380, 380],
    ]);
  });

  test('what a block computes is the name of the block, and what it read', () => {
    expect(derive('half')).toEqual({
      ...plain,
      quantity: 'half',
      kind: 'block',
      value: 50,
      formula: 'halving',
      readings: [
        { name: 'strength', value: 100 },
        { name: 'slow', value: 380 },
      ],
    });
  });

  test('a quantity that failed has no value but an error, and so have those that depend on it', () => {
    const error = { code: 'division-by-zero' };
    expect(derive('broken')).toMatchObject({ value: null, error });
    expect(derive('after_broken')).toMatchObject({
      value: null,
      readings: [{ name: 'broken', value: null }],
      error: { code: 'depends-on', name: 'broken', cause: error },
    });
  });

  test('a name that is no quantity is a programming error', () => {
    for (const id of ['nowhere', 'phase_build', 'strength.0', 'cap.when', 'halving'])
      expect(() => derive(id)).toThrow(`the sheet has no quantity ${id}`);
  });
});

describe('derivations', () => {
  test('there are of every quantity: inputs, constants, formulas, then what blocks write', () => {
    const deriver = new Deriver(sheet, createColumn(sheet));
    expect([...deriver.quantities]).toEqual([
      ...['hours', 'phase', 'share', 'cap'],
      ...['minutes', 'strength', 'slow', 'strength_base', 'broken', 'after_broken'],
      'half',
    ]);
  });

  test('that did not change are the same objects', () => {
    const column = createColumn(sheet);
    const deriver = new Deriver(sheet, column);
    const [minutes, strength] = [deriver.derive('minutes'), deriver.derive('strength')];
    column.set({ phase: 2 });
    expect(deriver.derive('minutes')).toBe(minutes);
    expect(deriver.derive('strength')).toBe(strength);
    column.set({ cap: 90 });
    expect(deriver.derive('minutes')).toBe(minutes);
    expect(deriver.derive('strength').value).toBe(90);
  });

  test('tell another cause where a quantity fails for another reason', () => {
    const failing = sheetOf({
      inputs: { way: 0 },
      formulas: { a: 'way ? sqrt(0 - 1) : 1 / 0', b: 'a + 1', c: 'b + 1' },
    });
    const column = createColumn(failing);
    const deriver = new Deriver(failing, column);
    deriver.derive('c');
    column.set({ way: 1 });
    const root = { code: 'not-a-number', operation: 'sqrt' };
    expect(deriver.derive('c').error).toEqual({
      code: 'depends-on',
      name: 'b',
      cause: { code: 'depends-on', name: 'a', cause: root },
    });
  });

  test('are plain data: JSON gives them back', () => {
    const deriver = new Deriver(sheet, createColumn(sheet));
    const all = [...deriver.quantities].map((id) => deriver.derive(id));
    expect(JSON.parse(JSON.stringify(all))).toStrictEqual(all);
  });

  test('never go stale, whatever is edited', { timeout: patience }, () => {
    fc.assert(
      fc.property(randomSheets, randomEdits, (random, edits) => {
        const sheet = sheetOf(partsOf(random));
        const column = createColumn(sheet);
        const deriver = new Deriver(sheet, column);
        let settings = {};
        for (const edit of edits) {
          settings = { ...settings, ...edit };
          column.set(edit);
          const fresh = new Deriver(sheet, createColumn(sheet, settings));
          for (const id of deriver.quantities) expect(deriver.derive(id)).toEqual(fresh.derive(id));
        }
      }),
      runs(80, 50_000),
    );
  });
});
