/** How a strength session goes with the week's running. */
export interface LegDay {
  readonly legs: 'full' | 'spared';
  /** Which list of patterns it takes, from 0 for the one with the heaviest legs. */
  readonly list: number;
}

const week = 7;

/**
 * Spreads heavy legs over the strength sessions of a week that comes round again: the session with most days before
 * the next hard run takes the first list, and legs are spared on the day of a hard run and on so many days before one.
 * Where both fall on one day the run comes first; legs that have just run hard are spared all the same.
 *
 * @param days of the sessions, 0 for Monday; null while they are not laid on days: then nothing is known to spare for.
 * @param hardDays with a hard run.
 */
export function spreadLegs(
  days: readonly (number | null)[],
  hardDays: readonly number[],
  daysBefore: number,
): readonly LegDay[] {
  const gaps = days.map((day) => daysToNext(day, hardDays));
  const roomiestFirst = gaps.map((gap, index) => ({ gap, index })).sort((one, other) => other.gap - one.gap);
  return gaps.map((gap, index) => ({
    legs: gap <= daysBefore ? 'spared' : 'full',
    list: roomiestFirst.findIndex((each) => each.index === index),
  }));
}

function daysToNext(day: number | null, hardDays: readonly number[]): number {
  if (day === null) return week;
  return Math.min(week, ...hardDays.map((hard) => (hard - day + week) % week));
}
