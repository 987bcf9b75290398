import { dayOf } from '../../training/season/iso-date.js';
import type { DateOrder } from './mapping.js';
import { shortCell } from './read-decimal.js';

const yearFirst = /^(\d{4})([-./])(\d{1,2})\2(\d{1,2})$/;
const yearLast = /^(\d{1,2})([-./])(\d{1,2})\2(\d{4}|\d{2})$/;
const timeOfDay = /(?:T|,? +)[0-2]?\d:[0-5]\d(?::[0-5]\d(?:[.,]\d+)?)?(?: ?[ap]m)?(?:Z| ?[-+]\d\d:?\d\d)?$/i;

/**
 * The date of a cell, also with a time of day behind it: the day as it is written, whatever the zone. A year in front needs
 * no order; one behind is read in the order given. A year of two digits is one of 2000 to 2099.
 *
 * @returns the ISO date, or null where the cell is no day of the calendar from 1900 to 2199 in that order.
 * @example readDate('30.11.2026', 'dmy') // '2026-11-30'
 */
export function readDate(cell: string, order: DateOrder): string | null {
  const text = shortCell(cell).replace(timeOfDay, '');
  const [, year, , month, day] = yearFirst.exec(text) ?? [];
  if (year && month && day) return known(year, month, day);
  const [, first, , second, last] = order === 'ymd' ? [] : (yearLast.exec(text) ?? []);
  if (!first || !second || !last) return null;
  const fullYear = last.length === 2 ? `20${last}` : last;
  return order === 'dmy' ? known(fullYear, second, first) : known(fullYear, first, second);
}

function known(year: string, month: string, day: string): string | null {
  const date = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return dayOf(date) === null ? null : date;
}
