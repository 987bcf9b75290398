import type { InputRange } from './grid.js';

/** The largest divisor of a fraction, and the decimal places, that still make a number plain. */
const plain = { divisor: 1000, places: 6 };

/** How far a place found on an input's range may be from the true one, of either's size and of a step. */
const relativeReach = { value: 2e-10, step: 1e-12 };

/** How far from `value` a plainer number may be and still count as the same place on an input's range. */
export function reachAt(value: number, { step }: InputRange): number {
  return Math.max(Math.abs(value) * relativeReach.value, step * relativeReach.step);
}

/** The plainest number that is as good as `value` as a place on the range: 7.5 for 7.4999999999. */
export function plainPlace(value: number, input: InputRange): number {
  const place = plainestNear(value, reachAt(value, input));
  return place < input.least || place > input.most ? value : place;
}

/**
 * The plainest number within `reach` of `value`: the fraction with the least divisor, if that is at most 1000, else a
 * decimal of six places, else the value itself.
 *
 * @example plainestNear(6.66666666667, 1e-9) // 20 / 3
 */
export function plainestNear(value: number, reach: number): number {
  if (Math.abs(value) <= reach) return 0;
  const fraction = Math.sign(value) * simplestFraction(Math.abs(value) - reach, Math.abs(value) + reach);
  if (Number.isFinite(fraction)) return fraction;
  const decimal = Math.round(value * 10 ** plain.places) / 10 ** plain.places;
  return Math.abs(decimal - value) <= reach ? decimal : value;
}

/** The fraction with the least divisor from `least` to `most`, two positive numbers; NaN where that is too large. */
function simplestFraction(least: number, most: number): number {
  // Down the tree of Stern and Brocot, a whole continued-fraction term at a time.
  let [low, high] = [least, most];
  let [before, now] = [
    { over: 0, under: 1 },
    { over: 1, under: 0 },
  ];
  while (now.under <= plain.divisor) {
    const whole = Math.floor(low);
    const isLast = whole === low || whole + 1 <= high;
    const term = whole === low ? whole : isLast ? whole + 1 : whole;
    [before, now] = [now, { over: term * now.over + before.over, under: term * now.under + before.under }];
    if (isLast) break;
    [low, high] = [1 / (high - whole), 1 / (low - whole)];
  }
  return now.under <= plain.divisor ? now.over / now.under : NaN;
}
