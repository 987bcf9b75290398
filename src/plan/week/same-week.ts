import { isSameWishes } from '../same-wishes.js';
import type { WeekRequest } from './wishes.js';

/** True where two requests differ in the minutes of days at most. */
export const isSameButDays = (one: WeekRequest, other: WeekRequest): boolean =>
  isSameWishes({ ...one, days: [] }, { ...other, days: [] });
