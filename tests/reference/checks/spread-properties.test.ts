import fc from 'fast-check';
import { mean, sampleStandardDeviation, standardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { loadSpread, type LoadSpread } from '../../../src/training/load/load-spread.js';
import { patience, runs } from '../runs.js';

const whole = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 2000 }));
/** As own weeks may be told: 0 to 20 000, whole or not. */
const told = fc.oneof(
  whole,
  fc.double({ min: 0, max: 20_000, noNaN: true }),
  fc.integer({ min: 1, max: 9999 }).map((each) => each / 10),
);
const weekOf = (load: fc.Arbitrary<number>): fc.Arbitrary<number[]> => fc.array(load, { minLength: 7, maxLength: 7 });
const weeks = fc.oneof(weekOf(whole), weekOf(told));
const alike = told.map((load) => Array.from({ length: 7 }, () => load));

const near = (ours: number, theirs: number): void => {
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(theirs)));
};
const nearOrNull = (ours: number | null, theirs: number | null): void => {
  if (ours === null || theirs === null) expect(ours).toBe(theirs);
  else near(ours, theirs);
};
const numbers = ({ week, mean: day, deviation, sampleDeviation, ...spread }: LoadSpread): readonly number[] => {
  const { monotony, sampleMonotony, strain } = spread;
  return [week, day, deviation, sampleDeviation, monotony ?? 0, sampleMonotony ?? 0, strain ?? 0];
};
const holds = (arbitrary: fc.Arbitrary<number[]>, of: (daily: readonly number[]) => void): void => {
  fc.assert(fc.property(arbitrary, of), runs(1000, 1_000_000));
};

/** Loads that differ by enough for a deviation to say something. */
const differ = (daily: readonly number[]): boolean => standardDeviation([...daily]) > 1e-6 * Math.max(1, ...daily);

describe('the spread of a week', { timeout: patience }, () => {
  test('has the mean and both standard deviations of simple-statistics', () => {
    holds(weeks, (daily) => {
      const spread = loadSpread(daily);
      near(spread.mean, mean([...daily]));
      near(spread.deviation, standardDeviation([...daily]));
      near(spread.sampleDeviation, sampleStandardDeviation([...daily]));
    });
  });

  test('has a monotony of the mean over each deviation, and a strain of the load times it', () => {
    holds(weeks.filter(differ), (daily) => {
      const { monotony, sampleMonotony, strain } = loadSpread(daily);
      near(monotony ?? NaN, mean([...daily]) / standardDeviation([...daily]));
      near(sampleMonotony ?? NaN, mean([...daily]) / sampleStandardDeviation([...daily]));
      near(strain ?? NaN, (7 * mean([...daily]) ** 2) / standardDeviation([...daily]));
    });
  });

  test('has the same monotony when all loads are scaled, and a strain that is scaled with them', () => {
    fc.assert(
      fc.property(weekOf(whole), fc.double({ min: 0.1, max: 9, noNaN: true }), (daily, factor) => {
        const [one, other] = [loadSpread(daily), loadSpread(daily.map((load) => load * factor))];
        nearOrNull(other.monotony, one.monotony);
        nearOrNull(other.strain, one.strain === null ? null : one.strain * factor);
      }),
      runs(1000, 1_000_000),
    );
  });

  test('is the same in every order of the days', () => {
    const pairs = weeks
      .filter(differ)
      .chain((daily) => fc.tuple(fc.constant(daily), fc.shuffledSubarray(daily, { minLength: 7, maxLength: 7 })));
    fc.assert(
      fc.property(pairs, ([daily, shuffled]) => {
        const [one, other] = [loadSpread(daily), loadSpread(shuffled)];
        near(other.week, one.week);
        near(other.deviation, one.deviation);
        nearOrNull(other.monotony, one.monotony);
        nearOrNull(other.strain, one.strain);
      }),
      runs(1000, 1_000_000),
    );
  });

  test('has no monotony and no strain where all seven days are alike, whole numbers or not', () => {
    holds(alike, (daily) => {
      expect(loadSpread(daily)).toMatchObject({
        ...{ deviation: 0, sampleDeviation: 0, monotony: null, sampleMonotony: null, strain: null },
      });
    });
  });

  test('has a monotony wherever whole numbers are not all alike', () => {
    holds(weekOf(whole), (daily) => {
      const { monotony, strain, sampleMonotony } = loadSpread(daily);
      const isAlike = new Set(daily).size === 1;
      expect([monotony, sampleMonotony, strain].map((each) => each === null)).toEqual([isAlike, isAlike, isAlike]);
    });
  });

  test('has a monotony of 1/√6 with a single day of training, the least there is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000 }), fc.nat(6), weekOf(whole), (load, day, daily) => {
        const single = loadSpread(Array.from({ length: 7 }, (_, each) => (each === day ? load : 0)));
        near(single.monotony ?? NaN, 1 / Math.sqrt(6));
        near(single.sampleMonotony ?? NaN, 1 / Math.sqrt(7));
        const { monotony, week } = loadSpread(daily);
        if (monotony !== null && week > 0) expect(monotony).toBeGreaterThanOrEqual(1 / Math.sqrt(6) - 1e-9);
      }),
      runs(1000, 1_000_000),
    );
  });

  test('is never without bound and never no number, nor below nothing', () => {
    holds(fc.oneof(weeks, alike), (daily) => {
      for (const each of numbers(loadSpread(daily))) {
        expect(Number.isFinite(each)).toBe(true);
        expect(each).toBeGreaterThanOrEqual(0);
      }
    });
  });
});
