import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readRace } from '../../../../src/words/running/read-race.js';
import { clockTime } from '../../../../src/words/running/clock-time.js';
import { patience, runs } from '../../../reference/runs.js';

describe('readRace(text)', () => {
  test.each([
    ['10k 45:00', 10_000, 2700],
    ['10k=45:00', 10_000, 2700],
    ['10km=45:00', 10_000, 2700],
    ['  10K   45:00 ', 10_000, 2700],
    ['10k = 45:00', 10_000, 2700],
    ['5k=20:00', 5000, 1200],
    ['7.5km 40:00', 7500, 2400],
    ['7,5km 40:00', 7500, 2400],
    ['1500m=5:10', 1500, 310],
    ['3000m 12.30', 3000, 750],
    // The mile of 1959: 1,609.344 m.
    ['mile=6:00', 1609.344, 360],
    ['1mi=6:00', 1609.344, 360],
    ['2mi 13:00', 3218.688, 780],
    // World Athletics: 42.195 km, and half of it.
    ['half-marathon 1:39:17', 21_097.5, 5957],
    ['Marathon=3:27:00', 42_195, 12_420],
  ])('%j', (text, metres, seconds) => {
    const race = readRace(text);
    expect(race?.metres).toBeCloseTo(metres, 9);
    expect(race?.seconds).toBe(seconds);
  });

  test.each([
    ...['', '10k', '45:00', '10k 45', '10 45:00', '10k 45:00 x', '10k 45:00=', '5 km 20:00', 'k 45:00', '10x=45:00'],
    ...['half 1:39:17', 'toString=45:00', '__proto__=45:00', '10kk=45:00', '-10k=45:00', '1e4m=45:00', '1:30k=45:00'],
    ...['..k=45:00', '10k=45:60', '10k=-45:00', '=45:00', '10k==', 'm 5:10', '1,5,0m 5:10'],
  ])('%j is no race', (text) => {
    expect(readRace(text)).toBeNull();
  });

  test(
    'reads whole metres and kilometres with whatever time',
    () => {
      fc.assert(
        fc.property(fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: 0, max: 359_999 }), (metres, seconds) => {
          const time = clockTime(seconds);
          expect(readRace(`${metres}m=${time}`)).toEqual({ metres, seconds });
          expect(readRace(`${metres}k ${time}`)).toEqual({ metres: metres * 1000, seconds });
        }),
        runs(1000, 20_000),
      );
    },
    patience,
  );
});
