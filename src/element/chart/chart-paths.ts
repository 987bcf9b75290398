import type { Layer } from './chart-layers.js';

/** The drawing is so many units wide and high, whatever its size on the screen; whole ones are fine enough. */
export const extent = 10_000;

/** A share of the drawing in its units. */
export const units = (share: number): number => Math.round(share * extent);

export interface Placing {
  /** Of each value of the input, as a share of the width. */
  readonly positions: readonly number[];
  /** Whether values hold from halfway to the value before until halfway to the next. */
  readonly isStepped: boolean;
  /** Of a value, as a share of the height from the ground. */
  readonly place: (value: number) => number;
}

/** The `d` of a line, or of an area with its lower edge; a part without values is left out. */
export function pathOf({ upper, lower }: Layer, { positions, isStepped, place }: Placing): string {
  // Built up as text: this runs for every value while somebody drags a slider.
  let [path, top, bottom] = ['', '', ''];
  const end = (): void => {
    // A point alone becomes a line without length, which round ends show as a dot.
    if (top !== '') path += `M${top}${bottom}${lower || !top.includes('L') ? 'Z' : ''}`;
    top = bottom = '';
  };
  const add = (at: number, index: number): void => {
    const x = units(at);
    top += `${top && 'L'}${x},${height(upper, index)}`;
    if (lower) bottom = `L${x},${height(lower, index)}${bottom}`;
  };
  const height = (values: ArrayLike<number>, index: number): number => units(1 - place(values[index] ?? NaN));
  positions.forEach((at, index) => {
    if (!Number.isFinite(upper[index]) || (lower && !Number.isFinite(lower[index]))) end();
    else if (!isStepped) add(at, index);
    else {
      add(edge(positions, index - 1), index);
      add(edge(positions, index), index);
    }
  });
  end();
  return path;
}

/** Where the step of a value ends: halfway to the next. The first begins at the left edge, the last ends at the right one. */
function edge(positions: readonly number[], index: number): number {
  const [here = 0, next] = [positions[index], positions[index + 1]];
  return index < 0 ? 0 : next === undefined ? 1 : (here + next) / 2;
}
