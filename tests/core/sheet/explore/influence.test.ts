import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { influence } from '../../../../src/sheet/explore/influence.js';
import { createColumn } from '../../../../src/sheet/sheet.js';
import { runs } from '../../../reference/runs.js';
import { formulaTexts } from '../formula-texts.js';
import { sheetOf } from '../sheet-of.js';
import { builtInColumn, builtInSheet } from './built-in.js';

const range = (id: string, parts = {}) => ({ id, least: 0, most: 10, step: 0.5, isChoice: false, ...parts });

describe('influence(column, inputs, measure)', () => {
  test('ranks the inputs by what one step does, down or up', () => {
    const sheet = sheetOf({ inputs: { a: 5, b: 2, c: 3, d: 1 }, formulas: { y: 'a + 10 * b - 4 * c' } });
    const inputs = ['a', 'b', 'c', 'd'].map((id) => range(id));
    expect(influence(createColumn(sheet), inputs, 'y')).toEqual([
      { input: 'b', down: -5, up: 5 },
      { input: 'c', down: 2, up: -2 },
      { input: 'a', down: -0.5, up: 0.5 },
      { input: 'd', down: 0, up: 0 },
    ]);
  });

  test('has nothing beyond the ends of the range, where the measure fails, or where it fails now', () => {
    const sheet = sheetOf({ inputs: { a: 10, b: 0.5, c: 0 }, formulas: { y: 'a + 1 / b', z: 'a + 1 / c' } });
    const inputs = ['a', 'b'].map((id) => range(id));
    expect(influence(createColumn(sheet), inputs, 'y')).toEqual([
      { input: 'b', down: null, up: -1 },
      { input: 'a', down: -0.5, up: null },
    ]);
    expect(influence(createColumn(sheet), inputs, 'z')).toEqual([
      { input: 'a', down: null, up: null },
      { input: 'b', down: null, up: null },
    ]);
  });

  test('moves an input between two steps to the next step', () => {
    const sheet = sheetOf({ inputs: { a: 4.1 }, formulas: { y: 'a' } });
    expect(influence(createColumn(sheet), [range('a')], 'y')).toEqual([{ input: 'a', down: -0.1, up: 0.4 }]);
  });

  test('keeps the order of equally influential inputs, whatever the rounding errors', () => {
    const sheet = sheetOf({ inputs: { a: 5, b: 5 }, formulas: { y: '0.3 * a + 0.1 * b + 0.2 * b' } });
    const order = (ids: readonly string[]) =>
      influence(
        createColumn(sheet),
        ids.map((id) => range(id)),
        'y',
      ).map(({ input }) => input);
    expect(order(['a', 'b'])).toEqual(['a', 'b']);
    expect(order(['b', 'a'])).toEqual(['b', 'a']);
  });

  test('takes any number that can be read off a column, and throws for a name that there is not', () => {
    const column = createColumn(sheetOf({ inputs: { a: 4 }, formulas: { y: 'a' } }));
    expect(influence(column, [range('a')], (each) => each.value('y') ** 2)).toEqual([
      { input: 'a', down: -3.75, up: 4.25 },
    ]);
    expect(() => influence(column, [range('a')], 'nothing')).toThrow('no quantity nothing');
    expect(() => influence(column, [range('nothing')], 'y')).toThrow('no quantity nothing');
    expect(column.value('a')).toBe(4);
  });

  test('on the built-in method: hours and level move strength, the event does not (common practice, no source)', () => {
    const found = influence(builtInColumn(), builtInSheet.model.inputs, 'strength_minutes');
    // A quarter of an hour is 4.5 minutes of strength; a new runner has 40 % of 240 minutes instead of 30 %.
    expect(found[0]).toEqual({ input: 'athlete_level', down: 24, up: 0 });
    expect(found[1]).toEqual({ input: 'weekly_hours', down: -4.5, up: 4.5 });
    expect(found.slice(2).map(({ input }) => input)).toEqual(['season_phase', 'target_event', 'strength_cap']);
  });

  test('equals the difference of two columns', () => {
    const texts = formulaTexts(['a', 'b'], { depth: 2 });
    const place = fc.integer({ min: 0, max: 20 }).map((halves) => halves / 2);
    fc.assert(
      fc.property(texts, place, place, (text, a, b) => {
        const sheet = sheetOf({ inputs: { a, b }, formulas: { y: text } });
        const at = (id: string, value: number) => createColumn(sheet, { [id]: value }).value('y');
        const found = influence(createColumn(sheet), [range('a'), range('b')], 'y');
        for (const { input, down, up } of found) {
          const now = input === 'a' ? a : b;
          const changes = [now - 0.5, now + 0.5].map((next) =>
            next < 0 || next > 10 ? NaN : at(input, next) - at(input, now),
          );
          [down, up].forEach((change, index) => {
            const expected = changes[index] ?? NaN;
            if (Number.isFinite(expected)) {
              const size = Math.max(Math.abs(at(input, now)), Math.abs(expected));
              expect(Math.abs((change ?? NaN) - expected)).toBeLessThanOrEqual(1e-15 + 1e-11 * size);
            } else expect(change).toBeNull();
          });
        }
        const sizes = found.map(({ down, up }) => Math.max(Math.abs(down ?? 0), Math.abs(up ?? 0)));
        expect(sizes).toEqual([...sizes].sort((left, right) => right - left));
      }),
      runs(300, 50_000),
    );
  });
});
