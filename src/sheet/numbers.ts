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

/** A number as cells hold it: zero without a sign, and NaN for whatever is not finite. */
export function plainNumber(value: number): number {
  return Number.isFinite(value) ? value + 0 : Number.NaN;
}
