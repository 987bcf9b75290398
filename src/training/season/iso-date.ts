/*
 * Dates as whole days since 1 January 1970, in the Gregorian calendar of ISO 8601: no clock, no time of day, no zone.
 * Arithmetic on days is then arithmetic on whole numbers.
 */

/** The dates that a season may have: the century on either side of today's, with room. */
export const dateRange = { least: '1900-01-01', most: '2199-12-31' } as const;

const pattern = /^(\d{4})-(\d{2})-(\d{2})$/;
/** Days from 1 March of year 0, where this count begins, to 1 January 1970. */
const daysToEpoch = 719_468;
const daysInCycle = 146_097;

/**
 * The day of an ISO date; null for what is no date from 1900 to 2199.
 *
 * @example dayOf('1970-01-08') // 7
 * @example dayOf('2027-02-29') // null
 */
export function dayOf(date: string): number | null {
  const [, year, month, day] = (pattern.exec(date) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return null;
  const number = dayNumber(year, month, day);
  // What is no day of its month comes back as another date.
  return isoDate(number) === date && date >= dateRange.least && date <= dateRange.most ? number : null;
}

/** The day of a date known to be one; throws for any other. */
export function knownDay(date: string): number {
  const day = dayOf(date);
  if (day === null) throw new RangeError(`${date} is no date`);
  return day;
}

/**
 * The ISO date of a day.
 *
 * @example isoDate(7) // '1970-01-08'
 */
export function isoDate(day: number): string {
  const { year, month, dayOfMonth } = civilDate(day);
  const padded = (value: number, length: number): string => String(value).padStart(length, '0');
  return `${padded(year, 4)}-${padded(month, 2)}-${padded(dayOfMonth, 2)}`;
}

/**
 * The Monday of a day's week: ISO weeks begin on Monday.
 *
 * @example isoDate(mondayOf(knownDay('2026-11-28'))) // '2026-11-23'
 */
export function mondayOf(day: number): number {
  // 1 January 1970 was a Thursday.
  return day - ((((day + 3) % 7) + 7) % 7);
}

/** The Monday of the week of a date known to be one: `mondayDate('2026-11-28')` is '2026-11-23'. */
export const mondayDate = (date: string): string => isoDate(mondayOf(knownDay(date)));

/**
 * The ISO week of a day: a week belongs to the year that has its Thursday (ISO 8601-1:2019, 5.3).
 *
 * @example isoWeek(knownDay('2021-01-03')) // '2020-W53'
 */
export function isoWeek(day: number): string {
  const thursday = mondayOf(day) + 3;
  const { year } = civilDate(thursday);
  const week = Math.floor((thursday - dayNumber(year, 1, 1)) / 7) + 1;
  return `${String(year).padStart(4, '0')}-W${String(week).padStart(2, '0')}`;
}

/** Years are counted from March, so that a leap day is the last day of its year; 400 years have 146,097 days. */
function dayNumber(year: number, month: number, dayOfMonth: number): number {
  const marchYear = month <= 2 ? year - 1 : year;
  const cycle = Math.floor(marchYear / 400);
  const yearOfCycle = marchYear - cycle * 400;
  const monthFromMarch = (month + 9) % 12;
  const dayOfYear = Math.floor((153 * monthFromMarch + 2) / 5) + dayOfMonth - 1;
  const leapDays = Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100);
  return cycle * daysInCycle + yearOfCycle * 365 + leapDays + dayOfYear - daysToEpoch;
}

function civilDate(day: number): { readonly year: number; readonly month: number; readonly dayOfMonth: number } {
  const shifted = day + daysToEpoch;
  const cycle = Math.floor(shifted / daysInCycle);
  const dayOfCycle = shifted - cycle * daysInCycle;
  // Days of leap years passed in this cycle are taken off before the years are counted.
  const leapDays =
    Math.floor(dayOfCycle / 1460) - Math.floor(dayOfCycle / 36_524) + Math.floor(dayOfCycle / (daysInCycle - 1));
  const yearOfCycle = Math.floor((dayOfCycle - leapDays) / 365);
  const dayOfYear = dayOfCycle - (365 * yearOfCycle + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  return {
    year: yearOfCycle + cycle * 400 + (month <= 2 ? 1 : 0),
    month,
    dayOfMonth: dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1,
  };
}
