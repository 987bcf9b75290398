/*
 * Days by the calendar of the platform, in UTC: the other way to count them, which the tests hold ours against.
 */

const day = 24 * 60 * 60 * 1000;

/** Days since 1 January 1970 of a date that is one. */
export function civilDay(date: string): number {
  const time = Date.parse(`${date}T00:00:00Z`);
  if (Number.isNaN(time)) throw new RangeError(`${date} is no date`);
  return time / day;
}

/** The ISO date of a day: '1970-01-08' for 7. */
export const civilText = (days: number): string => new Date(days * day).toISOString().slice(0, 10);

/** 1 for Monday to 7 for Sunday. */
export const civilWeekday = (days: number): number => new Date(days * day).getUTCDay() || 7;

/**
 * The ISO week date, by the rule that week 1 is the one with 4 January in it: '2021-W01-1' for 4 January 2021.
 *
 * @source ISO 8601-1:2019, 5.3
 */
export function civilWeekDate(days: number): string {
  const year = new Date(days * day).getUTCFullYear();
  const mondayOfFirst = (of: number): number => {
    const fourth = Date.UTC(of, 0, 4) / day;
    return fourth - civilWeekday(fourth) + 1;
  };
  const weekYear = [year + 1, year, year - 1].find((each) => mondayOfFirst(each) <= days) ?? NaN;
  const week = Math.floor((days - mondayOfFirst(weekYear)) / 7) + 1;
  return `${weekYear}-W${String(week).padStart(2, '0')}-${civilWeekday(days)}`;
}
