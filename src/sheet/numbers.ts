/**
 * The arithmetic of formulas where plain floating point would surprise people. Two rules, both those of mathjs
 * (checked against it in tests/core/sheet/numbers.test.ts):
 *
 * - two numbers within 1e-12 of each other, relative to the larger, count as equal, so 0.07 * 100 equals 7;
 * - halves are rounded away from zero, so round(2.5) is 3 and round(-2.5) is -3.
 */
const relativeTolerance = 1e-12;
const absoluteTolerance = 1e-15;

/** True where two finite numbers are equal but for rounding errors: `isNear(0.1 + 0.2, 0.3)` is true. */
export function isNear(left: number, right: number): boolean {
  if (left === right) return true;
  const larger = Math.max(Math.abs(left), Math.abs(right));
  return Math.abs(left - right) <= Math.max(relativeTolerance * larger, absoluteTolerance);
}

/** The nearest whole number, halves away from zero: `roundHalfAway(-2.5)` is -3. */
export function roundHalfAway(value: number): number {
  return value < 0 ? -Math.round(-value) : Math.round(value);
}

/** The largest whole number not above `value`, which counts as whole when it is near one: `floorNear(0.29 * 100)` is 29. */
export function floorNear(value: number): number {
  return nearestOr(Math.floor(value), value);
}

/** The smallest whole number not below `value`, which counts as whole when it is near one: `ceilNear(0.07 * 100)` is 7. */
export function ceilNear(value: number): number {
  return nearestOr(Math.ceil(value), value);
}

/** From 5e11 on a number can be near both of its neighbours: `whole` then says more than the nearest. */
function nearestOr(whole: number, value: number): number {
  const nearest = roundHalfAway(value);
  return isNear(value, nearest) && !isNear(value, whole) ? nearest : whole;
}

/**
 * The number without the noise of binary fractions: `withoutNoise(73.79999999999998)` is 73.8. One that is no decimal
 * of nine places stays as it is.
 */
export function withoutNoise(value: number): number {
  const short = Math.round(value * 1e9) / 1e9;
  return Number.isFinite(short) && isNear(value, short) ? short : value;
}

/**
 * What is left of `held` when `given` comes to it and `taken` goes; exactly nothing where only rounding errors are left,
 * so that giving everything away leaves neither a trace nor a debt.
 */
export function handOn(held: number, given: number, taken: number): number {
  const left = held + (given - taken);
  const largest = Math.max(Math.abs(held), Math.abs(given), Math.abs(taken));
  return Math.abs(left) <= relativeTolerance * largest ? 0 : left;
}

/** A number as cells hold it: zero without a sign, and NaN for whatever is not finite. */
export function plainNumber(value: number): number {
  return Number.isFinite(value) ? value + 0 : Number.NaN;
}
