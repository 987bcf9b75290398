import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inputAxis, nearestIndex, valueAxis } from '../../../src/element/chart/chart-axes.js';
import { runs } from '../../reference/runs.js';

describe('inputAxis(input)', () => {
  test('puts numbers to scale, with ticks at round ones', () => {
    const { positions, ticks, place } = inputAxis({ values: [0.5, 5, 10.25, 20], isChoice: false });
    expect(positions).toEqual([0, 4.5 / 19.5, 0.5, 1]);
    expect(ticks).toEqual([5, 10, 15, 20].map((value) => ({ value, at: (value - 0.5) / 19.5 })));
    expect(place(6)).toBeCloseTo(5.5 / 19.5, 12);
  });

  test('gives every choice a band of one width, with its tick in the middle', () => {
    const { positions, ticks, place } = inputAxis({ values: [3, 7, 8, 20], isChoice: true });
    expect(positions).toEqual([0.125, 0.375, 0.625, 0.875]);
    expect(ticks.map(({ value, at }) => [value, at])).toEqual([
      [3, 0.125],
      [7, 0.375],
      [8, 0.625],
      [20, 0.875],
    ]);
    expect(place(8)).toBe(0.625);
  });

  test('marks only the values that are asked for, where a choice has its place or a number is to scale', () => {
    const weeks = [1, 2, 3, 4, 5, 6, 7, 8];
    const { positions, ticks } = inputAxis({ values: weeks, isChoice: true, marked: [1, 4, 7] });
    expect(positions).toEqual([0.0625, 0.1875, 0.3125, 0.4375, 0.5625, 0.6875, 0.8125, 0.9375]);
    expect(ticks).toEqual([
      { value: 1, at: 0.0625 },
      { value: 4, at: 0.4375 },
      { value: 7, at: 0.8125 },
    ]);
    expect(inputAxis({ values: [0, 20], isChoice: false, marked: [5] }).ticks).toEqual([{ value: 5, at: 0.25 }]);
    expect(inputAxis({ values: weeks, isChoice: true, marked: [] }).ticks).toEqual([]);
  });

  test('puts a value alone into the middle, and of none makes nothing', () => {
    expect(inputAxis({ values: [4], isChoice: false })).toMatchObject({
      positions: [0.5],
      ticks: [{ value: 4, at: 0.5 }],
    });
    expect(inputAxis({ values: [], isChoice: true })).toMatchObject({ positions: [], ticks: [] });
  });
});

describe('valueAxis(rows, isGrounded)', () => {
  const ends = (rows: readonly (readonly number[])[], isGrounded = false): (number | undefined)[] => {
    const { ticks } = valueAxis(rows, isGrounded);
    return [ticks[0]?.value, ticks.at(-1)?.value];
  };

  test('goes from round number to round number', () => {
    expect(valueAxis([[12, 187], [3]], false).ticks).toEqual([
      { value: 0, at: 0 },
      { value: 50, at: 0.25 },
      { value: 100, at: 0.5 },
      { value: 150, at: 0.75 },
      { value: 200, at: 1 },
    ]);
  });

  test.each([
    ['values near zero', [[5, 40]], [0, 40]],
    ['values far from zero', [[120, 180]], [120, 180]],
    ['values that hardly move', [[72, 72.1]], [0, 80]],
    ['values that do not move', [[72, 72]], [0, 80]],
    ['only zero', [[0, 0]], [0, 1]],
    ['both signs', [[-15, 32]], [-20, 40]],
    ['negative values far from zero', [[-180, -120]], [-180, -120]],
    ['no values', [[NaN], []], [0, 1]],
    ['gaps and infinities', [[NaN, 4, Infinity, 8]], [0, 8]],
  ])('%s', (_, rows, expected) => {
    expect(ends(rows)).toEqual(expected);
  });

  test('begins at zero in any case where it is grounded', () => {
    expect(ends([[120, 180]], true)[0]).toBe(0);
  });

  test('has room for every value', () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 20 }), fc.boolean(), (values, isGrounded) => {
        const { place, ticks } = valueAxis([values], isGrounded);
        for (const each of values) {
          expect(place(each)).toBeGreaterThanOrEqual(-1e-9);
          expect(place(each)).toBeLessThanOrEqual(1 + 1e-9);
        }
        expect(ticks.length).toBeGreaterThanOrEqual(2);
        expect(ticks.length).toBeLessThanOrEqual(9);
        expect(place(NaN)).toBeNaN();
      }),
      runs(500, 50_000),
    );
  });
});

test('nearestIndex(positions, at) is that of the nearest value, also beyond the ends', () => {
  const positions = [0, 0.1, 0.5, 1];
  expect([-3, 0, 0.04, 0.06, 0.29, 0.31, 0.8, 2].map((at) => nearestIndex(positions, at))).toEqual([
    0, 0, 0, 1, 1, 2, 3, 3,
  ]);
});
