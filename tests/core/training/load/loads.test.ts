import { describe, expect, test } from 'vitest';
import { dayLoads } from '../../../../src/training/load/day-loads.js';
import { effortsOf } from '../../../../src/training/load/efforts-of.js';
import { loadSpread } from '../../../../src/training/load/load-spread.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';

const efforts = { slow: 3, tempo: 6, intervals: 8, cross: 2.5, strength: 5 };

describe('dayLoads(days, efforts)', () => {
  test('adds up effort times minutes of each day, and is 0 on a day of rest', () => {
    const day = [{ category: 'strength', minutes: 30 } as const, { category: 'slow', minutes: 40 } as const];
    expect(dayLoads([day, [], [{ category: 'intervals', minutes: 25 }]], efforts)).toEqual([270, 0, 200]);
  });

  test('gives whole numbers, halves upwards, rounding the day and not its sessions', () => {
    const cross = { category: 'cross', minutes: 25 } as const;
    expect(dayLoads([[cross], [cross, cross]], efforts)).toEqual([63, 125]);
  });
});

describe('effortsOf(method)', () => {
  test('has the efforts of the built-in method: 3, 6, 8, 3 and 5', () => {
    expect(effortsOf(builtInMethod)).toEqual({ slow: 3, tempo: 6, intervals: 8, cross: 3, strength: 5 });
  });

  test('has a method’s own, 0 included, and the built-in ones where it leaves them out', () => {
    const categories = builtInMethod.categories.map(({ effort, ...category }) => {
      if (category.id === 'slow') return { ...category, effort: 0 };
      return category.id === 'tempo' ? category : { ...category, effort: (effort ?? 0) + 1 };
    });
    expect(effortsOf({ categories })).toEqual({ slow: 0, tempo: 6, intervals: 9, cross: 4, strength: 6 });
  });
});

describe('loadSpread(daily)', () => {
  test('of a week without training has no monotony, and no strain', () => {
    expect(loadSpread([0, 0, 0, 0, 0, 0, 0])).toEqual({
      ...{ week: 0, mean: 0, deviation: 0, sampleDeviation: 0, monotony: null, sampleMonotony: null, strain: null },
    });
  });

  test('of six days of 1 and a day off has a monotony of √6', () => {
    // Mean 6/7, squares 6 × (1/7)² + (6/7)² = 42/49, by 7: 6/49.
    const { mean, deviation, monotony, strain } = loadSpread([1, 1, 1, 0, 1, 1, 1]);
    expect(mean).toBeCloseTo(6 / 7, 12);
    expect(deviation).toBeCloseTo(Math.sqrt(6) / 7, 9);
    expect(monotony).toBeCloseTo(Math.sqrt(6), 9);
    expect(strain).toBeCloseTo(6 * Math.sqrt(6), 9);
  });

  test('strains less with 4 hard, 2 easy days and one off than with 6 hard ones and one off (D02 in shared/evidence)', () => {
    // 4000 units in both weeks; how hard and easy days divide them is not printed, 900 and 200 are ours.
    const hard = loadSpread([0, ...Array.from({ length: 6 }, () => 4000 / 6)]);
    const mixed = loadSpread([0, 900, 900, 200, 900, 200, 900]);
    expect(hard.week).toBeCloseTo(4000, 9);
    expect(mixed.week).toBe(4000);
    expect(mixed.strain ?? NaN).toBeLessThan((2 / 3) * (hard.strain ?? NaN));
  });
});
