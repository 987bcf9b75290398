import { describe, expect, test } from 'vitest';
import { checkUnits, type CheckUnit } from '../../../../src/training/checks/measures.js';
import { checkAmount, factText, riseText } from '../../../../src/words/checks/check-amount.js';
import { english, german, plain } from '../sheet/languages.js';

const amounts: readonly [CheckUnit, number, string, string][] = [
  ['minutes', 36, '36 min', '36 min'],
  ['minutes', 13.84, '13.8 min', '13,8 min'],
  ['minutes', 1440, '1,440 min', '1.440 min'],
  ['hours', 4, '4 h', '4 h'],
  ['hours', 4.25, '4 h 15 min', '4 h 15 min'],
  ['hours', 0.4, '24 min', '24 min'],
  ['share', 60 / 132, '45.5%', '45,5 %'],
  ['share', 0, '0%', '0 %'],
  ['times', 1.546, '1.5', '1,5'],
  ['load', 1650.6, '1,651', '1.651'],
  ['strain', 4409.08, '4,409', '4.409'],
  ['days', 0, '0 days', '0 Tage'],
  ['days', 1, '1 day', '1 Tag'],
  ['days', 2, '2 days', '2 Tage'],
  ['sessions', 1, '1 session', '1 Einheit'],
  ['sessions', 3, '3 sessions', '3 Einheiten'],
  // A fifth of a session too many is a session too many.
  ['sessions', 0.2, '1 session', '1 Einheit'],
  ['sessions', 1.2, '2 sessions', '2 Einheiten'],
];

describe('checkAmount(words, unit, value)', () => {
  test.each(amounts)('%s: %d is "%s", in German "%s"', (unit, value, inEnglish, inGerman) => {
    expect(plain(checkAmount(english, unit, value))).toBe(inEnglish);
    expect(plain(checkAmount(german, unit, value))).toBe(inGerman);
  });

  test('knows every unit', () => {
    expect([...new Set(amounts.map(([unit]) => unit))].sort()).toEqual([...checkUnits].sort());
  });
});

describe('riseText(words, share)', () => {
  test.each([
    [0.25, '25% more', '25 % mehr'],
    [1 / 3, '33.3% more', '33,3 % mehr'],
    [-0.05, '5% less', '5 % weniger'],
    [-1, '100% less', '100 % weniger'],
    [12, '1,200% more', '1.200 % mehr'],
    [0, 'the same', 'gleich viel'],
    // What rounds to nothing is nothing.
    [0.0004, 'the same', 'gleich viel'],
    [-0.0004, 'the same', 'gleich viel'],
    [0.0006, '0.1% more', '0,1 % mehr'],
  ])('%d is "%s", in German "%s"', (share, inEnglish, inGerman) => {
    expect(plain(riseText(english, share))).toBe(inEnglish);
    expect(plain(riseText(german, share))).toBe(inGerman);
  });
});

describe('factText(words, fact, value)', () => {
  test.each([
    ['weekly_hours', 4.5, '4 h 30 min', '4 h 30 min'],
    ['hours_before', 3, '3 h', '3 h'],
    ['tempo_minutes', 36, '36 min', '36 min'],
    ['longest_run_before', 62.5, '62.5 min', '62,5 min'],
    ['own_load', 1100, '1,100', '1.100'],
    ['week_strain', 1650.6, '1,651', '1.651'],
    ['load_monotony', 1.546, '1.5', '1,5'],
    // Counted things as bare numbers: the sentence has the word.
    ['running_sessions', 4, '4', '4'],
    ['hard_sessions', 1, '1', '1'],
    ['rest_days', 2, '2', '2'],
  ])('%s: %d is "%s", in German "%s"', (fact, value, inEnglish, inGerman) => {
    expect(factText(english, fact, value)).toBe(inEnglish);
    expect(factText(german, fact, value)).toBe(inGerman);
  });
});
