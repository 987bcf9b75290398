import type { WeekRequest } from './wishes.js';

/** True where two requests wish the same, in whichever order they say it. */
export function isSameWeek(one: WeekRequest, other: WeekRequest): boolean {
  return inOrder(one) === inOrder(other);
}

/** True where two requests differ in the minutes of days at most. */
export const isSameButDays = (one: WeekRequest, other: WeekRequest): boolean =>
  isSameWeek({ ...one, days: [] }, { ...other, days: [] });

function inOrder(week: WeekRequest): string {
  const entries = Object.entries(week).filter(([, wish]) => wish !== undefined);
  return JSON.stringify(entries.sort(([one], [other]) => (one < other ? -1 : 1)));
}
