import { describe, expect, test } from 'vitest';
import { ruleSwitches } from '../../../../src/sheet/explore/switches.js';
import { workBackwards, type WorkedBack } from '../../../../src/sheet/explore/work-backwards.js';
import { createColumn } from '../../../../src/sheet/sheet.js';
import { ruleOf } from '../sheet-of.js';
import { curveColumn, curveSheet, fiveChoices, quarters } from './ranges.js';

/** Solutions as intervals are written: `5`, `[5, 6)`. Ends are compared to nine digits. */
function intervals({ solutions }: WorkedBack): string[] {
  return solutions.map(({ from, to, includesFrom, includesTo }) => {
    const [first, last] = [from, to].map((end) => String(Number(end.toFixed(9))));
    if (from === to) return includesFrom && includesTo ? (first ?? '') : 'nowhere';
    return `${includesFrom ? '[' : '('}${first ?? ''}, ${last ?? ''}${includesTo ? ']' : ')'}`;
  });
}

const ask = (formula: string, target: number, range = quarters): WorkedBack =>
  workBackwards(curveColumn(formula), range, { measure: 'y', target });

describe('workBackwards(column, input, question)', () => {
  test.each([
    // crossings
    ['18 * x', 90, ['5']],
    ['0.3 * 60 * x', 100, ['5.555555556']],
    ['x * x', 2, ['1.414213562']],
    ['x * x * x - 12 * x * x + 44 * x', 48, ['2', '4', '6']],
    ['1e6 * x', 333333.33, ['0.33333333']],
    ['x - 5', 0, ['5']],
    ['min(100, max(0, (x - 3.01) * 10000))', 50, ['3.015']],
    // turns that touch or cross
    ['(x - 3) * (x - 3) + 90', 90, ['3']],
    ['(x - 3.1) * (x - 3.1)', 0, ['3.1']],
    ['90 - abs(x - 3.14)', 90, ['3.14']],
    ['abs(x - 3.14)', 0.001, ['3.139', '3.141']],
    ['(x - 3.51) * (x - 3.51)', 0.0001, ['3.5', '3.52']],
    // flat runs
    ['min(90, 18 * x)', 90, ['[5, 10]']],
    ['max(20, min(90, 18 * x))', 20, ['[0, 1.111111111]']],
    ['floor(x)', 3, ['[3, 4)']],
    ['ceil(x)', 3, ['(2, 3]']],
    ['round(x)', 3, ['[2.5, 3.5)']],
    ['abs(floor(x - 5))', 2, ['[3, 4)', '[7, 8)']],
    ['x / 3 * 3 - x + 7', 7, ['[0, 10]']],
    ['x == 6 ? 7 : 7 + x', 7, ['0', '6']],
    ['x != 6 ? 7 : 8', 7, ['[0, 6)', '(6, 10]']],
    // jumps
    ['x < 6 ? 10 * x : 100', 55, ['5.5']],
    ['x < 6 ? 10 * x : 100', 60, []],
    ['x <= 6 ? 10 * x : 100', 60, ['6']],
    ['x < 0.1 ? 10 * x : 100', 1, []],
    ['x > 0.2 ? 7 * x : 100', 1.4, []],
    ['x < 6 ? 10 * x : 100', 80, []],
    ['x - 3 * floor(x / 3)', 1, ['1', '4', '7', '10']],
    ['1 / (x - 4.99)', 0, []],
    // ends
    ['x', 0, ['0']],
    ['x', 10, ['10']],
    ['(10 - x) * (10 - x) + 90', 90, ['10']],
    ['x', 10.5, []],
    // failing stretches
    ['1 / (x - 5)', 2, ['5.5']],
    ['sqrt(x - 4.3)', 0, ['4.3']],
    ['sqrt(4.3 - x)', 1, ['3.3']],
  ])('where is %s at %s', (formula, target, expected) => {
    expect(intervals(ask(formula, target))).toEqual(expected);
  });

  test('gives plain numbers exactly', () => {
    expect(ask('0.3 * 60 * x', 90).solutions).toEqual([{ from: 5, to: 5, includesFrom: true, includesTo: true }]);
    expect(ask('min(120, 18 * x)', 120).solutions[0]?.from).toBe(20 / 3);
  });

  test('gives the steps of a choice', () => {
    expect(intervals(ask('x * x - 4 * x', -3, fiveChoices))).toEqual(['1', '3']);
    expect(ask('x * x', 5, fiveChoices)).toEqual({
      solutions: [],
      nearest: { at: 2, value: 4, isReached: true, because: { kind: 'choice' } },
      failsSomewhere: false,
    });
    expect(ask('7', 5, fiveChoices).nearest?.because).toEqual({ kind: 'constant' });
  });

  test.each([
    ['18 * x', 200, { at: 10, value: 180, isReached: true, because: { kind: 'end', end: 'most' } }],
    ['18 * x + 5', 2, { at: 0, value: 5, isReached: true, because: { kind: 'end', end: 'least' } }],
    ['90 - (x - 3) * (x - 3)', 95, { at: 3, value: 90, isReached: true, because: { kind: 'extremum', switches: [] } }],
    ['abs(x - 3.3)', -1, { at: 3.3, value: 0, isReached: true, because: { kind: 'extremum', switches: [] } }],
    ['min(120, 18 * x)', 150, { at: 20 / 3, value: 120, isReached: true, because: { kind: 'extremum', switches: [] } }],
    ['max(90, 18 * x)', 50, { at: 0, value: 90, isReached: true, because: { kind: 'extremum', switches: [] } }],
    [
      // Both samples beside the turn are equally far.
      'min(8.1 - 2 * x, x + 1.6)',
      8,
      { at: 13 / 6, value: 3.7666666666666666, isReached: true, because: { kind: 'extremum', switches: [] } },
    ],
    ['7', 5, { at: 0, value: 7, isReached: true, because: { kind: 'constant' } }],
    [
      'x <= 6 ? 10 * x : 100',
      81,
      { at: 6.25, value: 100, isReached: true, because: { kind: 'jump', at: 6, before: 60, after: 100, switches: [] } },
    ],
    [
      'x <= 6 ? 10 * x : 100',
      79,
      { at: 6, value: 60, isReached: true, because: { kind: 'jump', at: 6, before: 60, after: 100, switches: [] } },
    ],
    [
      'x <= 6.1 ? 10 * x : 5',
      200,
      { at: 6.1, value: 61, isReached: true, because: { kind: 'jump', at: 6.1, before: 61, after: 5, switches: [] } },
    ],
    ['sqrt(4.3 - x) + 1', 0, { at: 4.3, value: 1, isReached: true, because: { kind: 'failure' } }],
  ])('what comes nearest where %s is never %s', (formula, target, nearest) => {
    const answer = ask(formula, target);
    expect(answer.solutions).toEqual([]);
    expect(answer.nearest).toEqual(nearest);
  });

  test('says so where the nearest value is come near to but not reached', () => {
    const { nearest } = ask('x < 6.1 ? 10 * x : 5', 200);
    expect(nearest).toMatchObject({ at: 6.1, isReached: false, because: { kind: 'jump', at: 6.1, after: 5 } });
    expect(nearest?.value).toBeCloseTo(61, 7);
  });

  test.each([
    ['5.9 + 2.7 - x', 8.6],
    ['x - 5.9 - 2.7', 8.6],
    ['3 * (x - 9.1)', 9.1],
    ['0.01 * (x - 7.3)', 7.3],
  ])('finds where %s is nothing, though rounding leaves a trace of it', (formula, place) => {
    const { solutions } = workBackwards(curveColumn(formula), quarters, { measure: 'y', target: 0 });
    expect(solutions).toHaveLength(1);
    expect(Math.abs((solutions[0]?.from ?? NaN) - place)).toBeLessThanOrEqual(1e-9 * place);
  });

  test('names the switches that turn at a jump or an extremum', () => {
    const capAbove = (hours: number) => {
      const when = `x > ${String(hours)} and value > 100`;
      return curveSheet('18 * x', { rules: [ruleOf({ id: 'cap', on: 'y', when, value: '100' })] });
    };
    const nearest = (hours: number) => {
      const sheet = capAbove(hours);
      const question = { measure: 'y', target: 150, switches: ruleSwitches(sheet) };
      return workBackwards(createColumn(sheet), quarters, question).nearest;
    };
    expect(nearest(6)).toMatchObject({ at: 6, value: 108, because: { kind: 'jump', switches: ['cap'], after: 100 } });
    expect(nearest(1)).toMatchObject({ at: 50 / 9, value: 100, because: { kind: 'extremum', switches: ['cap'] } });
  });

  test('finds a stretch that a switch shows between two samples', () => {
    const rule = ruleOf({ id: 'dip', on: 'y', when: 'x > 3.001 and x <= 3.05', value: '7' });
    const sheet = curveSheet('x + 10', { rules: [rule] });
    const question = { measure: 'y', target: 7, switches: ruleSwitches(sheet) };
    expect(intervals(workBackwards(createColumn(sheet), quarters, question))).toEqual(['(3.001, 3.05]']);
  });

  test('says whether the measure fails anywhere in the range', () => {
    expect(ask('1 / (x - 5)', 2).failsSomewhere).toBe(true);
    expect(ask('1 / (x + 5)', 0.1).failsSomewhere).toBe(false);
    expect(ask('sqrt(-1 - x)', 1)).toEqual({ solutions: [], nearest: null, failsSomewhere: true });
  });

  test('takes any number that can be read off a column', () => {
    const measure = (column: { value: (id: string) => number }) => column.value('y') - column.value('x');
    expect(intervals(workBackwards(curveColumn('3 * x'), quarters, { measure, target: 5 }))).toEqual(['2.5']);
  });

  test('leaves the column as it is, and throws for what the sheet does not have and for no target', () => {
    const column = curveColumn('3 * x');
    const registers = column.registers.slice();
    workBackwards(column, quarters, { measure: 'y', target: 5 });
    expect(column.registers).toEqual(registers);
    expect(() => workBackwards(column, quarters, { measure: 'z', target: 5 })).toThrow('no quantity z');
    expect(() => workBackwards(column, { ...quarters, id: 'z' }, { measure: 'y', target: 5 })).toThrow('no quantity z');
    expect(() => workBackwards(column, quarters, { measure: 'y', target: NaN })).toThrow('no target');
  });
});
