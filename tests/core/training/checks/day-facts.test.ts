import { describe, expect, test } from 'vitest';
import { dayFacts, type CheckedDay } from '../../../../src/training/checks/day-facts.js';
import type { CategoryId } from '../../../../src/training/method/ids.js';

const efforts = { slow: 3, tempo: 6, intervals: 8, cross: 3, strength: 5 };
const letters: Readonly<Record<string, CategoryId>> = {
  ...{ e: 'slow', t: 'tempo', i: 'intervals', c: 'cross', s: 'strength' },
};
/** 'e|t|.|i|s|e|.' are the days from Monday on, a letter a session of 30 minutes, in the order of the day. */
const daysOf = (week: string): readonly CheckedDay[] =>
  week.split('|').map((day) =>
    [...day].flatMap((letter) => {
      const category = letters[letter];
      return category ? [{ category, minutes: 30 }] : [];
    }),
  );
const factsOf = (week: string) => dayFacts(daysOf(week), efforts);

describe('days of rest', () => {
  test.each([
    ['e|e|e|e|e|e|e', 0],
    ['e|e|e|.|e|e|e', 1],
    ['.|s|.|c|.|e|.', 4],
    ['es|.|.|.|.|.|.', 6],
    ['.|.|.|.|.|.|.', 7],
  ])('of %s are %d', (week, days) => {
    expect(factsOf(week).rest_days).toBe(days);
  });
});

describe('least days from one hard run to the next', () => {
  test.each([
    ['t|.|.|i|.|.|.', 3],
    ['.|t|.|i|.|.|.', 2],
    ['.|t|i|.|.|.|.', 1],
    // Sunday meets Monday.
    ['t|.|.|.|.|.|i', 1],
    ['.|t|.|.|.|.|i', 2],
    ['t|.|i|.|t|.|.', 2],
    ['t|.|i|.|t|.|i', 1],
    ['t|t|t|t|t|t|t', 1],
    // A slow run, a strength session or cross-training is not hard.
    ['t|e|c|i|s|.|.', 3],
    // One hard run meets itself after a week.
    ['.|.|i|.|.|.|.', 7],
    // None meets none: there is nothing to measure.
    ['.|.|e|.|.|.|.', null],
  ])('in %s are %s', (week, gap) => {
    expect(factsOf(week).hard_gap).toBe(gap);
  });

  test('are none where two hard runs are on one day', () => {
    expect(factsOf('.|ti|.|.|.|.|.').hard_gap).toBe(0);
    expect(factsOf('.|tt|.|.|i|.|.').hard_gap).toBe(0);
  });
});

describe('least days from a strength session to the next hard run', () => {
  test.each([
    ['s|.|t|.|.|.|.', 2],
    ['s|t|.|.|.|.|.', 1],
    ['st|.|.|.|.|.|.', 0],
    // A day before the strength session does not count, but a week has no end.
    ['t|s|.|.|.|.|.', 6],
    ['t|.|.|.|.|.|s', 1],
    ['.|t|.|s|.|i|s', 2],
    ['s|t|.|.|s|.|i', 1],
    ['s|e|c|.|.|.|.', null],
    ['t|.|.|i|.|.|.', null],
    ['.|.|.|.|.|.|.', null],
  ])('in %s are %s', (week, gap) => {
    expect(factsOf(week).strength_gap).toBe(gap);
  });

  test('are a week where the only hard run is before the strength session on the same day', () => {
    expect(factsOf('ts|.|.|.|.|.|.').strength_gap).toBe(7);
  });
});

describe('monotony and strain', () => {
  test('are those of the days’ loads', () => {
    // 240, 0, 90, 240, 0, 150, 0: mean 720 / 7; squares 57600 + 8100 + 57600 + 22500 = 145800.
    const { load_monotony: monotony, week_strain: strain } = factsOf('i|.|e|i|.|s|.');
    const mean = 720 / 7;
    const deviation = Math.sqrt(145_800 / 7 - mean ** 2);
    expect(monotony).toBeCloseTo(mean / deviation, 9);
    expect(strain).toBeCloseTo((720 * mean) / deviation, 6);
  });

  test('are nothing where all days are alike', () => {
    expect(factsOf('e|e|e|e|e|e|e')).toMatchObject({ load_monotony: null, week_strain: null });
    expect(factsOf('.|.|.|.|.|.|.')).toMatchObject({ load_monotony: null, week_strain: null });
  });
});
