import { roundHalfAway, withoutNoise } from '../../sheet/numbers.js';
import type { TimeStyle } from './mapping.js';
import { readDecimal, shortCell } from './read-decimal.js';

const clock = /^(\d+):([0-5]\d)(?::([0-5]\d(?:[.,]\d+)?))? *(h|min)?$/i;
const partWithUnit = /(\d+(?:[.,]\d+)?) *([a-z]*)\.? */giy;
const secondsIn: ReadonlyMap<string, number> = new Map([
  ...['h', 'hr', 'hrs', 'std'].map((unit) => [unit, 3600] as const),
  ...['m', 'min', 'mins'].map((unit) => [unit, 60] as const),
  ...['s', 'sec', 'sek'].map((unit) => [unit, 1] as const),
]);

/**
 * How many minutes a cell means. A cell with units (`45 min`, `1h05`, `1 h 5 min 30 s`) or with three parts (`1:05:30`) says
 * it by itself; `style` tells what `45`, `1.5` and `45:30` mean. What comes from seconds or from decimal hours is rounded to
 * whole minutes, halves up; a fraction of a minute stays one.
 *
 * @returns minutes, not held against any limit, or null where the cell is no duration of that style.
 * @example readDuration('45:30', 'ms') // 46
 */
export function readDuration(cell: string, style: TimeStyle): number | null {
  const number = readDecimal(cell);
  if (number === null) return readClock(cell, style) ?? readUnits(cell);
  if (style === 'minutes') return number;
  return style === 'hours' ? wholeMinutes(number * 3600) : null;
}

const wholeMinutes = (seconds: number): number => roundHalfAway(withoutNoise(seconds / 60));
const numberIn = (text = '0'): number => readDecimal(text) ?? 0;

function readClock(cell: string, style: TimeStyle): number | null {
  const parts = clock.exec(shortCell(cell));
  if (!parts) return null;
  const [first, second, third] = [numberIn(parts[1]), numberIn(parts[2]), parts[3]];
  const unit = parts[4]?.toLowerCase() ?? (style === 'ms' ? 'min' : 'h');
  if (third === undefined) return unit === 'min' ? wholeMinutes(first * 60 + second) : first * 60 + second;
  return wholeMinutes(first * 3600 + second * 60 + numberIn(third));
}

/** Hours, minutes and seconds in this order, each at most once; what has no unit counts in the next smaller one. */
function readUnits(cell: string): number | null {
  const text = shortCell(cell);
  const parts = [...text.matchAll(partWithUnit)];
  if (parts.length === 0 || parts.map(([part]) => part).join('') !== text) return null;
  let [seconds, last] = [0, Infinity];
  for (const [, amount, unit = ''] of parts) {
    const size = unit === '' ? last / 60 : secondsIn.get(unit.toLowerCase());
    // A later part is a whole number below 60: nobody writes 1 h 75, and 1 h 5,5 may be a slip.
    const isFine = last === Infinity || /^[0-5]?\d$/.test(amount ?? '');
    if (size === undefined || size < 1 || size >= last || !isFine) return null;
    seconds += numberIn(amount) * size;
    last = size;
  }
  return parts.length === 1 && last === 60 ? seconds / 60 : wholeMinutes(seconds);
}
