import fc from 'fast-check';
import { ceil, equal, floor, larger, round, smaller } from 'mathjs/number';
import { describe, expect, test } from 'vitest';
import { ceilNear, floorNear, handOn, isNear, roundHalfAway, withoutNoise } from '../../../src/sheet/numbers.js';
import { runs } from '../../reference/runs.js';
import { valueOf } from './sheet-of.js';

// Oracle: mathjs 15.2, number-only, with its own settings (relative tolerance 1e-12, absolute 1e-15).

/** Whole numbers, halves and what lies a rounding error beside them; sums of tenths; any number. */
const numbers = fc.oneof(
  fc.integer({ min: -50, max: 50 }),
  fc.integer({ min: -99, max: 99 }).map((halves) => halves / 2),
  fc
    .tuple(fc.integer({ min: -99, max: 99 }), fc.constantFrom(1e-9, 1e-12, 9e-13, 1e-13, 1e-15, 1e-16, -1e-13, -1e-11))
    .map(([halves, off]) => (halves / 2) * (1 + off)),
  fc.tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 99 })).map(([a, b]) => (a / 100) * b),
  fc.constantFrom(0, 1e-15, -1e-15, 2e-15, 1e-16, 2e12 + 0.75, -2e12 - 0.25, 2 ** 52 + 0.5, 1e21, -1e300, 5e-324),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
);
const pairs = fc.oneof(
  fc.tuple(numbers, numbers),
  numbers.map((number) => [number, number + 1e-12] as const),
);

describe('as mathjs has it', () => {
  test.each([
    ['roundHalfAway', roundHalfAway, round],
    ['floorNear', floorNear, floor],
    ['ceilNear', ceilNear, ceil],
  ] as const)('%s(number)', (_, ours, theirs) => {
    fc.assert(
      fc.property(numbers, (number) => {
        expect(ours(number) + 0).toBe(theirs(number) + 0);
      }),
      runs(5000, 500_000),
    );
  });

  test('isNear(left, right)', () => {
    fc.assert(
      fc.property(pairs, ([left, right]) => {
        expect(isNear(left, right)).toBe(equal(left, right));
      }),
      runs(5000, 500_000),
    );
  });

  test('a < b and a > b', () => {
    fc.assert(
      fc.property(pairs, ([a, b]) => {
        expect(valueOf('a < b', { a, b })).toBe(smaller(a, b) ? 1 : 0);
        expect(valueOf('a > b', { a, b })).toBe(larger(a, b) ? 1 : 0);
      }),
      runs(2000, 100_000),
    );
  });
});

describe('by hand', () => {
  test.each([
    [2.5, 3],
    [-2.5, -3],
    [0.5, 1],
    [-0.5, -1],
    [1.5, 2],
    [0.49999999999999994, 0],
    [2 ** 53, 2 ** 53],
  ])('roundHalfAway(%d) is %d: halves go away from zero', (value, rounded) => {
    expect(roundHalfAway(value)).toBe(rounded);
  });

  test.each([
    [0.29 * 100, 29, 29],
    [0.07 * 100, 7, 7],
    [2.5, 2, 3],
    [-2.5, -3, -2],
    [7 - 1e-9, 6, 7],
    [7 + 1e-9, 7, 8],
    // Near both neighbours, at this size: then the one that keeps to the name.
    [2e12 + 0.75, 2e12, 2e12 + 1],
  ])('floorNear(%d) is %d, ceilNear %d', (value, down, up) => {
    expect(floorNear(value)).toBe(down);
    expect(ceilNear(value)).toBe(up);
  });

  test.each([
    [0.1 + 0.2, 0.3, true],
    [1, 1 + 9e-13, true],
    [1, 1 + 1.1e-12, false],
    [0, 1e-15, true],
    [0, 2e-15, false],
    [1e300, -1e300, false],
    [-0, 0, true],
  ])('isNear(%d, %d) is %s', (left, right, isEqual) => {
    expect(isNear(left, right)).toBe(isEqual);
    expect(isNear(right, left)).toBe(isEqual);
  });
});

describe('withoutNoise(value)', () => {
  test.each([
    [73.79999999999998, 73.8],
    [0.1 + 0.2, 0.3],
    [72.00000000000001, 72],
    [-13.499999999999996, -13.5],
    [1 / 3, 1 / 3],
    [1e-7, 1e-7],
    [1.23e-13, 1.23e-13],
    [0, 0],
    [123456789012.5, 123456789012.5],
    [1e300, 1e300],
    [-Number.MAX_VALUE, -Number.MAX_VALUE],
  ])('%d is %d', (value, shown) => {
    expect(withoutNoise(value)).toBe(shown);
  });

  test('is never further off than a rounding error', () => {
    fc.assert(
      fc.property(numbers, (number) => {
        expect(isNear(withoutNoise(number), number)).toBe(true);
      }),
      runs(2000, 100_000),
    );
  });
});

describe('handOn(held, given, taken)', () => {
  test.each([
    [100, 120, 60, 160],
    [10, 20, 60, -30],
    [0, 0, 0, 0],
    // Plain sums would leave -5.6e-17, 5.6e-17 and 3.6e-15.
    [0.3, 0, 0.1 + 0.2, 0],
    [0.1 + 0.2, 0, 0.3, 0],
    [12.6, 4.2, 16.799999999999997, 0],
    [1e-9, 0, 0, 1e-9],
    [1e308, 1e308, 1e308, 1e308],
  ])('handOn(%d, %d, %d) is %d', (held, given, taken, left) => {
    expect(handOn(held, given, taken)).toBe(left);
  });
});
