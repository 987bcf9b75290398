/*
 * The only place where a clock is read.
 */

/** Today on the calendar of whoever is looking. */
export function today(): string {
  const now = new Date();
  const padded = (value: number): string => String(value).padStart(2, '0');
  return `${String(now.getFullYear())}-${padded(now.getMonth() + 1)}-${padded(now.getDate())}`;
}

/** This moment in UTC, as calendars write it: `20261129T021600Z`. */
export const nowInCalendars = (): string => new Date().toISOString().replace(/\.\d+/, '').replaceAll(/[-:]/g, '');
