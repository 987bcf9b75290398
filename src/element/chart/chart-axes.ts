import { nice, ticks } from 'd3-array';
import type { ChartInput } from './chart-options.js';

/** A value with its place on an axis, as a share of the axis from its start. */
export interface Tick {
  readonly value: number;
  readonly at: number;
}

export interface InputAxis {
  /** The place of each value of the input, as a share of the width. */
  readonly positions: readonly number[];
  readonly ticks: readonly Tick[];
  readonly place: (value: number) => number;
}

export interface ValueAxis {
  readonly ticks: readonly Tick[];
  /** Share of the height from the ground; NaN for NaN. */
  readonly place: (value: number) => number;
}

const tickCount = 4;

/** Numbers stand to scale with ticks at round ones; choices have bands of one width, each with its tick in the middle. */
export function inputAxis({
  values,
  isChoice,
  marked: given,
}: Pick<ChartInput, 'values' | 'isChoice' | 'marked'>): InputAxis {
  const [first = 0, last = 0] = [values[0], values.at(-1)];
  const scale = isChoice ? (value: number) => (values.indexOf(value) + 0.5) / values.length : linear(first, last);
  const marked = given ?? (isChoice ? values : ticks(first, last, tickCount));
  return { positions: values.map(scale), ticks: marked.map((value) => ({ value, at: scale(value) })), place: scale };
}

/**
 * An axis from round number to round number over all values. It begins at zero, except where the values lie so far from it
 * and so far apart that their differences would be lost.
 *
 * @param rows the values by series; NaN counts for nothing.
 * @param isGrounded whether it begins at zero in any case.
 */
export function valueAxis(rows: readonly ArrayLike<number>[], isGrounded: boolean): ValueAxis {
  let [least, most] = [Infinity, -Infinity];
  for (const row of rows)
    for (let index = 0; index < row.length; index += 1) {
      const value = row[index];
      if (value === undefined || !Number.isFinite(value)) continue;
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
  if (least > most) [least, most] = [0, 1];
  if (isGrounded || !isFarFromZero(least, most)) [least, most] = [Math.min(least, 0), Math.max(most, 0)];
  if (most - least < 1e-9) most = least + 1;
  const [start, end] = nice(least, most, tickCount);
  const place = linear(start, end);
  return { ticks: ticks(start, end, tickCount).map((value) => ({ value, at: place(value) })), place };
}

/** All in the farther half of the axis; what hardly moves (by less than a hundredth) shall look so. */
function isFarFromZero(least: number, most: number): boolean {
  const [near, far] = least > 0 ? [least, most] : [-most, -least];
  return near > far / 2 && far - near > far / 100;
}

/** A range without length has its only value in the middle. */
function linear(start: number, end: number): (value: number) => number {
  return (value) => (start === end ? 0.5 : (value - start) / (end - start));
}

/** The index of the value of the input that is nearest to a place. */
export function nearestIndex(positions: readonly number[], at: number): number {
  return positions.reduce((best, position, index) => {
    const isNearer = Math.abs(position - at) < Math.abs((positions[best] ?? 0) - at);
    return isNearer ? index : best;
  }, 0);
}
