/**
 * Shares out whole seats in proportion to weights by Sainte-Laguë's method (Webster's): each seat goes where
 * weight / (2 × seats held + 1) is largest. Unlike the largest-remainder method it never takes a seat from anybody when
 * there are more seats to share (Balinski and Young, Fair Representation, 2nd ed., Brookings 2001).
 *
 * @param weights finite and not negative; a weight of zero gets no seat.
 * @param seats a whole number, 0 or more.
 * @param tieOrder indexes of `weights`; of equal claims the one that stands first here is served first.
 * @returns seats for each weight; all zero where there is no weight.
 * @example apportion([503, 304, 193], 35, [0, 1, 2]) // [17, 11, 7]
 */
export function apportion(weights: readonly number[], seats: number, tieOrder: readonly number[]): number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  if (total === 0) return weights.map(() => 0);
  const held = startBelow(weights, seats / total);
  for (let left = seats - held.reduce((sum, count) => sum + count, 0); left > 0; left -= 1) {
    const winner = strongestClaim(weights, held, tieOrder);
    held[winner] = (held[winner] ?? 0) + 1;
  }
  return held;
}

/**
 * Seats that each weight is sure to win, so that only a few are left to be awarded one by one. A weight can fall short
 * of its exact share by at most half a seat for itself and for each other weight that is rounded up at its cost.
 */
function startBelow(weights: readonly number[], seatsPerWeight: number): number[] {
  const shortfall = Math.ceil((weights.length + 1) / 2);
  return weights.map((weight) => Math.max(0, Math.floor(weight * seatsPerWeight) - shortfall));
}

function strongestClaim(weights: readonly number[], held: readonly number[], tieOrder: readonly number[]): number {
  return tieOrder.reduce((best, index) => {
    const [weight = 0, seats = 0] = [weights[index], held[index]];
    const [bestWeight = 0, bestSeats = 0] = [weights[best], held[best]];
    // Products instead of quotients: equal claims compare as equal.
    return isStronger(weight * (2 * bestSeats + 1), bestWeight * (2 * seats + 1)) ? index : best;
  });
}

/** Claims that differ by rounding errors only are a tie. */
function isStronger(claim: number, other: number): boolean {
  return claim - other > 1e-9 * Math.max(claim, other);
}
