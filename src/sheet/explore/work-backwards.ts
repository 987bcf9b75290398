import type { Column } from '../column.js';
import { Curve, measureAlong, type Knot } from './curve.js';
import { flipsOn, SwitchBoard } from './flips.js';
import type { InputRange } from './grid.js';
import { knotsOf } from './knots.js';
import type { Measure } from './measure.js';
import { nearestAlong, type Nearest } from './nearest.js';
import { solutionsAlong, type Solution } from './solutions.js';
import type { Switch } from './switches.js';

/** What a person wants to know: where the measure is at the target. */
export interface Question {
  readonly measure: Measure;
  readonly target: number;
  /** Switches to look out for: the measure can jump where they turn, and the answer names them. */
  readonly switches?: readonly Switch[];
}

/** All inputs that answer a question or, where there are none, the one that comes nearest and why it is no answer. */
export interface WorkedBack {
  readonly solutions: readonly Solution[];
  /** Null where there are solutions, and where the measure fails everywhere. */
  readonly nearest: Nearest | null;
  readonly failsSomewhere: boolean;
}

/**
 * Finds every value in an input's range at which a measure is at a target; the column itself stays as it is.
 *
 * A choice is answered by its steps. For other inputs single answers and the ends of stretches are right to 1e-9 of the
 * value, and the plainest numbers so close. Equal is what the sheet counts as equal (1e-12). What lies between two
 * neighbouring samples (an eighth of a step, in the usual range) is found where the measure is on different sides of the
 * target there or bends towards it; a shorter excursion that leaves no trace in the samples can be missed. A measure
 * that runs into a flat run smoothly counts as flat from where it is equal.
 *
 * Throws for a name that the sheet does not have, and for a target that is no number.
 *
 * @example workBackwards(column, weeklyHours, { measure: 'strength_minutes', target: 90 })
 *   // solutions: [{ from: 5, to: 5, includesFrom: true, includesTo: true }]
 */
export function workBackwards(column: Column, input: InputRange, question: Question): WorkedBack {
  const { measure, target, switches = [] } = question;
  if (!Number.isFinite(target)) throw new Error(`${target} is no target`);
  const curve = new Curve(input, target, measureAlong(column, input, measure));
  const flips = flipsOn(new SwitchBoard(column, input, switches), input);
  const borders = flips.flatMap(({ below, above }) => [below, above]);
  const knots = knotsOf(curve, borders);
  const solutions = input.isChoice ? knots.flatMap(stepSolution) : solutionsAlong(curve, knots);
  const nearest = solutions.length > 0 ? null : nearestAlong(curve, knots, flips);
  return { solutions, nearest, failsSomewhere: curve.failsSomewhere };
}

function stepSolution({ at, gap }: Knot): Solution[] {
  return gap === 0 ? [{ from: at, to: at, includesFrom: true, includesTo: true }] : [];
}
