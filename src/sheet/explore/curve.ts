import type { Column } from '../column.js';
import { isNear } from '../numbers.js';
import type { Bracket } from './bisect.js';
import type { InputRange } from './grid.js';
import { measureOn, type Measure } from './measure.js';

/** A place on a curve. */
export interface Knot {
  readonly at: number;
  /** The measure there, NaN where it fails. */
  readonly value: number;
  /** The measure less the target, 0 where the two are equal but for rounding errors, NaN where the measure fails. */
  readonly gap: number;
}

/** A measure along an input, held against a target. It remembers the place it saw that is nearest to the target. */
export class Curve {
  readonly input: InputRange;
  readonly target: number;
  /** The nearest place so far, of equally near ones the first of the range; null where the measure always failed. */
  nearest: Knot | null = null;
  failsSomewhere = false;
  /** Where it jumps over the target. */
  readonly jumps: Bracket[] = [];
  /** The measure at a value of the input, NaN where it fails. */
  readonly valueAt: (at: number) => number;

  constructor(input: InputRange, target: number, valueAt: (at: number) => number) {
    this.input = input;
    this.target = target;
    this.valueAt = valueAt;
  }

  look(at: number): Knot {
    const value = this.valueAt(at);
    const knot = { at, value, gap: isNear(value, this.target) ? 0 : value - this.target };
    if (Number.isNaN(value)) this.failsSomewhere = true;
    else if (this.nearest === null || isNearer(knot, this.nearest)) this.nearest = knot;
    return knot;
  }
}

/** A measure along an input, on a copy of a column. Throws for a name that the sheet does not have. */
export function measureAlong(column: Column, input: InputRange, measure: Measure): (at: number) => number {
  const scratch = column.copy();
  const move = scratch.mover(input.id);
  const read = measureOn(scratch, measure);
  return (at) => {
    move(at);
    const value = read(scratch);
    return Number.isFinite(value) ? value : NaN;
  };
}

function isNearer(knot: Knot, other: Knot): boolean {
  return isNear(knot.value, other.value) ? knot.at < other.at : Math.abs(knot.gap) < Math.abs(other.gap);
}
