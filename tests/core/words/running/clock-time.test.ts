import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockTime, readClock } from '../../../../src/words/running/clock-time.js';
import { patience, runs } from '../../../reference/runs.js';
import { inShort } from '../../in-short.js';

const hundredHours = 360_000;
const seconds = fc.integer({ min: 0, max: hundredHours - 1 });

describe('clockTime(seconds)', () => {
  test.each([
    [0, '0:00'],
    [9, '0:09'],
    [280, '4:40'],
    [2700, '45:00'],
    [3599, '59:59'],
    [3600, '1:00:00'],
    [5957, '1:39:17'],
    [12_420, '3:27:00'],
    [172_800, '48:00:00'],
    // To the nearest second, and over the hour where that is there.
    [59.5, '1:00'],
    [3599.6, '1:00:00'],
    [5957.288319, '1:39:17'],
  ])('%s is %s', (given, expected) => {
    expect(clockTime(given)).toBe(expected);
  });

  test(
    'has the same hours, minutes and seconds as a date of the platform',
    () => {
      fc.assert(
        fc.property(fc.integer({ min: 0, max: 86_399 }), (given) => {
          const parts = clockTime(given).split(':');
          const padded = ['0', ...parts].slice(-3).map((part) => part.padStart(2, '0'));
          expect(padded.join(':')).toBe(new Date(given * 1000).toISOString().slice(11, 19));
          expect(parts.length === 3).toBe(given >= 3600);
        }),
        runs(2000, 50_000),
      );
    },
    patience,
  );
});

describe('readClock(text)', () => {
  test(
    'reads what clockTime wrote',
    () => {
      fc.assert(
        fc.property(seconds, (given) => {
          expect(readClock(clockTime(given))).toBe(given);
          // Minutes may go beyond the hour where none is told.
          if (given < 60_000) {
            const [minutes, rest] = [Math.floor(given / 60), given % 60];
            expect(readClock(`${minutes}:${String(rest).padStart(2, '0')}`)).toBe(given);
          }
        }),
        runs(2000, 50_000),
      );
    },
    patience,
  );

  test.each([
    ['45:00', 2700],
    [' 4:40 ', 280],
    ['4.40', 280],
    ['90:00', 5400],
    ['100:00', 6000],
    ['1:39:17', 5957],
    ['01:39:17', 5957],
    ['0:00', 0],
  ])('%j is %s seconds', (text, expected) => {
    expect(readClock(text)).toBe(expected);
  });

  test.each([
    ...['', ' ', '45', '4:6', '4:60', '4:400', '1:60:00', '1:100:00', '100:00:00', '1:2:3:04', '-4:40', '4:-40'],
    ...['4:4O', '4:40 min', '4,40', ':40', '4:', '1::40', '1e3:00', '4 :40', 'four', '٤:٤٠', '1000:00'],
  ])('%j is no time', (text) => {
    expect(readClock(text)).toBeNull();
  });

  test(
    'takes nothing else: whatever it takes comes to the same seconds by its parts',
    () => {
      fc.assert(
        fc.property(fc.string({ unit: fc.constantFrom(...'0123456789:. -'), maxLength: 9 }), (text) => {
          const read = readClock(text);
          if (read === null) return;
          const parts = text.trim().split(/[:.]/).map(Number);
          const expected = parts.reduce((sum, part) => sum * 60 + part, 0);
          expect([inShort(text), read, parts.length >= 2]).toEqual([inShort(text), expected, true]);
          expect(parts.slice(1).filter((part) => part > 59)).toEqual([]);
        }),
        runs(5000, 100_000),
      );
    },
    patience,
  );
});
