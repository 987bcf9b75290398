import { describe, expect, it } from 'vitest';
import { loadWords } from '../../../../src/words/load-words.js';
import { dayName, dayNames, dayShort } from '../../../../src/words/week/day-name.js';
import { german } from '../planned.js';

const words = await loadWords('en');
const week = [0, 1, 2, 3, 4, 5, 6];

describe('dayName(words, day) and dayShort(words, day)', () => {
  it('begin on Monday', () => {
    expect(week.map((day) => dayName(words, day)).join(' ')).toBe(
      'Monday Tuesday Wednesday Thursday Friday Saturday Sunday',
    );
    expect(week.map((day) => dayName(german, day)).join(' ')).toBe(
      'Montag Dienstag Mittwoch Donnerstag Freitag Samstag Sonntag',
    );
    expect(week.map((day) => dayShort(words, day)).join(' ')).toBe('Mon Tue Wed Thu Fri Sat Sun');
    expect(week.map((day) => dayShort(german, day)).join(' ')).toBe('Mo Di Mi Do Fr Sa So');
  });

  // CLDR, the names that every platform has; 5 January 2026 was a Monday.
  it.each([
    ['en', words],
    ['de', german],
  ])('are those of the platform in %s', (language, spoken) => {
    const platform = (weekday: 'long' | 'short'): string[] =>
      week.map((day) =>
        new Intl.DateTimeFormat(language, { weekday, timeZone: 'UTC' }).format(new Date(Date.UTC(2026, 0, 5 + day))),
      );
    expect(week.map((day) => dayName(spoken, day))).toEqual(platform('long'));
    expect(week.map((day) => dayShort(spoken, day))).toEqual(platform('short'));
  });
});

describe('dayNames(words, days)', () => {
  it.each([
    [[1, 2], 'Tuesday and Wednesday', 'Dienstag und Mittwoch'],
    [[6, 0], 'Sunday and Monday', 'Sonntag und Montag'],
    [[0, 2, 4], 'Monday, Wednesday, and Friday', 'Montag, Mittwoch und Freitag'],
    [[3], 'Thursday', 'Donnerstag'],
    [[], '', ''],
  ])('%j is "%s" and "%s"', (days, english, other) => {
    expect(dayNames(words, days)).toBe(english);
    expect(dayNames(german, days)).toBe(other);
  });
});
