/*
 * A single run against the longest one of the weeks before it (Schuster Brandt Frandsen et al. 2025, C05 in
 * shared/evidence): there in distance, over 30 days, as an association. Minutes and four weeks are an extrapolation.
 */

/**
 * Minutes of the longest run in the weeks before one; 0 where none is known.
 *
 * @param longest minutes of the longest run of each week up to here, 0 for none.
 * @param known minutes of the longest run in the weeks before the first; null where that is not known.
 * @example longestBefore([60, 70, 50], null, { week: 2, weeks: 4 }) // 70
 */
export function longestBefore(
  longest: readonly number[],
  known: number | null,
  { week, weeks }: { readonly week: number; readonly weeks: number },
): number {
  const beforeStart = week < weeks ? (known ?? 0) : 0;
  return Math.max(0, beforeStart, ...longest.slice(Math.max(0, week - weeks), week));
}

/**
 * Most minutes of a run after a longest one. A hair's breadth is given for rounding errors: 1.1 × 60 is 66.00000000000001.
 *
 * @example runLimit(60, 1.1) // 66
 */
export const runLimit = (before: number, most: number): number => Math.round(before * most * 1e9) / 1e9;
