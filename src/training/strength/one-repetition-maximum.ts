/**
 * The heaviest weight that can be lifted once, from a set taken as far as it goes, by Epley (1985): weight times
 * (1 + repetitions / 30). One repetition is the maximum itself, where the bare equation would add a thirtieth.
 *
 * @returns kilograms; meant for 1 to 10 repetitions, see `most_repetitions` of a method.
 * @example epley(100, 10) // 133.33…
 */
export function epley(kilograms: number, repetitions: number): number {
  return repetitions === 1 ? kilograms : kilograms * (1 + repetitions / 30);
}

/**
 * The same by Brzycki (1993): weight times 36 / (37 − repetitions). Below 10 repetitions it is lower than Epley's, at
 * 10 both are equal.
 *
 * @example brzycki(100, 10) // 133.33…
 */
export function brzycki(kilograms: number, repetitions: number): number {
  return (kilograms * 36) / (37 - repetitions);
}
