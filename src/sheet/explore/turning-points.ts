import type { Column } from '../column.js';
import { flipsOn, SwitchBoard } from './flips.js';
import type { InputRange } from './grid.js';
import { plainPlace } from './plainest.js';
import type { Switch } from './switches.js';

/** An input value at which a switch starts or stops being on. */
export interface TurningPoint {
  readonly id: string;
  readonly at: number;
  readonly starts: boolean;
  /** True where the new state holds at `at` itself ("from 6 h"), false where it holds only beyond it ("above 6 h"). */
  readonly includes: boolean;
}

/**
 * Where, on the way up through an input's range, switches start and stop; the column itself stays as it is.
 *
 * For a choice exact to the step. For other inputs to 1e-9 of the value, and the plainest number so close (7.5, not
 * 7.4999999999). What a switch does between two neighbouring samples (an eighth of a step, in the usual range) is seen
 * only where it is not undone before the second: a stretch shorter than that, without a step in it, can be missed.
 *
 * @example turningPoints(column, weeklyHours, ruleSwitches(sheet))
 *   // [{ id: 'strength-cap', at: 6, starts: true, includes: false }]: the cap acts above six hours
 */
export function turningPoints(column: Column, input: InputRange, switches: readonly Switch[]): TurningPoint[] {
  const board = new SwitchBoard(column, input, switches);
  return flipsOn(board, input).map(({ control, above, starts }) => {
    const at = input.isChoice ? above : plainPlace(above, input);
    return { id: control.id, at, starts, includes: board.isOn(control, at) === starts };
  });
}
