import type { ChartSeries } from './chart-options.js';

/** A series as it is drawn: its upper edge, and its lower one where it is an area. NaN where there is a gap. */
export interface Layer {
  readonly upper: ArrayLike<number>;
  readonly lower: ArrayLike<number> | null;
}

/**
 * The series as lines, or as areas that stand on one another. Where one area has no value, all have a gap: what lies above
 * it would be in the wrong place.
 */
export function layersOf(kind: 'lines' | 'areas', series: readonly ChartSeries[]): Layer[] {
  if (kind === 'lines') return series.map(({ values }) => ({ upper: values, lower: null }));
  const count = series[0]?.values.length ?? 0;
  const isWhole = Array.from({ length: count }, (_, index) => series.every(({ values }) => isFinite(values[index])));
  let ground = isWhole.map((whole) => (whole ? 0 : NaN));
  return series.map(({ values }) => {
    const lower = ground;
    const upper = lower.map((below, index) => below + (values[index] ?? NaN));
    ground = upper;
    return { upper, lower };
  });
}

const isFinite = (value: number | undefined): boolean => Number.isFinite(value);
