import { formatByUnit, type Unit } from '../quantity-value.js';
import type { Words } from '../words.js';

/** A number as a cell of the sheet shows it: short, the unit only where the group does not say it. */
export function cellText(words: Words, unit: Unit, value: number): string {
  // A check that is not made here has no level.
  if (!Number.isFinite(value) || (unit === 'check' && value < 0)) return '–';
  switch (unit) {
    case 'minutes':
      return words.number(value, 1);
    case 'hours':
      return words.hoursShort(value);
    default:
      return formatByUnit(words, unit, value);
  }
}

/**
 * How far a value is from the one it is compared with, with its sign; '' where they are equal to what the screen shows,
 * or where one of them is no number, and for what is no amount.
 *
 * @example differenceText(words, 'minutes', { value: 108, reference: 72 }) // '+36'
 * @example differenceText(words, 'share', { value: 0.45, reference: 0.3 }) // '+15 pts', for points of a hundred
 */
export function differenceText(
  words: Words,
  unit: Unit,
  { value, reference }: { readonly value: number; readonly reference: number },
): string {
  const difference = value - reference;
  if (!Number.isFinite(difference) || isNoAmount.has(unit)) return '';
  const text = (amount: number): string =>
    unit === 'share'
      ? words.say('sheet.points', { count: words.number(100 * amount, 1) })
      : cellText(words, unit, amount);
  const size = text(Math.abs(difference));
  return size === text(0) ? '' : `${words.direction === 'rtl' ? leftToRight : ''}${difference > 0 ? '+' : '−'}${size}`;
}

/** Keeps a sign in front of its number where text runs from right to left, as Intl does. */
const leftToRight = '\u200e';

const isNoAmount: ReadonlySet<Unit> = new Set(['phase', 'level', 'event', 'yes-no', 'check']);
