import type { Problem } from '../../problem.js';
import { categoryIds, type CategoryId } from '../../training/method/ids.js';
import { recordLimits } from '../../training/record/done-session.js';
import { dateRange } from '../../training/season/iso-date.js';
import { kindKey } from './kinds-in.js';
import type { Mapping } from './mapping.js';
import { readDate } from './read-date.js';
import { readDecimal } from './read-decimal.js';
import { readDuration } from './read-duration.js';

/** What a cell says, or what is wrong with it. */
export type Told<T> = { readonly value: T } | Pick<Problem, 'code' | 'allowed'>;
const missing = { code: 'missing', allowed: {} } as const;

/** The date of a cell, in the order of the mapping. */
export function tellDate(cell: string, { dates }: Mapping): Told<string> {
  if (cell === '') return missing;
  const value = readDate(cell, dates);
  return value === null ? { code: 'no-date', allowed: dateRange } : { value };
}

/** The kind of training that the mapping has for a cell. */
export function tellCategory(cell: string, { kinds }: Mapping): Told<CategoryId> {
  if (cell === '') return missing;
  const key = kindKey(cell);
  const value = Object.hasOwn(kinds, key) ? kinds[key] : null;
  return value ? { value } : { code: 'not-one-of', allowed: { choices: categoryIds } };
}

/** The whole minutes of a cell, by the times of the mapping. */
export function tellMinutes(cell: string, { times }: Mapping): Told<number> {
  if (cell === '') return missing;
  const value = readDuration(cell, times);
  if (value === null) return { code: 'wrong-type', allowed: { expected: 'duration' } };
  const { least, most } = recordLimits.minutes;
  if (value % 1 !== 0 && Number.isFinite(value)) return { code: 'not-a-step', allowed: { step: 1 } };
  return value < least || value > most ? { code: 'out-of-range', allowed: { least, most } } : { value };
}

/** The effort of a cell, null where it is empty. */
export function tellEffort(cell: string): Told<number | null> {
  if (cell === '') return { value: null };
  const value = readDecimal(cell);
  if (value === null) return { code: 'wrong-type', allowed: { expected: 'number' } };
  const { least, most } = recordLimits.effort;
  return value < least || value > most ? { code: 'out-of-range', allowed: { least, most } } : { value: value + 0 };
}
