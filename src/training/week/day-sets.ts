/** Days of a week as the bits of a number, Monday the lowest: 0b0000101 is Monday and Wednesday. */
export type DaySet = number;

export const dayCount = 7;
export const minutesInADay = 24 * 60;
export const everyDay: DaySet = 127;

/** The set of one day, 0 (Monday) to 6. */
export const dayBit = (day: number): DaySet => 1 << day;

export const has = (days: DaySet, day: number): boolean => ((days >> day) & 1) === 1;

const counts = Uint8Array.from({ length: 128 }, (_, days) => {
  let count = 0;
  for (let left = days; left > 0; left &= left - 1) count += 1;
  return count;
});

/** How many days a set has. */
export const countDays = (days: DaySet): number => counts[days]!;

/** The days of a set in order: `daysOf(0b101)` is `[0, 2]`. */
export function daysOf(set: DaySet): number[] {
  return [0, 1, 2, 3, 4, 5, 6].filter((day) => has(set, day));
}

export const daySetOf = (days: Iterable<number>): DaySet => {
  let set = 0;
  for (const day of days) set |= dayBit(day);
  return set;
};

/** Every day of a set some days earlier, on the circle of the week: `daysEarlier(0b1, 1)` is Sunday alone. */
export function daysEarlier(set: DaySet, days: number): DaySet {
  return ((set >> days) | (set << (dayCount - days))) & everyDay;
}
