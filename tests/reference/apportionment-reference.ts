/**
 * Sainte-Laguë's method by the table of quotients: every weight is divided by 1, 3, 5, ..., and the seats go to the
 * largest quotients of the whole table. Equal quotients go to whoever comes first in `tieOrder` (a list of indexes).
 *
 * Weights are whole numbers; quotients are compared by cross-multiplying, so nothing is lost to division.
 * Source: Balinski ML, Young HP. Fair Representation, 2nd ed. 2001; Pukelsheim F. Proportional Representation. 2017.
 */
export function apportionByQuotients(
  weights: readonly number[],
  seats: number,
  tieOrder: readonly number[],
): readonly number[] {
  assertExact(weights, 2 * seats);
  const quotients = weights.flatMap((weight, index) =>
    weight === 0 ? [] : Array.from({ length: seats }, (_, held) => ({ index, weight, divisor: 2 * held + 1 })),
  );
  quotients.sort(
    (one, other) =>
      other.weight * one.divisor - one.weight * other.divisor ||
      tieOrder.indexOf(one.index) - tieOrder.indexOf(other.index),
  );
  const winners = quotients.slice(0, seats);
  return weights.map((_, index) => winners.filter((winner) => winner.index === index).length);
}

/**
 * Hamilton's method of largest remainders, here only to show what it does to a week when an hour is added.
 *
 * Source: as above. Leftover seats go to the largest remainders, equal ones to the lower index. `atLeast` seats go to
 * everyone first; who would not have had them by quota takes no part in the remainders.
 */
export function apportionByRemainders(weights: readonly number[], seats: number, atLeast = 0): readonly number[] {
  assertExact(weights, seats);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const lower = lowerQuotas(weights, seats);
  const floors = lower.map((floor) => Math.max(floor, atLeast));
  const left = seats - floors.reduce((sum, floor) => sum + floor, 0);
  const remainders = weights
    .map((weight, index) => ({ index, remainder: (weight * seats) % total }))
    .filter(({ index }) => lower[index] === floors[index])
    .sort((one, other) => other.remainder - one.remainder || one.index - other.index);
  const lucky = new Set(remainders.slice(0, left).map(({ index }) => index));
  return floors.map((floor, index) => floor + (lucky.has(index) ? 1 : 0));
}

/** Each exact share of the seats, rounded down. */
export function lowerQuotas(weights: readonly number[], seats: number): readonly number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => (weight * seats - ((weight * seats) % total)) / total);
}

function assertExact(weights: readonly number[], factor: number): void {
  for (const weight of weights) {
    if (!Number.isInteger(weight) || weight < 0 || !Number.isSafeInteger(weight * factor)) {
      throw new RangeError(`The reference needs whole weights that stay exact, not ${String(weight)}`);
    }
  }
}
