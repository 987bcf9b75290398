import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ByCategory } from '../../src/training/method/ids.js';
import { apportionByQuotients } from './apportionment-reference.js';
import { athletesBetweenSteps } from './athletes.js';
import { patience, runs } from './runs.js';
import { referenceWeek } from './week-reference.js';
import { worked } from './worked.js';

/* The reference is held to what must be true of it, without the planner. */

describe('the reference', () => {
  it(
    'keeps every part of the week',
    () => {
      fc.assert(
        fc.property(athletesBetweenSteps, (question) => {
          const { parts, rounded, totalRounded } = referenceWeek(question);
          const sum = (amounts: ByCategory<number>) =>
            Object.values(amounts).reduce((total, amount) => total + amount, 0);
          expect(sum(parts)).toBe(question.grains * 100);
          expect(sum(rounded)).toBe(totalRounded);
        }),
        runs(1000, 100_000),
      );
    },
    patience,
  );

  it(
    'leaves no seat where another would have the better claim',
    () => {
      const weightLists = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 2, maxLength: 6 });
      fc.assert(
        fc.property(weightLists, fc.integer({ min: 1, max: 100 }), (weights, seats) => {
          const award = apportionByQuotients(weights, seats, [...weights.keys()]);
          const claims = weights.map((weight, index) => weight / (2 * (award[index] ?? NaN) + 1));
          const held = weights.map((weight, index) => weight / Math.max(0, 2 * (award[index] ?? NaN) - 1));
          expect(Math.max(...claims)).toBeLessThanOrEqual(Math.min(...held));
        }),
        runs(1000, 100_000),
      );
    },
    patience,
  );

  it('refuses weights that it could not compare exactly', () => {
    expect(() => apportionByQuotients([0.5], 1, [0])).toThrow(RangeError);
    expect(() => apportionByQuotients([2 ** 52], 100, [0])).toThrow(RangeError);
  });
});

describe('worked(line)', () => {
  it.each([
    ['.30*195 = 58.5', 58.5],
    ['.15*195 + 19.5 = 48.75', 48.75],
    ['.10*400/3 - 40/3 = 0', 0],
    ['.25*400/3 = 100/3', 100 / 3],
    ['117', 117],
  ])('worked("%s") is %s', (line, value) => {
    expect(worked(line)).toBeCloseTo(value, 9);
  });

  it.each(['.30*195 = 58', '1 + 1 = 3', '2 x 3 = 6', '', '7 = '])('refuses "%s"', (line) => {
    expect(() => worked(line)).toThrow(Error);
  });
});
