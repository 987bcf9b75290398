import type { Layer } from './chart-layers.js';

/** A place in the picture, as shares of its width from the left and of its height from the ground. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Where values stand: those of the input as shares of the width, those of a quantity as shares of the height. */
export interface Axes {
  readonly positions: readonly number[];
  readonly place: (value: number) => number;
}

/** A place of a last value. */
export interface EndPlace extends Place {
  /** Whether the input goes on from here, without values. */
  readonly isEarly: boolean;
  /** Of an area, as a share of the height; 0 for a line. */
  readonly thickness: number;
}

/** Where a line or an area ends: at its last value, an area in its middle; null where it has no value at all. */
export function endOf({ upper, lower }: Layer, { positions, place }: Axes): EndPlace | null {
  const last = positions.length - 1;
  for (let index = last; index >= 0; index -= 1) {
    const top = place(upper[index] ?? NaN);
    const bottom = lower ? place(lower[index] ?? NaN) : top;
    const y = (top + bottom) / 2;
    if (Number.isFinite(y)) return { x: positions[index] ?? 1, y, isEarly: index < last, thickness: top - bottom };
  }
  return null;
}

/** The room that a label inside an area needs, and the margin between its middle and the sides, as shares of the picture. */
export interface LabelRoom {
  readonly margin: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Where inside an area a label has room: as near to the middle of the picture as it may be; null where it has none.
 * Of two places, one with room to spare is preferred, so that the label stays where it is when values move a little.
 */
export function insideOf({ upper, lower }: Layer, { positions, place }: Axes, room: LabelRoom): Place | null {
  if (!lower) return null;
  const tops = Array.from(upper, place);
  const bottoms = Array.from(lower, place);
  // One value beyond either side: the edge runs on to it.
  const reach = room.width / 2 + 1 / positions.length;
  const stride = Math.ceil(positions.length / mostCandidates);
  let best: (Place & { readonly score: number }) | null = null;
  for (let index = 0; index < positions.length; index += stride) {
    const x = positions[index] ?? 0;
    if (x < room.margin || x > 1 - room.margin) continue;
    const near = (_: number, other: number): boolean => Math.abs((positions[other] ?? 0) - x) <= reach;
    const top = Math.min(...tops.filter(near));
    const bottom = Math.max(...bottoms.filter(near));
    const spare = Math.min((top - bottom) / room.height, 2);
    const score = spare - Math.abs(x - 0.5);
    if (spare >= 1 && score > (best?.score ?? -Infinity)) best = { x, y: (top + bottom) / 2, score };
  }
  return best && { x: best.x, y: best.y };
}

/** Places along an area that are tried for its label: as many as one could tell apart. */
const mostCandidates = 24;

/**
 * Moves labels apart that would touch, in the order of the places wished for, and keeps them within 0 and 1.
 *
 * @param wished NaN for a label that there is not.
 * @param gap least distance between two labels, as a share; less where so many do not fit.
 * @example spread([0.5, 0.5], 0.2) // [0.5, 0.7]
 */
export function spread(wished: readonly number[], gap: number): number[] {
  const order = [...wished.keys()]
    .filter((index) => !Number.isNaN(wished[index]))
    .sort((one, other) => (wished[one] ?? 0) - (wished[other] ?? 0));
  const fitting = Math.min(gap, 1 / Math.max(1, order.length - 1));
  const places = [...wished];
  let least = 0;
  for (const index of order) {
    places[index] = Math.max(places[index] ?? 0, least);
    least = places[index] + fitting;
  }
  let most = 1;
  for (const index of order.reverse()) {
    places[index] = Math.min(places[index] ?? 0, most);
    most = places[index] - fitting;
  }
  return places;
}

/**
 * A row for each mark, counted from 0, so that no two in a row are nearer than the gap.
 *
 * @example markRows([0.2, 0.21, 0.5], 0.1) // [0, 1, 0]
 */
export function markRows(places: readonly number[], gap: number): number[] {
  const lastInRow: number[] = [];
  const rows = places.map(() => 0);
  const order = places.map((place, index) => ({ place, index })).sort((one, other) => one.place - other.place);
  for (const { place, index } of order) {
    const free = lastInRow.findIndex((last) => place - last >= gap);
    const row = free < 0 ? lastInRow.length : free;
    lastInRow[row] = place;
    rows[index] = row;
  }
  return rows;
}
