import { describe, expect, test } from 'vitest';
import { readDate } from '../../../../src/exchange/record/read-date.js';
import { readDecimal } from '../../../../src/exchange/record/read-decimal.js';
import { readDuration } from '../../../../src/exchange/record/read-duration.js';
import type { DateOrder, TimeStyle } from '../../../../src/exchange/record/mapping.js';

// What a text means, made by hand; common practice, no source.

describe('readDate(cell, order)', () => {
  /** A text, and what it means by ymd, dmy and mdy. */
  const cases: readonly [string, string | null, string | null, string | null][] = [
    ['2026-11-30', '2026-11-30', '2026-11-30', '2026-11-30'],
    ['2026-4-5', '2026-04-05', '2026-04-05', '2026-04-05'],
    ['2026/04/05', '2026-04-05', '2026-04-05', '2026-04-05'],
    ['2026.04.05', '2026-04-05', '2026-04-05', '2026-04-05'],
    ['30.11.2026', null, '2026-11-30', null],
    ['30/11/2026', null, '2026-11-30', null],
    ['30-11-2026', null, '2026-11-30', null],
    ['11/30/2026', null, null, '2026-11-30'],
    ['5.4.2026', null, '2026-04-05', '2026-05-04'],
    ['05/04/2026', null, '2026-04-05', '2026-05-04'],
    ['30.11.26', null, '2026-11-30', null],
    ['1.2.03', null, '2003-02-01', '2003-01-02'],
    [' 2026-11-30 ', '2026-11-30', '2026-11-30', '2026-11-30'],
    ['2026-11-30 18:05', '2026-11-30', '2026-11-30', '2026-11-30'],
    ['2026-11-30 8:05', '2026-11-30', '2026-11-30', '2026-11-30'],
    ['2026-11-30T18:05:00Z', '2026-11-30', '2026-11-30', '2026-11-30'],
    ['2026-11-30T23:59:59.999+02:00', '2026-11-30', '2026-11-30', '2026-11-30'],
    ['2026-11-30T00:30:00-0800', '2026-11-30', '2026-11-30', '2026-11-30'],
    ['2026-11-30 18:05:00 +0200', '2026-11-30', '2026-11-30', '2026-11-30'],
    ['30.11.2026, 18:05:00', null, '2026-11-30', null],
    ['11/30/2026 6:05 PM', null, null, '2026-11-30'],
    ['2028-02-29', '2028-02-29', '2028-02-29', '2028-02-29'],
    ['2026-02-29', null, null, null],
    ['29.02.2027', null, null, null],
    ['31.04.2026', null, null, null],
    ['2026-13-01', null, null, null],
    ['2026-00-10', null, null, null],
    ['0.5.2026', null, null, null],
    ['1900-01-01', '1900-01-01', '1900-01-01', '1900-01-01'],
    ['1899-12-31', null, null, null],
    ['2199-12-31', '2199-12-31', '2199-12-31', '2199-12-31'],
    ['2200-01-01', null, null, null],
    ['2026-11.30', null, null, null],
    ['30/11-2026', null, null, null],
    ['20261130', null, null, null],
    ['26-11-30x', null, null, null],
    ['30.11.', null, null, null],
    ['30.11.126', null, null, null],
    ['2026-11-30 25', null, null, null],
    ['2026-11-30 18:65', null, null, null],
    ['2026-11-3018:05', null, null, null],
    ['18:05', null, null, null],
    ['', null, null, null],
    ['45', null, null, null],
    ['٢٠٢٦-١١-٣٠', null, null, null],
  ];
  const orders: readonly [DateOrder, 1 | 2 | 3][] = [
    ['ymd', 1],
    ['dmy', 2],
    ['mdy', 3],
  ];
  test.each(cases.flatMap((row) => orders.map(([order, place]) => [row[0], order, row[place]] as const)))(
    '%j by %s is %j',
    (cell, order, date) => {
      expect(readDate(cell, order)).toBe(date);
    },
  );
});

