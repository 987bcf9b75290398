import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endOf, insideOf, markRows, spread } from '../../../src/element/chart/chart-labels.js';
import { pictureOf } from '../../../src/element/chart/chart-picture.js';
import { runs } from '../../reference/runs.js';

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('spread(wished, gap)', () => {
  test('moves no label that touches none', () => {
    expect(spread([0.1, 0.9, 0.5], 0.2)).toEqual([0.1, 0.9, 0.5]);
  });

  test.each([
    [
      [0.5, 0.5],
      [0.5, 0.7],
    ],
    [
      [0, 0, 0],
      [0, 0.2, 0.4],
    ],
    [
      [1, 1, 1],
      [0.6, 0.8, 1],
    ],
    [
      [0.95, 0.9],
      [1, 0.8],
    ],
    [
      [0.5, NaN, 0.5],
      [0.5, NaN, 0.7],
    ],
    [[], []],
  ])('%j', (wished, expected) => {
    expect(spread(wished, 0.2).map((each) => Math.round(each * 1e9) / 1e9)).toEqual(expected);
  });

  test('never lets two touch, keeps their order, and stays within the picture', () => {
    fc.assert(
      fc.property(
        fc.array(share, { maxLength: 8 }),
        fc.double({ min: 0.01, max: 0.12, noNaN: true }),
        (wished, gap) => {
          const places = spread(wished, gap);
          const order = [...wished.keys()].sort((one, other) => (wished[one] ?? 0) - (wished[other] ?? 0));
          const sorted = order.map((index) => places[index] ?? NaN);
          sorted.forEach((each, index) => {
            expect(each).toBeGreaterThanOrEqual(-1e-9);
            expect(each).toBeLessThanOrEqual(1 + 1e-9);
            if (index > 0) expect(each - (sorted[index - 1] ?? 0)).toBeGreaterThanOrEqual(gap - 1e-9);
          });
        },
      ),
      runs(500, 50_000),
    );
  });

  test('shares the height evenly where there are too many', () => {
    expect(spread([0, 0, 0, 0, 0], 0.4)).toEqual([0, 0.25, 0.5, 0.75, 1]);
  });
});

describe('markRows(places, gap)', () => {
  test('stays in one row where there is room', () => {
    expect(markRows([0.5, 0.1, 0.9], 0.1)).toEqual([0, 0, 0]);
    expect(markRows([], 0.1)).toEqual([]);
  });

  test('lets no two in a row be nearer than the gap', () => {
    fc.assert(
      fc.property(fc.array(share, { maxLength: 12 }), (places) => {
        const rows = markRows(places, 0.1);
        places.forEach((place, index) => {
          places.slice(index + 1).forEach((other, offset) => {
            if (rows[index] === rows[index + 1 + offset]) expect(Math.abs(place - other)).toBeGreaterThanOrEqual(0.1);
          });
        });
      }),
      runs(500, 50_000),
    );
  });
});

const axes = { positions: [0, 0.25, 0.5, 0.75, 1], place: (value: number) => value / 100 };

describe('endOf(layer, axes)', () => {
  test('is the last value of a line, also where that comes early', () => {
    expect(endOf({ upper: [0, 1, 2, 3, 40], lower: null }, axes)).toEqual({
      x: 1,
      y: 0.4,
      isEarly: false,
      thickness: 0,
    });
    expect(endOf({ upper: [0, 1, 30, NaN, NaN], lower: null }, axes)).toMatchObject({ x: 0.5, y: 0.3, isEarly: true });
    expect(endOf({ upper: [NaN, NaN], lower: null }, axes)).toBe(null);
  });

  test('is the middle of an area', () => {
    const end = endOf({ upper: [0, 0, 0, 0, 60], lower: [0, 0, 0, 0, 20] }, axes);
    expect(end?.y).toBeCloseTo(0.4, 12);
    expect(end?.thickness).toBeCloseTo(0.4, 12);
  });
});

describe('insideOf(layer, axes, room)', () => {
  const room = { width: 0.2, height: 0.1, margin: 0.2 };
  const flat = (value: number): number[] => axes.positions.map(() => value);

  test('is the middle of an even area', () => {
    expect(insideOf({ upper: flat(60), lower: flat(20) }, axes, room)).toEqual({ x: 0.5, y: 0.4 });
  });

  test('is nowhere in a thin area, in a line, and where there is a gap', () => {
    expect(insideOf({ upper: flat(29), lower: flat(20) }, axes, room)).toBe(null);
    expect(insideOf({ upper: flat(60), lower: null }, axes, room)).toBe(null);
    expect(insideOf({ upper: [60, 60, NaN, 60, 60], lower: [20, 20, NaN, 20, 20] }, axes, room)).toBe(null);
  });

  test('is where the area is thick, with its whole width inside', () => {
    const place = insideOf({ upper: [10, 10, 30, 60, 60], lower: flat(0) }, axes, room);
    expect(place).toEqual({ x: 0.75, y: 0.15 });
  });
});

describe('pictureOf(options)', () => {
  const series = (id: string, values: number[]) => ({ id, name: id, category: null, values, steps: false });
  const x = { values: [0, 1, 2, 3, 4], label: '', format: String, isChoice: false };

  test('labels an area inside where it has room, else at its end, and never twice', () => {
    const picture = pictureOf({
      kind: 'areas',
      x,
      marks: [],
      series: [series('thick', [80, 80, 80, 80, 80]), series('thin', [5, 5, 5, 5, 5]), series('none', [0, 0, 0, 0, 0])],
    });
    expect(picture.series.map(({ of, inside, end }) => [of.id, inside !== null, end !== null])).toEqual([
      ['thick', true, false],
      ['thin', false, true],
      ['none', false, true],
    ]);
  });

  test('labels an area that ends in nothing where it is thick', () => {
    const { series: drawn } = pictureOf({ kind: 'areas', x, marks: [], series: [series('a', [50, 50, 50, 0, 0])] });
    expect(drawn[0]?.inside?.x).toBeLessThan(0.75);
    expect(drawn[0]?.end).toBe(null);
  });

  test('moves the labels of lines that end together apart', () => {
    const { series: drawn } = pictureOf({
      kind: 'lines',
      x,
      marks: [],
      series: ['a', 'b', 'c'].map((id) => series(id, [1, 2, 3, 4, 5])),
    });
    const heights = drawn.map(({ end }) => end?.labelY ?? NaN).sort((one, other) => one - other);
    expect((heights[1] ?? 0) - (heights[0] ?? 0)).toBeGreaterThanOrEqual(0.12 - 1e-9);
    expect((heights[2] ?? 0) - (heights[1] ?? 0)).toBeGreaterThanOrEqual(0.12 - 1e-9);
  });

  test('puts marks to scale', () => {
    const marks = [2, 2.1].map((at, index) => ({ at, number: index + 1, name: '' }));
    expect(pictureOf({ kind: 'lines', x, marks, series: [] }).marks.map(({ x: place, row }) => [place, row])).toEqual([
      [0.5, 0],
      [0.525, 1],
    ]);
  });
});
