// d3-shape is the oracle: it draws the same lines and areas, and stacks the same sums.
import { area, curveStep, line, stack } from 'd3-shape';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layersOf } from '../../../src/element/chart/chart-layers.js';
import { pathOf, type Placing } from '../../../src/element/chart/chart-paths.js';
import { runs } from '../../reference/runs.js';

const seriesOf = (...rows: number[][]) =>
  rows.map((values, index) => ({ id: String(index), name: '', category: null, values, steps: false }));
const placing = (count: number, isStepped = false): Placing => ({
  positions: Array.from({ length: count }, (_, index) => (count === 1 ? 0.5 : index / (count - 1))),
  isStepped,
  place: (value) => value / 200,
});
const value = fc.oneof({ weight: 4, arbitrary: fc.double({ min: 0, max: 200, noNaN: true }) }, fc.constant(NaN));
const values = fc.array(value, { minLength: 1, maxLength: 12 });
const isDefined = (each: number): boolean => !Number.isNaN(each);

describe('pathOf(layer, placing)', () => {
  test('draws a line from value to value, and leaves gaps', () => {
    const path = pathOf({ upper: [0, 100, NaN, 50, NaN, 20, 30], lower: null }, placing(7));
    expect(path).toBe('M0,10000L1667,5000M5000,7500ZM8333,9000L10000,8500');
  });

  test('is empty where there are no values', () => {
    expect(pathOf({ upper: [NaN, NaN], lower: null }, placing(2))).toBe('');
    expect(pathOf({ upper: [], lower: null }, placing(0))).toBe('');
  });

  test('draws steps that change halfway between values', () => {
    expect(pathOf({ upper: [0, 100, 50], lower: null }, placing(3, true))).toBe(
      'M0,10000L2500,10000L2500,5000L7500,5000L7500,7500L10000,7500',
    );
  });

  test('draws the steps of choices as bands from edge to edge', () => {
    const bands = { ...placing(2, true), positions: [0.25, 0.75] };
    expect(pathOf({ upper: [100, 50], lower: null }, bands)).toBe('M0,5000L5000,5000L5000,7500L10000,7500');
  });

  test('draws lines as d3-shape does', () => {
    fc.assert(
      fc.property(values, (upper) => {
        const { positions, place } = placing(upper.length);
        const oracle = line<number>(
          (_, index) => (positions[index] ?? 0) * 10_000,
          (each) => 10_000 - place(each) * 10_000,
        );
        expectSamePath(pathOf({ upper, lower: null }, placing(upper.length)), oracle.defined(isDefined)(upper));
      }),
      runs(300, 20_000),
    );
  });

  test('draws areas as d3-shape does', () => {
    fc.assert(
      fc.property(values, (upper) => {
        const { positions, place } = placing(upper.length);
        const lower = upper.map((each) => each / 3);
        const oracle = area<number>(
          (_, index) => (positions[index] ?? 0) * 10_000,
          (each) => 10_000 - place(each / 3) * 10_000,
          (each) => 10_000 - place(each) * 10_000,
        );
        expectSamePath(pathOf({ upper, lower }, placing(upper.length)), oracle.defined(isDefined)(upper));
      }),
      runs(300, 20_000),
    );
  });

  test('puts the corners of steps where d3-shape does', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { minLength: 2, maxLength: 12 }), (upper) => {
        const { positions, place } = placing(upper.length);
        const oracle = line<number>(
          (_, index) => (positions[index] ?? 0) * 10_000,
          (each) => 10_000 - place(each) * 10_000,
        );
        expectSamePath(pathOf({ upper, lower: null }, placing(upper.length, true)), oracle.curve(curveStep)(upper));
      }),
      runs(300, 20_000),
    );
  });
});

/** Equal but for rounding to whole units. */
function expectSamePath(path: string, oracle: string | null): void {
  const [letters, numbers] = [path.replace(/[^MLZ]/g, ''), path.match(/[\d.]+/g) ?? []];
  expect(letters).toBe((oracle ?? '').replace(/[^MLZ]/g, ''));
  const expected = (oracle ?? '').match(/[\d.]+(e-\d+)?/g) ?? [];
  expect(numbers).toHaveLength(expected.length);
  numbers.forEach((each, index) => {
    expect(Math.abs(Number(each) - Number(expected[index]))).toBeLessThanOrEqual(0.501);
  });
}

describe('layersOf(kind, series)', () => {
  test('has lines as they are', () => {
    expect(layersOf('lines', seriesOf([1, NaN], [3, 4]))).toEqual([
      { upper: [1, NaN], lower: null },
      { upper: [3, 4], lower: null },
    ]);
  });

  test('stacks areas, the first at the bottom', () => {
    expect(layersOf('areas', seriesOf([1, 2], [10, 20], [0, 100]))).toEqual([
      { lower: [0, 0], upper: [1, 2] },
      { lower: [1, 2], upper: [11, 22] },
      { lower: [11, 22], upper: [11, 122] },
    ]);
  });

  test('leaves a gap in all areas where one has no value', () => {
    expect(layersOf('areas', seriesOf([1, 2, 3], [4, NaN, 6]))).toEqual([
      { lower: [0, NaN, 0], upper: [1, NaN, 3] },
      { lower: [1, NaN, 3], upper: [5, NaN, 9] },
    ]);
  });

  test('stacks as d3-shape does', () => {
    const rows = fc.array(fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 5, maxLength: 5 }), { maxLength: 6 });
    fc.assert(
      fc.property(rows, (table) => {
        const keys = table.map((_, index) => String(index));
        const oracle = stack<unknown, number, string>()
          .keys(keys)
          .value((column, key) => table[Number(key)]?.[column] ?? NaN)([0, 1, 2, 3, 4]);
        expect(layersOf('areas', seriesOf(...table))).toEqual(
          oracle.map((layer) => ({ lower: layer.map(([low]) => low), upper: layer.map(([, high]) => high) })),
        );
      }),
      runs(300, 20_000),
    );
  });
});
