import { describe, expect, test } from 'vitest';
import { taperShares } from '../../../../src/training/season/taper-shares.js';

describe('taperShares(weeks, drop)', () => {
  // Each week keeps the same part of the week before: r, r², r³, with the mean 1 − drop.
  test.each<[weeks: number, drop: number, shares: readonly number[]]>([
    [0, 0.5, []],
    [1, 0.5, [0.5]],
    [1, 0, [1]],
    [1, 0.95, [0.05]],
    // r + r² = 1: the golden section.
    [2, 0.5, [0.6180339887, 0.3819660113]],
    // r + r² = 2 × 0.59 and 2 × 0.4, the edges of 41 to 60 %: r is (√(1 + 8 × 0.59) − 1) / 2 = (√5.72 − 1) / 2.
    [2, 0.41, [0.6958260743, 0.4841739257]],
    [2, 0.6, [0.5246950766, 0.2753049234]],
    [2, 0, [1, 1]],
    // 0.5 + 0.25 + 0.125 = 0.875, a mean of 0.291 666…
    [3, 1 - 0.875 / 3, [0.5, 0.25, 0.125]],
    [3, 0, [1, 1, 1]],
  ])('taperShares(%d, %d) is %j', (weeks, drop, shares) => {
    const found = taperShares(weeks, drop);
    expect(found).toHaveLength(weeks);
    found.forEach((share, index) => expect(share).toBeCloseTo(shares[index] ?? NaN, 9));
  });

  test('falls from week to week, and loses the drop in all', () => {
    for (const weeks of [1, 2, 3])
      for (let per = 1; per <= 95; per += 1) {
        const shares = taperShares(weeks, per / 100);
        expect([...shares].sort((one, other) => other - one)).toEqual(shares);
        expect(shares.reduce((sum, share) => sum + share, 0) / weeks).toBeCloseTo(1 - per / 100, 12);
      }
  });
});
