import { describe, expect, test } from 'vitest';
import published from '../../../shared/checks/iso-weeks.json' with { type: 'json' };
import { dayOf, isoDate, isoWeek, knownDay, mondayDate, mondayOf } from '../../../src/training/season/iso-date.js';
import { civilDay, civilText, civilWeekDate, civilWeekday } from './civil-days.js';

const { isoweek } = published;
const [first, last] = [civilDay('1900-01-01'), civilDay('2199-12-31')];
const everyDay = Array.from({ length: last - first + 1 }, (_, index) => first + index);
const span = (from: number, count: number): number[] => Array.from({ length: count }, (_, index) => from + index);
/** A year is long where its 28 December, which is always in its last week, is in week 53. */
const isLong = (year: number): boolean => isoWeek(civilDay(`${year}-12-28`)).endsWith('-W53');

/** The week with its day from 1 for Monday to 7 for Sunday, as it is printed. */
const weekDate = (date: string): string => {
  const day = knownDay(date);
  return `${isoWeek(day)}-${day - mondayOf(day) + 1}`;
};

describe(`week dates: ${isoweek.source.cite}`, () => {
  const dates = isoweek.cases.flatMap(({ in: given, out }) =>
    given.date !== undefined && out.week !== undefined ? [[given.date, out.week] as const] : [],
  );

  test.each(dates)('%s is %s', (date, week) => {
    expect(weekDate(date)).toBe(week);
    expect(civilWeekDate(civilDay(date))).toBe(week);
  });

  test.each(isoweek.cases.flatMap(({ out }) => (out.longYears ? [out.longYears] : [])))(
    'the long years from 2020 to 2040 are %d, %d, %d and %d',
    (...years) => {
      expect(span(2020, 21).filter(isLong)).toEqual(years);
    },
  );

  test('71 years of 400 are long', () => {
    expect(span(1900, 400).filter(isLong)).toHaveLength(71);
    expect(span(2000, 400).filter(isLong)).toHaveLength(71);
    expect(span(1900, 400).filter(isLong)).toEqual(longByWeekdays(1900, 400));
  });
});

/** The years that have 53 weeks: those that begin on a Thursday, and leap years that begin on a Wednesday. */
function longByWeekdays(from: number, count: number): number[] {
  return span(from, count).filter((year) => {
    const begins = civilWeekday(civilDay(`${year}-01-01`));
    const isLeap = civilDay(`${year + 1}-01-01`) - civilDay(`${year}-01-01`) === 366;
    return begins === 4 || (isLeap && begins === 3);
  });
}

describe('every day from 1900 to 2199 is as in the calendar of the platform', () => {
  test('there and back', () => {
    // 300 years, of which 75 divide by four, but 1900 and 2100 are no leap years: 300 × 365 + 73.
    expect(everyDay).toHaveLength(109_573);
    const wrong = everyDay.filter((day) => dayOf(civilText(day)) !== day || isoDate(day) !== civilText(day));
    expect(wrong).toEqual([]);
  });

  test('with its weekday and its Monday', () => {
    const wrong = everyDay.filter((day) => day - mondayOf(day) + 1 !== civilWeekday(day));
    expect(wrong).toEqual([]);
    const weekday = new Intl.DateTimeFormat('en', { weekday: 'long', timeZone: 'UTC' });
    for (const day of [first, 0, civilDay('2026-11-28'), last])
      expect(weekday.format(mondayOf(day) * 86_400_000)).toBe('Monday');
    expect(mondayDate('2026-11-28')).toBe('2026-11-23');
  });

  test('with its week', () => {
    const wrong = everyDay.filter((day) => !civilWeekDate(day).startsWith(`${isoWeek(day)}-`));
    expect(wrong).toEqual([]);
  });
});

describe('a text that is no date', () => {
  test.each([
    ...['2027-02-29', '2027-02-30', '2100-02-29', '2027-04-31', '2027-00-10', '2027-13-01', '2027-01-00', '2027-01-32'],
    ...['1899-12-31', '2200-01-01', '0000-01-01', '9999-12-31', '', '2027', '2027-1-1', '27-01-01', '12027-01-01'],
    ...['2027/01/01', '20270101', '2027-W01', '2027-01-01T00:00', ' 2027-01-01', '2027-01-01 ', '2027-01-01\n', 'soon'],
    ...['-2027-01-01', '２０２７-01-01', '2027-01-0a', 'NaN-NaN-NaN'],
  ])('%j has no day', (text) => {
    expect(dayOf(text)).toBeNull();
    expect(() => knownDay(text)).toThrow(RangeError);
  });

  test.each(['1900-01-01', '2199-12-31', '2000-02-29', '2024-02-29'])('%s is one', (text) => {
    expect(dayOf(text)).toBe(civilDay(text));
  });
});
