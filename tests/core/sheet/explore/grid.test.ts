import { describe, expect, test } from 'vitest';
import { gridOf, nextOnGrid, samplesOf } from '../../../../src/sheet/explore/grid.js';
import { builtInInput } from './built-in.js';
import { fiveChoices, quarters } from './ranges.js';

describe('gridOf(input)', () => {
  test('gives the steps from the least to the most as people write them', () => {
    expect(gridOf({ ...quarters, least: 0.1, most: 0.7, step: 0.1 })).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7]);
    expect(gridOf(fiveChoices)).toEqual([0, 1, 2, 3, 4]);
    const hours = gridOf(builtInInput('weekly_hours'));
    expect([hours.length, hours[0], hours[1], hours.at(-1)]).toEqual([79, 0.5, 0.75, 20]);
  });

  test('ends with the last step where the most is on none', () => {
    expect(gridOf({ ...quarters, most: 0.9 })).toEqual([0, 0.25, 0.5, 0.75]);
  });

  test.each([{ most: Infinity }, { least: -Infinity }, { step: 0 }, { most: -1 }, { step: 1e-9 }])(
    'refuses a range with %o',
    (parts) => {
      expect(() => gridOf({ ...quarters, ...parts })).toThrow('no range');
    },
  );
});

describe('nextOnGrid(input, value, direction)', () => {
  test.each([
    [4, 1, 4.25],
    [4, -1, 3.75],
    [4.1, 1, 4.25],
    [4.1, -1, 4],
    [0.1 + 0.15, 1, 0.5],
    [10, 1, null],
    [0, -1, null],
    [9.9, 1, 10],
    [12, -1, 10],
    [12, 1, null],
    [-3, 1, 0],
    [-3, -1, null],
  ] as const)('goes from %s in the direction %s to %s', (value, direction, expected) => {
    expect(nextOnGrid(quarters, value, direction)).toBe(expected);
  });
});

describe('samplesOf(input)', () => {
  test('has every step and the end of the range, in order, each once', () => {
    const samples = samplesOf({ ...quarters, most: 9.9 });
    expect(samples).toEqual([...new Set(samples)].sort((left, right) => left - right));
    expect(samples).toEqual(expect.arrayContaining([0, 0.25, 9.75, 9.9]));
    expect(Math.max(...samples.slice(1).map((value, index) => value - samples[index]!))).toBeLessThanOrEqual(0.25 / 8);
  });

  test('looks closer where there are few steps, and only at the steps of a choice', () => {
    expect(samplesOf({ ...quarters, step: 10 }).length).toBeGreaterThan(250);
    expect(samplesOf({ ...quarters, step: 0.0001 })).toHaveLength(100_001);
    expect(samplesOf(fiveChoices)).toEqual([0, 1, 2, 3, 4]);
  });
});
