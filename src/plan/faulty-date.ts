import type { Problem } from '../problem.js';
import { dateRange, dayOf } from '../training/season/iso-date.js';

/** What is wrong with a text that should be a date, if anything. */
export function faultyDate(path: string, value: string | null | undefined): Problem[] {
  const isFine = value === undefined || value === null || dayOf(value) !== null;
  return isFine ? [] : [{ path, value, code: 'no-date', allowed: dateRange }];
}
