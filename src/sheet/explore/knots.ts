import { bisect } from './bisect.js';
import type { Curve, Knot } from './curve.js';
import { samplesOf } from './grid.js';

/**
 * Places along a curve that tell its course, in order: samples, both sides of every border given and of every failing
 * stretch, and the places between samples where it comes to the target and turns back.
 */
export function knotsOf(curve: Curve, borders: readonly number[]): Knot[] {
  const places = [...new Set([...samplesOf(curve.input), ...borders])].sort((left, right) => left - right);
  const knots = places.map((at) => curve.look(at));
  if (curve.input.isChoice) return knots;
  const whole = knots.flatMap((knot, index) => [...edgeOfFailure(curve, knots[index - 1], knot), knot]);
  return whole.flatMap((knot, index) => {
    const [before, after] = [whole[index - 1], whole[index + 1]];
    return knot.gap === 0 ? besideTarget(curve, knot, { before, after }) : turnAround(curve, knot, { before, after });
  });
}

interface Neighbours {
  readonly before: Knot | undefined;
  readonly after: Knot | undefined;
}

/** A knot on target with places close by, which tell on what side the curve leaves it. */
function besideTarget(curve: Curve, knot: Knot, { before, after }: Neighbours): Knot[] {
  const distance = curve.input.step / 1e4;
  const isFree = (neighbour: Knot | undefined): boolean =>
    neighbour !== undefined && neighbour.gap !== 0 && Math.abs(neighbour.at - knot.at) > distance;
  return [
    ...(isFree(before) ? [curve.look(knot.at - distance)] : []),
    knot,
    ...(isFree(after) ? [curve.look(knot.at + distance)] : []),
  ];
}

/** The last places on both sides of the border between a failing stretch and another. */
function edgeOfFailure(curve: Curve, before: Knot | undefined, knot: Knot): Knot[] {
  if (!before || Number.isNaN(before.gap) === Number.isNaN(knot.gap)) return [];
  const fails = (at: number): boolean => Number.isNaN(curve.valueAt(at));
  const isAbove = Number.isNaN(knot.gap) ? fails : (at: number) => !fails(at);
  const { below, above } = bisect({ below: before.at, above: knot.at }, isAbove);
  return [below, above].filter((at) => at !== before.at && at !== knot.at).map((at) => curve.look(at));
}

/** A knot, and beside it the nearest place to the target if the curve can reach or cross it between the samples. */
function turnAround(curve: Curve, knot: Knot, { before, after }: Neighbours): Knot[] {
  if (!before || !after || !mayTouch(before, knot, after)) return [knot];
  const turn = closest(curve, [before, knot, after]);
  return turn.at === knot.at ? [knot] : turn.at < knot.at ? [turn, knot] : [knot, turn];
}

/** True where the middle knot is the nearest of three on one side of the target, and no further than they lie apart. */
function mayTouch(before: Knot, middle: Knot, after: Knot): boolean {
  const side = Math.sign(middle.gap);
  if (side === 0 || Math.sign(before.gap) !== side || Math.sign(after.gap) !== side) return false;
  const [left, right] = [side * (before.gap - middle.gap), side * (after.gap - middle.gap)];
  return left >= 0 && right >= 0 && Math.abs(middle.gap) <= 2 * Math.max(left, right);
}

const goldenPart = (3 - Math.sqrt(5)) / 2;

/** The place nearest to the target between two knots, where a third between them is nearer than both. */
export function closest(curve: Curve, [before, middle, after]: readonly [Knot, Knot, Knot]): Knot {
  let [low, best, high] = [before.at, middle, after.at];
  const finest = 1e-10 * Math.max(Math.abs(best.at), curve.input.step);
  while (high - low > finest && best.gap !== 0) {
    const isLeftLonger = best.at - low > high - best.at;
    const at = isLeftLonger ? best.at - goldenPart * (best.at - low) : best.at + goldenPart * (high - best.at);
    const probe = curve.look(at);
    // It has crossed the target: the curve is cut in two there.
    if (probe.gap * best.gap < 0) return probe;
    const isBetter = Math.abs(probe.gap) < Math.abs(best.gap);
    if (isBetter) [low, best, high] = isLeftLonger ? [low, probe, best.at] : [best.at, probe, high];
    else [low, high] = isLeftLonger ? [at, high] : [low, at];
  }
  return best;
}
