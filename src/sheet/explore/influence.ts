import type { Column } from '../column.js';
import { isNear, withoutNoise } from '../numbers.js';
import { nextOnGrid, type InputRange } from './grid.js';
import { measureOn, type Measure } from './measure.js';

/** What one step of one input does to a measure. */
export interface Influence {
  readonly input: string;
  /** The measure one step down less the measure now; null at the end of the range, or where the measure fails. */
  readonly down: number | null;
  /** The same for one step up. */
  readonly up: number | null;
}

/**
 * How much a measure changes when each input moves by one step, the most influential input first, of equally influential
 * ones the one that stands first among `inputs`. The column itself stays as it is. An input between two steps moves to
 * the next step.
 *
 * Throws for a name that the sheet does not have.
 *
 * @example influence(column, sheet.model.inputs, 'weekly_minutes') // [{ input: 'weekly_hours', down: -15, up: 15 }, …]
 */
export function influence(column: Column, inputs: readonly InputRange[], measure: Measure): Influence[] {
  const scratch = column.copy();
  const read = measureOn(scratch, measure);
  const now = read(scratch);
  const all = inputs.map((input): Influence => {
    const start = scratch.setting(input.id);
    const move = scratch.mover(input.id);
    const change = (direction: 1 | -1): number | null => {
      const next = nextOnGrid(input, start, direction);
      if (next === null) return null;
      move(next);
      const then = read(scratch);
      return Number.isFinite(then - now) ? changeBetween(now, then) : null;
    };
    const influence = { input: input.id, down: change(-1), up: change(1) };
    move(start);
    return influence;
  });
  return all.sort((one, other) => sizeOf(other) - sizeOf(one));
}

/** Rounding errors are no influence, and must not decide which of two equals comes first. */
function changeBetween(now: number, then: number): number {
  return isNear(now, then) ? 0 : withoutNoise(then - now);
}

const sizeOf = ({ down, up }: Influence): number => Math.max(Math.abs(down ?? 0), Math.abs(up ?? 0));
