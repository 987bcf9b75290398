import { isNear, withoutNoise } from '../numbers.js';
import { bisect, type Bracket } from './bisect.js';
import { Curve, type Knot } from './curve.js';
import type { Flip } from './flips.js';
import { nextOnGrid } from './grid.js';
import { closest } from './knots.js';
import { plainPlace, reachAt } from './plainest.js';
import { isFar, solutionOf } from './solutions.js';

/**
 * Why no input comes nearer to the target. `switches` are those that start or stop at that place; `before` and `after`
 * are the measure just under and just over a jump at the input `at`.
 */
export type Because =
  | { readonly kind: 'end'; readonly end: 'least' | 'most' }
  | {
      readonly kind: 'jump';
      readonly at: number;
      readonly before: number;
      readonly after: number;
      readonly switches: readonly string[];
    }
  | { readonly kind: 'extremum'; readonly switches: readonly string[] }
  | { readonly kind: 'failure' }
  | { readonly kind: 'choice' }
  | { readonly kind: 'constant' };

/** The input at which a measure comes nearest to a target that it never has; of equally good ones the first. */
export interface Nearest {
  readonly at: number;
  readonly value: number;
  /** False where the measure is at `value` not at `at` itself but only right beside it. */
  readonly isReached: boolean;
  readonly because: Because;
}

/** The nearest place on a curve without solutions; null where the measure fails everywhere. */
export function nearestAlong(curve: Curve, knots: readonly Knot[], flips: readonly Flip[]): Nearest | null {
  const seen = curve.nearest;
  if (seen === null) return null;
  const [at, value] = [seen.at, withoutNoise(seen.value)];
  const isConstant = knots.every((knot) => Number.isNaN(knot.value) || isNear(knot.value, value));
  if (isConstant) return { at, value, isReached: true, because: { kind: 'constant' } };
  if (curve.input.isChoice) return { at, value, isReached: true, because: { kind: 'choice' } };
  for (const valley of deepestValleys(knots)) closest(curve, valley);
  const best = plainBest(curve, curve.nearest ?? seen);
  const gap = (place: number): number => Math.abs(curve.valueAt(place) - curve.target);
  const over = curve.jumps.find(
    (jump) => Math.min(gap(jump.below), gap(jump.above)) <= (1 + 1e-9) * Math.abs(best.gap),
  );
  const broken = over ?? breakBeside(curve, best);
  return broken ? atBreak(curve, broken, flips) : onStretch(curve, [...knots, best], { best, flips });
}

/** Three knots of which the middle one is the nearest to the target. */
type Valley = readonly [Knot, Knot, Knot];

/** Where it is worth looking closer: between its samples one valley may be deeper than another that seemed the best. */
function deepestValleys(knots: readonly Knot[]): Valley[] {
  const depth = ([, { gap }]: Valley): number => Math.abs(gap);
  const valleys = knots.slice(2).map((after, index): Valley => [knots[index]!, knots[index + 1]!, after]);
  return valleys
    .filter(([before, middle, after]) => {
      const [left, right] = [before, after].map(({ gap }) => Math.abs(gap) - Math.abs(middle.gap));
      return left! >= 0 && right! >= 0 && left! + right! > 0;
    })
    .sort((one, other) => depth(one) - depth(other))
    .slice(0, 8);
}

/** The plain place beside the best one, unless the measure is worse there by more than what tolerances give and take. */
function plainBest(curve: Curve, best: Knot): Knot {
  const plain = curve.look(plainPlace(best.at, curve.input));
  const loss = Math.abs(plain.gap) - Math.abs(best.gap);
  return loss <= 1e-9 * Math.abs(best.value) ? plain : best;
}

/** Where the curve breaks off right beside a place: in a jump, or because the measure fails. */
function breakBeside(curve: Curve, best: Knot): Bracket | null {
  const breaks = (at: number): boolean => isFar(curve, best, curve.valueAt(at));
  const { least, most } = curve.input;
  const reach = 4 * reachAt(best.at, curve.input);
  const [low, high] = [Math.max(least, best.at - reach), Math.min(most, best.at + reach)];
  if (breaks(high)) return bisect({ below: best.at, above: high }, breaks);
  return breaks(low) ? bisect({ below: low, above: best.at }, (at) => !breaks(at)) : null;
}

function atBreak(curve: Curve, { below, above }: Bracket, flips: readonly Flip[]): Nearest {
  const border = plainPlace(above, curve.input);
  const plain = curve.valueAt(border);
  const settle = (at: number): number => {
    const value = curve.valueAt(at);
    return withoutNoise(isFar(curve, { at, value }, plain) ? value : plain);
  };
  const [before, after] = [settle(below), settle(above)];
  const gap = (value: number): number => (Number.isNaN(value) ? Infinity : Math.abs(value - curve.target));
  const isAfter = gap(after) < gap(before);
  const value = isAfter ? after : before;
  const step = nextOnGrid(curve.input, border, isAfter ? 1 : -1) ?? border;
  const at = [border, step].find((place) => isNear(curve.valueAt(place), value));
  const isFailure = Number.isNaN(before) || Number.isNaN(after);
  const because: Because = isFailure
    ? { kind: 'failure' }
    : { kind: 'jump', at: border, before, after, switches: switchesAt(curve, border, flips) };
  return { at: at ?? border, value, isReached: at !== undefined, because };
}

/** Where the curve comes nearest without a break: at a turn, all along a flat run, or at the end of the range. */
function onStretch(
  curve: Curve,
  knots: readonly Knot[],
  { best, flips }: { best: Knot; flips: readonly Flip[] },
): Nearest {
  const { input } = curve;
  const goal = new Curve(input, best.value, curve.valueAt);
  const places = [...new Set(knots.map(({ at }) => at))].sort((left, right) => left - right).map((at) => goal.look(at));
  const first = places.findIndex(({ at }) => at === best.at);
  const end = places.findIndex(({ gap }, index) => index > first && gap !== 0);
  const last = end < 0 ? places.length - 1 : end - 1;
  const run = { before: places[first - 1], first: places[first]!, last: places[last]!, after: places[last + 1] };
  const [stretch] = solutionOf(goal, run);
  const from = stretch?.from ?? best.at;
  const next = stretch?.includesFrom === false ? nextOnGrid(input, from, 1) : from;
  const at = next !== null && isNear(curve.valueAt(next), best.value) ? next : best.at;
  const isFlat = stretch !== undefined && stretch.from < stretch.to;
  const atEnd = at === input.least ? 'least' : at === input.most ? 'most' : null;
  const because: Because =
    atEnd && !isFlat ? { kind: 'end', end: atEnd } : { kind: 'extremum', switches: switchesAt(curve, from, flips) };
  return { at, value: withoutNoise(curve.valueAt(at)), isReached: true, because };
}

function switchesAt({ input }: Curve, at: number, flips: readonly Flip[]): string[] {
  const reach = 8 * reachAt(at, input);
  return [...new Set(flips.filter(({ above }) => Math.abs(above - at) <= reach).map(({ control }) => control.id))];
}
