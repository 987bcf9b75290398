import { withoutNoise } from '../../sheet/numbers.js';

/** How the load of a week is spread over its days. */
export interface LoadSpread {
  /** Effort times minutes of all days. */
  readonly week: number;
  /** Of a day, days of rest included. */
  readonly mean: number;
  /** Standard deviation of the seven days as a whole population. */
  readonly deviation: number;
  /** The same as of a sample: 1.08 times as large for seven days. */
  readonly sampleDeviation: number;
  /** Mean over the deviation; null where all days are alike, for it would be without bound. */
  readonly monotony: number | null;
  /** Mean over the deviation of a sample: 0.926 times as large. */
  readonly sampleMonotony: number | null;
  /** The week's load times its monotony. */
  readonly strain: number | null;
}

/**
 * The load of a week, its monotony and its strain; the population form of the standard deviation, for the seven days are
 * all the days there are.
 *
 * @param daily effort times minutes of each day, 0 for a day of rest.
 * @source Foster C. Med Sci Sports Exerc 1998;30(7):1164–1168 (D01, D02 in shared/evidence); the abstract does not say
 *   which form of the deviation.
 * @example loadSpread([300, 0, 420, 240, 0, 600, 360]).monotony // 1.3546…
 */
export function loadSpread(daily: readonly number[]): LoadSpread {
  const days = daily.length;
  const week = daily.reduce((sum, load) => sum + load, 0);
  const mean = week / days;
  // Where all days are alike, rounding errors of the mean are no deviation.
  const isAlike = daily.every((load) => load === daily[0]);
  const squares = isAlike ? 0 : daily.reduce((sum, load) => sum + (load - mean) ** 2, 0);
  const deviation = withoutNoise(Math.sqrt(squares / days));
  const sampleDeviation = withoutNoise(Math.sqrt(squares / (days - 1)));
  const monotony = deviation === 0 ? null : mean / deviation;
  return {
    week,
    mean,
    deviation,
    sampleDeviation,
    monotony,
    sampleMonotony: sampleDeviation === 0 ? null : mean / sampleDeviation,
    strain: monotony === null ? null : week * monotony,
  };
}
