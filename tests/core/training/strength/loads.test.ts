import { describe, expect, test } from 'vitest';
import { brzycki, epley } from '../../../../src/training/strength/one-repetition-maximum.js';
import { shareOfMaximum } from '../../../../src/training/strength/share-of-maximum.js';
import { nextWeights, roundedDown } from '../../../../src/training/strength/weights.js';

describe('the heaviest single', () => {
  test('is what was lifted once', () => {
    expect([epley(62.5, 1), brzycki(62.5, 1)]).toEqual([62.5, 62.5]);
  });

  test('is a third more than what was lifted ten times', () => {
    expect(epley(60, 10)).toBeCloseTo(80, 12);
    expect(brzycki(60, 10)).toBeCloseTo(80, 12);
  });
});

describe('the share of the heaviest single', () => {
  const table = [
    { repetitions: 2, share: 0.95 },
    { repetitions: 3, share: 0.93 },
    { repetitions: 10, share: 0.75 },
    { repetitions: 12, share: 0.7 },
    { repetitions: 15, share: 0.65 },
  ];

  test.each([
    [2, 0.95],
    [3, 0.93],
    [10, 0.75],
    [11, 0.725],
    [13, 0.65 + (2 * 0.05) / 3],
    [14, 0.65 + 0.05 / 3],
    [15, 0.65],
  ])('with %d repetitions is %d', (repetitions, share) => {
    expect(shareOfMaximum(repetitions, table)).toBeCloseTo(share, 12);
  });

  test.each([1, 16, 100])('is not known for %d repetitions, outside the table', (repetitions) => {
    expect(shareOfMaximum(repetitions, table)).toBeNull();
  });

  test('is not known without a table', () => {
    expect(shareOfMaximum(5, [])).toBeNull();
  });
});

describe('weights', () => {
  test.each([
    [82.5, 2.5, 82.5],
    [84.99, 2.5, 82.5],
    [85, 2.5, 85],
    [2.49, 2.5, 0],
    // 0.1 + 0.2 is a little more than 0.3, and 0.7 / 0.1 a little less than 7.
    [0.1 + 0.2, 0.1, 0.3],
    [0.7, 0.1, 0.7],
    [61, 1, 61],
  ])('%d kg in steps of %d is %d', (kilograms, step, rounded) => {
    expect(roundedDown(kilograms, step)).toBe(rounded);
  });

  test.each([
    // 2 % of 80 is 1.6: a step of 2.5 is more, 10 % is 88.
    [80, 2.5, { least: 82.5, most: 87.5 }],
    // 2 % of 125 is just a step, and of 127.5 just above: two steps.
    [125, 2.5, { least: 127.5, most: 137.5 }],
    [127.5, 2.5, { least: 132.5, most: 140 }],
    // 10 % of 20 is 2: a step is more than that, and there is none smaller.
    [20, 2.5, { least: 22.5, most: 22.5 }],
    // 10 % of 25 is just a step.
    [25, 2.5, { least: 27.5, most: 27.5 }],
    [0, 2.5, { least: 2.5, most: 2.5 }],
    [100, 1, { least: 102, most: 110 }],
  ])('after %d kg in steps of %d come %o', (kilograms, step, next) => {
    expect(nextWeights(kilograms, { least: 0.02, most: 0.1 }, step)).toEqual(next);
  });
});
