import { inputAxis, valueAxis, type InputAxis, type ValueAxis } from './chart-axes.js';
import { endOf, insideOf, markRows, spread, type Axes, type EndPlace, type Place } from './chart-labels.js';
import { layersOf, type Layer } from './chart-layers.js';
import type { ChartMark, ChartSeries, SweepChartOptions } from './chart-options.js';
import { pathOf } from './chart-paths.js';

/** Two lines of a label at an end, the room of one inside, a mark: in shares of a picture 20 letters high (chart.styles.ts). */
const endGap = 0.12;
const insideRoom = { width: 0.5, height: 0.09, margin: 0.3 };
const leastEnd = 0.02;
const markGap = 0.11;

/** Everything that is drawn of one series. */
export interface DrawnSeries {
  readonly of: ChartSeries;
  readonly layer: Layer;
  readonly path: string;
  /** Where its label stands inside it. */
  readonly inside: Place | null;
  /** Where it ends and how high its label stands beside that, where the label has no room inside. */
  readonly end: (EndPlace & { readonly labelY: number }) | null;
}

export interface ChartPicture {
  readonly across: InputAxis;
  readonly up: ValueAxis;
  readonly series: readonly DrawnSeries[];
  readonly marks: readonly (ChartMark & { readonly x: number; readonly row: number })[];
}

/** Where everything in a chart stands, as shares of its width and height. */
export function pictureOf(options: Pick<SweepChartOptions, 'kind' | 'x' | 'series' | 'marks'>): ChartPicture {
  const { kind, x, series, marks } = options;
  const across = inputAxis(x);
  const layers = layersOf(kind, series);
  const up = valueAxis(
    layers.map(({ upper }) => upper),
    kind === 'areas',
  );
  const axes = { positions: across.positions, place: up.place };
  const found = layers.map((layer) => labelPlace(layer, axes));
  const ends = found.map(({ end }) => end);
  const labels = spread(
    ends.map((end) => end?.y ?? NaN),
    endGap,
  );
  const xs = marks.map(({ at }) => across.place(at));
  const rows = markRows(xs, markGap);
  return {
    across,
    up,
    series: series.flatMap((of, index): DrawnSeries[] => {
      const [layer, end] = [layers[index], ends[index]];
      if (!layer) return [];
      const path = pathOf(layer, { ...axes, isStepped: x.isChoice || of.steps });
      const labelled = end ? { ...end, labelY: labels[index] ?? end.y } : null;
      return [{ of, layer, path, inside: found[index]?.inside ?? null, end: labelled }];
    }),
    marks: marks.map((mark, index) => ({ ...mark, x: xs[index] ?? 0, row: rows[index] ?? 0 })),
  };
}

interface LabelPlace {
  readonly inside: Place | null;
  readonly end: EndPlace | null;
}

/** Inside an area with room; else at its end; where an area ends in nothing, inside at a place that is thick enough. */
function labelPlace(layer: Layer, axes: Axes): LabelPlace {
  const inside = insideOf(layer, axes, insideRoom);
  if (inside) return { inside, end: null };
  const end = endOf(layer, axes);
  const narrow =
    layer.lower && (end?.thickness ?? 0) < leastEnd ? insideOf(layer, axes, { ...insideRoom, width: 0 }) : null;
  return narrow ? { inside: narrow, end: null } : { inside: null, end };
}
