import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainestNear } from '../../../../src/sheet/explore/plainest.js';
import { runs } from '../../../reference/runs.js';

describe('plainestNear(value, reach)', () => {
  test.each([
    [7.4999999999, 7.5],
    [6.000000000006, 6],
    [6.666666666667, 20 / 3],
    [-2.2222222222, -20 / 9],
    [1e-12, 0],
    [3.141593, 3.141593],
    [1234567.0000001, 1234567],
  ])('makes %s to %s', (value, expected) => {
    expect(plainestNear(value, Math.max(1e-9, 1e-10 * Math.abs(value)))).toBe(expected);
  });

  test('leaves a number alone that is neither a small fraction nor a short decimal', () => {
    expect(plainestNear(Math.PI, 1e-9)).toBe(Math.PI);
  });

  test('finds every fraction with a divisor up to 1000 again, and never goes further than it may', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20_000 }),
        fc.integer({ min: 1, max: 1000 }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (over, under, part) => {
          // Two fractions with divisors up to 1000 are at least 1e-6 apart.
          expect(plainestNear(over / under + part * 1e-7, 1.5e-7)).toBe(over / under);
          const anywhere = over * (1 + part);
          expect(Math.abs(plainestNear(anywhere, 1e-4) - anywhere)).toBeLessThanOrEqual(1.0001e-4);
        },
      ),
      runs(500, 100_000),
    );
  });
});
