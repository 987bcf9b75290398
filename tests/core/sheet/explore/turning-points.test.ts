import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellSwitch, ruleSwitches } from '../../../../src/sheet/explore/switches.js';
import { turningPoints } from '../../../../src/sheet/explore/turning-points.js';
import { createColumn } from '../../../../src/sheet/sheet.js';
import { runs } from '../../../reference/runs.js';
import { ruleOf } from '../sheet-of.js';
import { curveSheet, fiveChoices, quarters } from './ranges.js';

/** The turning points of conditions over x. */
function pointsOf(conditions: readonly string[], range = quarters) {
  const names = conditions.map((_, index) => `c${String(index)}`);
  const formulas = Object.fromEntries(names.map((name, index) => [name, conditions[index] ?? '']));
  const sheet = curveSheet('x', { formulas });
  const switches = names.map((name) => cellSwitch(sheet, name));
  return turningPoints(createColumn(sheet), range, switches).map(
    ({ id, at, starts, includes }) =>
      `${id} ${starts ? 'starts' : 'stops'} ${includes ? 'from' : 'above'} ${String(at)}`,
  );
}

describe('turningPoints(column, input, switches)', () => {
  test.each([
    ['x > 6', ['c0 starts above 6']],
    ['x >= 6', ['c0 starts from 6']],
    ['x < 6', ['c0 stops from 6']],
    ['x <= 6', ['c0 stops above 6']],
    ['x > 7.5', ['c0 starts above 7.5']],
    ['18 * x > 120', [`c0 starts above ${String(20 / 3)}`]],
    ['x == 6', ['c0 starts from 6', 'c0 stops above 6']],
    ['x != 6', ['c0 stops from 6', 'c0 starts above 6']],
    ['x > 3.04 and x < 3.1', ['c0 starts above 3.04', 'c0 stops from 3.1']],
    ['floor(x) % 5', ['c0 starts from 1', 'c0 stops from 5', 'c0 starts from 6', 'c0 stops from 10']],
    // No plain number: the first at which it is on.
    ['x * x > 2', [`c0 starts from ${String(Math.SQRT2)}`]],
    ['1 / (x > 5 ? x : 0)', ['c0 starts above 5']],
    ['x > 20', []],
    ['x >= 0', []],
    ['x > 0', ['c0 starts above 0']],
    ['x >= 10', ['c0 starts from 10']],
  ])('says where "%s" turns', (condition, expected) => {
    const rounded = (text: string) => text.replace(/\d\.\d{9}\d*/, (number) => Number(number).toFixed(9));
    expect(pointsOf([condition]).map(rounded)).toEqual(expected.map(rounded));
  });

  test('goes up through the range, at one place in the order of the switches', () => {
    expect(pointsOf(['x > 6', 'x < 6', 'x > 2'])).toEqual([
      'c2 starts above 2',
      'c1 stops from 6',
      'c0 starts above 6',
    ]);
    expect(pointsOf(['x > 6', 'x > 6'])).toEqual(['c0 starts above 6', 'c1 starts above 6']);
  });

  test('is exact to the step for a choice', () => {
    expect(pointsOf(['x > 1', 'x == 4'], fiveChoices)).toEqual(['c0 starts from 2', 'c1 starts from 4']);
  });

  test('sees what a stretch shorter than a sample hides only where it has a step in it', () => {
    expect(pointsOf(['x > 3.24 and x < 3.26'])).toEqual(['c0 starts above 3.24', 'c0 stops from 3.26']);
    expect(pointsOf(['x > 3.01 and x < 3.02'])).toEqual([]);
  });

  test('leaves the column as it is, and throws for a switch on a name that the sheet does not have', () => {
    const sheet = curveSheet('x > 3');
    const column = createColumn(sheet);
    turningPoints(column, quarters, [cellSwitch(sheet, 'y')]);
    expect([column.value('x'), column.value('y')]).toEqual([1, 0]);
    expect(() => cellSwitch(sheet, 'nothing')).toThrow('no quantity nothing');
  });

  test('finds the ends of random stretches of hundredths', () => {
    const hundredths = fc.uniqueArray(fc.integer({ min: 1, max: 999 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(hundredths, fc.boolean(), (unsorted, isClosed) => {
        const ends = [...unsorted].sort((left, right) => left - right);
        // Two ends within a sample of each other may undo one another unseen.
        fc.pre(ends.every((end, index) => index === 0 || end - ends[index - 1]! > 4));
        const sum = ends.map((end) => `(x ${isClosed ? '>=' : '>'} ${String(end / 100)})`).join(' + ');
        const states = (index: number) => (index % 2 === 0 ? 'starts' : 'stops');
        expect(pointsOf([`(${sum}) % 2`])).toEqual(
          ends.map((end, index) => `c0 ${states(index)} ${isClosed ? 'from' : 'above'} ${String(end / 100)}`),
        );
      }),
      runs(50, 3000),
    );
  });
});

describe('ruleSwitches(sheet)', () => {
  const rules = [
    ruleOf({ id: 'cap', on: 'y', when: 'value > 60', value: '60', to: 'z' }),
    ruleOf({ id: 'off', on: 'y', when: 'x > 3', value: '1', enabled: false }),
    ruleOf({ id: 'idle', on: 'z', when: 'x > 4', value: 'value' }),
    ruleOf({ id: 'faulty', on: 'z', when: 'x > 8', value: '1 / 0' }),
  ];
  const sheet = curveSheet('10 * x', { formulas: { z: '5' }, rules });

  test('has one for each rule, on where the rule changes its quantity', () => {
    const switches = ruleSwitches(sheet);
    expect(switches.map(({ id }) => id)).toEqual(['cap', 'off', 'idle', 'faulty']);
    const on = (x: number) => switches.filter(({ isOn }) => isOn(createColumn(sheet, { x }))).map(({ id }) => id);
    expect([on(5), on(6), on(6.25), on(9)]).toEqual([[], [], ['cap'], ['cap']]);
    expect(turningPoints(createColumn(sheet), quarters, switches)).toEqual([
      { id: 'cap', at: 6, starts: true, includes: false },
    ]);
  });
});
