import { describe, expect, test } from 'vitest';
import { ownWeeks } from '../../../../src/plan/checks/own-weeks.js';

describe('own weeks', () => {
  test('that are not told are unknown', () => {
    expect(ownWeeks([])).toEqual({ load: null, monotony: null, strain: null, dayWeeks: 0 });
  });

  test('that are one number each have a load, and no monotony', () => {
    expect(ownWeeks([[700], [901]])).toEqual({ load: 801, monotony: null, strain: null, dayWeeks: 0 });
    expect(ownWeeks([[0]])).toEqual({ load: 0, monotony: null, strain: null, dayWeeks: 0 });
  });

  test('have their mean load, and the highest monotony and strain of those told by days', () => {
    // A single day of training: 1/√6, a strain of 700/√6; six days of 100: √6, and 600√6.
    const [single, six] = [
      [700, 0, 0, 0, 0, 0, 0],
      [100, 100, 100, 0, 100, 100, 100],
    ];
    const own = ownWeeks([single, [1700], six]);
    expect(own.load).toBe(1000);
    expect(own.monotony).toBeCloseTo(Math.sqrt(6), 9);
    expect(own.strain).toBeCloseTo(600 * Math.sqrt(6), 6);
    expect(ownWeeks([six, single])).toEqual({ ...own, load: 650 });
  });

  test('can have their highest strain in another week than their highest monotony', () => {
    const { monotony, strain } = ownWeeks([
      [7000, 0, 0, 0, 0, 0, 0],
      [1, 1, 1, 0, 1, 1, 1],
    ]);
    expect(monotony).toBeCloseTo(Math.sqrt(6), 9);
    expect(strain).toBeCloseTo(7000 / Math.sqrt(6), 6);
  });

  test('of equal days have no monotony, whole numbers or not', () => {
    for (const load of [0, 100, 191.1, 333.3, 0.1])
      expect(ownWeeks([Array.from({ length: 7 }, () => load)])).toMatchObject({
        monotony: null,
        strain: null,
        dayWeeks: 1,
      });
  });
});
