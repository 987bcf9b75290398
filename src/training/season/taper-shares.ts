/**
 * How much of the weeks before it each week of a taper keeps: the same part of the week before each time, so that all of
 * its weeks together lose the drop. Falling by steps like this is what the reviews call an exponential taper.
 *
 * @param weeks whole weeks, 0 or more.
 * @param drop the part of the volume that the whole taper loses, from 0 to less than 1.
 * @returns a share for each week, falling; their mean is 1 − drop.
 * @source Bosquet et al. 2007, doi:10.1249/mss.0b013e31806010e0; the distribution over weeks is an assumption.
 * @example taperShares(1, 0.5) // [0.5]
 */
export function taperShares(weeks: number, drop: number): readonly number[] {
  const powers = (ratio: number): number[] => Array.from({ length: weeks }, (_, index) => ratio ** (index + 1));
  const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / weeks;
  let [low, high] = [0, 1];
  // The mean rises with the ratio: half the interval goes with each turn, and 60 turns leave nothing to tell apart.
  for (let turn = 0; turn < 60; turn += 1) {
    const middle = (low + high) / 2;
    if (mean(powers(middle)) < 1 - drop) low = middle;
    else high = middle;
  }
  return powers(high);
}