describe('readDuration(cell, style)', () => {
  /** A text, and how many minutes it means by minutes, hours, hms and ms. */
  const cases: readonly [string, number | null, number | null, number | null, number | null][] = [
    ['45', 45, 2700, null, null],
    ['45,5', 45.5, 2730, null, null],
    ['45.5', 45.5, 2730, null, null],
    ['45.0', 45, 2700, null, null],
    ['1.5', 1.5, 90, null, null],
    ['0,33', 0.33, 20, null, null], // 19.8
    ['.75', 0.75, 45, null, null],
    ['0.125', 0.125, 8, null, null], // 7.5: a half goes up
    ['1,575', 1.575, 95, null, null], // 94.5
    ['1.025', 1.025, 62, null, null], // 61.5, though 1.025 * 3600 is a little less than 3690
    ['4.475 h', 269, 269, 269, 269], // 268.5
    ['4.5E+01', 45, 2700, null, null],
    ['-5', -5, -300, null, null],
    ['−5', -5, -300, null, null],
    ['0', 0, 0, null, null],
    ['1e999', Infinity, Infinity, null, null],
    ['45 min', 45, 45, 45, 45],
    ['45min', 45, 45, 45, 45],
    ['45 Min.', 45, 45, 45, 45],
    ['45,5 min', 45.5, 45.5, 45.5, 45.5],
    ['45 m', 45, 45, 45, 45],
    ['1 h', 60, 60, 60, 60],
    ['1h', 60, 60, 60, 60],
    ['1,5 h', 90, 90, 90, 90],
    ['1.5 Std.', 90, 90, 90, 90],
    ['2 hrs', 120, 120, 120, 120],
    ['1h05', 65, 65, 65, 65],
    ['1 h 5', 65, 65, 65, 65],
    ['1 h 5 min', 65, 65, 65, 65],
    ['1h 5m 30s', 66, 66, 66, 66],
    ['1h 5m 29s', 65, 65, 65, 65],
    ['45m30', 46, 46, 46, 46],
    ['1 h 30 s', 61, 61, 61, 61],
    ['2700 s', 45, 45, 45, 45],
    ['90 sec', 2, 2, 2, 2],
    ['0:45', 45, 45, 45, 1],
    ['0:05', 5, 5, 5, 0],
    ['1:05', 65, 65, 65, 1],
    ['01:05', 65, 65, 65, 1],
    ['45:30', 2730, 2730, 2730, 46],
    ['45:29', 2729, 2729, 2729, 45],
    ['0:30', 30, 30, 30, 1],
    ['0:29', 29, 29, 29, 0],
    ['1:05:30', 66, 66, 66, 66],
    ['1:05:29', 65, 65, 65, 65],
    ['0:45:29.5', 45, 45, 45, 45],
    ['00:45:12,25', 45, 45, 45, 45],
    ['24:00', 1440, 1440, 1440, 24],
    ['1:05 h', 65, 65, 65, 65],
    ['45:30 min', 46, 46, 46, 46],
    ['1:60', null, null, null, null],
    ['1:5', null, null, null, null],
    ['1:05:60', null, null, null, null],
    ['1:05:30:00', null, null, null, null],
    ['-1:05', null, null, null, null],
    [':45', null, null, null, null],
    ['1 h 75', null, null, null, null],
    ['1 h 5,5', null, null, null, null],
    ['5 min 1 h', null, null, null, null],
    ['1 h 1 h', null, null, null, null],
    ['5 s 5', null, null, null, null],
    ['5 km', null, null, null, null],
    ['5 constructor', null, null, null, null],
    ['h', null, null, null, null],
    ['min 45', null, null, null, null],
    ['1,440.5', null, null, null, null],
    ['1 440', null, null, null, null],
    ['Infinity', null, null, null, null],
    ['NaN', null, null, null, null],
    ['0x2d', null, null, null, null],
    ['45 %', null, null, null, null],
    ['', null, null, null, null],
    ['٤٥', null, null, null, null],
    [`${'0'.repeat(60)}45`, null, null, null, null],
  ];
  const styles: readonly [TimeStyle, 1 | 2 | 3 | 4][] = [
    ['minutes', 1],
    ['hours', 2],
    ['hms', 3],
    ['ms', 4],
  ];
  test.each(cases.flatMap((row) => styles.map(([style, place]) => [row[0], style, row[place]] as const)))(
    '%j by %s is %j',
    (cell, style, minutes) => {
      expect(readDuration(cell, style)).toBe(minutes);
    },
  );
});

test.each([
  ['7', 7],
  ['7,5', 7.5],
  [' 7.5 ', 7.5],
  ['+3', 3],
  ['10', 10],
  ['1e-7', 1e-7],
  ['7.', 7],
  ['7/10', null],
  ['seven', null],
  ['7 5', null],
  ['7,5,5', null],
  ['.', null],
  ['', null],
])('the number of %j is %j', (cell, number) => {
  expect(readDecimal(cell)).toBe(number);
});
