import { marathonMetres } from '../../training/running/equal-times.js';
import { readNumber } from '../read-number.js';
import { readClock } from './clock-time.js';

const named: Readonly<Record<string, number>> = {
  mile: 1609.344,
  'half-marathon': 21_097.5,
  marathon: marathonMetres,
};
const units: Readonly<Record<string, number>> = { k: 1000, km: 1000, m: 1, mi: 1609.344 };
const amount = /^([\d.,]+)(km|k|mi|m)$/;

/**
 * A race from a text: its distance and its time.
 *
 * @returns null where the text is no such race.
 * @example readRace('10k 45:00') // { metres: 10000, seconds: 2700 }
 * @example readRace('half-marathon 1:39:17') // { metres: 21097.5, seconds: 5957 }
 */
export function readRace(text: string): { readonly metres: number; readonly seconds: number } | null {
  const [distance = '', time = '', ...rest] = text
    .trim()
    .toLowerCase()
    .split(/[\s=]+/);
  const metres = readDistance(distance);
  const seconds = readClock(time);
  return metres === null || seconds === null || rest.length > 0 ? null : { metres, seconds };
}

function readDistance(text: string): number | null {
  const [, digits = '', unit = ''] = amount.exec(text) ?? [];
  const number = readNumber(digits);
  const metres = units[unit];
  if (number !== null && metres !== undefined) return number * metres;
  return Object.hasOwn(named, text) ? (named[text] ?? null) : null;
}
