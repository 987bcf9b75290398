import { describe, expect, test } from 'vitest';
import { longestBefore, runLimit } from '../../../../src/training/season/single-run.js';

// Over 110 % of the longest run of the 30 days before went with more injuries: Schuster Brandt Frandsen et al. 2025,
// doi:10.1136/bjsports-2024-109380, there in distance. Minutes and four weeks are an extrapolation.

describe('longestBefore(longest, known, { week, weeks })', () => {
  test.each<[longest: readonly number[], known: number | null, week: number, minutes: number]>([
    [[], null, 0, 0],
    [[], 70, 0, 70],
    [[60], null, 1, 60],
    [[60, 70, 50], null, 3, 70],
    [[60, 70, 50], null, 2, 70],
    [[60, 70, 50], null, 1, 60],
    // Four weeks back, and no further.
    [[90, 60, 60, 60], null, 4, 90],
    [[90, 60, 60, 60, 60], null, 5, 60],
    // What was before the season counts as long as one of the four weeks was.
    [[40], 70, 1, 70],
    [[40, 45, 50], 70, 3, 70],
    [[40, 45, 50, 55], 70, 4, 55],
    [[40], 0, 1, 40],
    // Weeks off have no run.
    [[60, 0, 0, 0], null, 4, 60],
    [[60, 0, 0, 0, 0], null, 5, 0],
  ])('longestBefore(%j, %j, { week: %d, weeks: 4 }) is %d', (longest, known, week, minutes) => {
    expect(longestBefore(longest, known, { week, weeks: 4 })).toBe(minutes);
  });
});

describe('runLimit(before, most)', () => {
  test.each([
    [60, 1.1, 66],
    [70, 1.1, 77],
    [150, 1.1, 165],
    [45, 1.1, 49.5],
    [35, 1.2, 42],
    [0, 1.1, 0],
  ])('runLimit(%d, %d) is %d, without a rounding error', (before, most, limit) => {
    expect(runLimit(before, most)).toBe(limit);
  });

  test('66 minutes after 60 are at the limit, 65.999 under it, 66.001 over it', () => {
    const limit = runLimit(60, 1.1);
    expect(66 <= limit).toBe(true);
    expect(65.999 <= limit).toBe(true);
    expect(66.001 <= limit).toBe(false);
    for (let before = 5; before <= 600; before += 5) {
      expect((before * 11) / 10 <= runLimit(before, 1.1)).toBe(true);
      expect((before * 11) / 10 + 0.001 <= runLimit(before, 1.1)).toBe(false);
    }
  });
});
