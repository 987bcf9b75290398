import { describe, expect, test } from 'vitest';
import type { Block } from '../../../src/sheet/model.js';
import { createColumn, createSheet, formulaTexts } from '../../../src/sheet/sheet.js';
import { ruleOf, sheetOf } from './sheet-of.js';

/*
 *   hours --> minutes --> long (rule: at most cap) --> block: halves --> sum
 *         \-> whole = floor(hours) --> twice
 */
const asked: (readonly number[])[] = [];
const halves: Block = {
  id: 'halving',
  reads: ['long'],
  writes: ['half', 'other_half'],
  compute: (reads) => {
    asked.push(reads);
    return reads.flatMap((minutes) => [Math.ceil(minutes / 2), Math.floor(minutes / 2)]);
  },
};
const sheet = sheetOf({
  inputs: { hours: 4, unused: 1 },
  constants: { cap: 200 },
  formulas: {
    minutes: 'hours * 60',
    long: 'minutes',
    sum: 'half + other_half',
    whole: 'floor(hours)',
    twice: 'whole * 2',
  },
  rules: [ruleOf({ id: 'cap-long', on: 'long', when: 'value > cap', value: 'cap' })],
  blocks: [halves],
});

/** What the block was asked since `edit` began. */
function askedBy(edit: () => void): (readonly number[])[] {
  asked.length = 0;
  edit();
  return [...asked];
}

describe('column.set(values)', () => {
  test('gives the ids of exactly the cells whose value changed, each after those it reads', () => {
    const column = createColumn(sheet);
    expect(column.set({ hours: 4.25 })).toEqual(['minutes', 'long.0']);
    expect(column.set({ hours: 3 })).toEqual(
      ['minutes', 'long.0', 'cap-long.when', 'long', 'half', 'other_half', 'sum', 'whole', 'twice'].filter(
        (id) => id !== '',
      ),
    );
  });

  test('gives what a block writes one by one', () => {
    const column = createColumn(sheet, { hours: 3 });
    // 181 minutes are 91 + 90 instead of 90 + 90.
    expect(column.set({ hours: 181 / 60 })).toEqual(['minutes', 'long.0', 'long', 'half', 'sum']);
  });

  test.each([
    ['an input that no cell reads', { unused: 5 }],
    ['the value that is there', { hours: 4, cap: 200 }],
    ['nothing', {}],
  ])('changes no cell for %s', (_, values) => {
    expect(createColumn(sheet).set(values)).toEqual([]);
  });

  test('stops where nothing changed, from the first time on', () => {
    const column = createColumn(sheet);
    expect(askedBy(() => column.set({ hours: 5 }))).toEqual([]);
    expect(askedBy(() => column.set({ hours: 6, cap: 200 }))).toEqual([]);
    expect(askedBy(() => column.set({ cap: 150 }))).toEqual([[150]]);
  });

  test('computes a cell once, however many of its inputs change', () => {
    const column = createColumn(sheet);
    expect(askedBy(() => column.set({ hours: 2, cap: 100, unused: 9 }))).toEqual([[100]]);
    expect(column.value('long')).toBe(100);
  });

  test('sets constants too, which a person may put another number over', () => {
    const column = createColumn(sheet);
    expect(column.set({ cap: 240 })).toEqual(['cap-long.when', 'long', 'half', 'other_half', 'sum']);
    expect(column.value('sum')).toBe(240);
  });

  test.each([
    ['a formula', 'minutes', 'minutes is computed and cannot be set'],
    ['what a block writes', 'half', 'half is computed and cannot be set'],
    ['a stage of a rule', 'long.0', 'long.0 is computed and cannot be set'],
    ['no name of the sheet', 'nowhere', 'the sheet has no quantity nowhere'],
    ['no name of the sheet', 'constructor', 'the sheet has no quantity constructor'],
  ])('refuses %s (%s), and then sets nothing', (_, id, message) => {
    const column = createColumn(sheet);
    expect(() => column.set({ hours: 2, [id]: 1 })).toThrow(message);
    expect(column.registers).toEqual(createColumn(sheet).registers);
    expect(column.set({ hours: 2 })).toContain('minutes');
  });
});

describe('column.value(id)', () => {
  test('is what the formulas say at the start', () => {
    const column = createColumn(sheet);
    const ids = ['hours', 'cap', 'minutes', 'long', 'half', 'other_half', 'sum', 'whole', 'twice'];
    expect(ids.map((id) => column.value(id))).toEqual([4, 200, 240, 200, 100, 100, 200, 4, 8]);
  });

  test('throws for a name that the sheet does not have', () => {
    expect(() => createColumn(sheet).value('halving')).toThrow('the sheet has no quantity halving');
  });
});

describe('two columns over one program', () => {
  test('do not touch each other, nor the program', () => {
    const before = sheet.program.initial.slice();
    const [one, other] = [createColumn(sheet), createColumn(sheet, { hours: 1 })];
    one.set({ hours: 10, cap: 500 });
    expect(other.value('sum')).toBe(60);
    other.set({ hours: 2 });
    expect([one.value('sum'), other.value('sum')]).toEqual([500, 120]);
    expect(createColumn(sheet).value('sum')).toBe(200);
    expect(sheet.program.initial).toEqual(before);
  });
});

describe('a name of a choice', () => {
  test('is a number in formulas, and no quantity', () => {
    const named = sheetOf({
      inputs: { phase: 2 },
      formulas: { is_taper: 'phase == phase_taper' },
      names: { phase_taper: 2 },
    });
    expect(createColumn(named).value('is_taper')).toBe(1);
    expect(() => createColumn(named).value('phase_taper')).toThrow('no quantity phase_taper');
  });
});

describe('a quantity', () => {
  test('may be called what objects have', () => {
    const column = createColumn(sheetOf({ inputs: { constructor: 2 }, formulas: { twice: 'constructor * 2' } }));
    expect(column.value('twice')).toBe(4);
  });
});

describe('createSheet(model, book)', () => {
  test('needs every text that formulaTexts(model) gives', () => {
    expect(formulaTexts(sheet.model)).toEqual([
      'hours * 60',
      'minutes',
      'half + other_half',
      'floor(hours)',
      'whole * 2',
      'value > cap',
      'cap',
    ]);
    expect(() => createSheet(sheet.model, {})).toThrow('formula not compiled: hours * 60');
  });
});
