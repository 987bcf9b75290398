import { isNear } from '../numbers.js';
import { bisect, middleOf } from './bisect.js';
import type { Curve, Knot } from './curve.js';
import { plainPlace, reachAt } from './plainest.js';

/** Input values at which a measure has its target: a single one, where `from` is `to`, or all of a stretch. */
export interface Solution {
  readonly from: number;
  readonly to: number;
  readonly includesFrom: boolean;
  readonly includesTo: boolean;
}

/** Knots next to each other that are on target, and the ones before and after them that are not. */
export interface Run {
  readonly before: Knot | undefined;
  readonly first: Knot;
  readonly last: Knot;
  readonly after: Knot | undefined;
}

/** A change between neighbouring numbers larger than this, as a part of the measure, is a jump. */
const smallestJump = 1e-9;

/** Every solution along the knots of a curve, in order. */
export function solutionsAlong(curve: Curve, knots: readonly Knot[]): Solution[] {
  const solutions: Solution[] = [];
  for (let index = 0; index < knots.length; index += 1) {
    const knot = knots[index]!;
    const before = knots[index - 1];
    if (knot.gap === 0) {
      let last = index;
      while (knots[last + 1]?.gap === 0) last += 1;
      solutions.push(...solutionOf(curve, { before, first: knot, last: knots[last]!, after: knots[last + 1] }));
      index = last;
    } else if (before && before.gap * knot.gap < 0) solutions.push(...crossing(curve, before, knot));
  }
  return solutions.filter((solution, index) => !isSame(solution, solutions[index - 1]));
}

/** One place found from both sides counts once. */
function isSame({ from }: Solution, before: Solution | undefined): boolean {
  return before !== undefined && before.from === before.to && isNear(before.to, from);
}

/** The solution, if there is one, between two knots on either side of the target. */
function crossing(curve: Curve, before: Knot, after: Knot): Solution[] {
  let [low, high] = [before, after];
  for (let at = middleOf(low.at, high.at); at !== null; at = middleOf(low.at, high.at)) {
    const knot = curve.look(at);
    if (knot.gap === 0) return solutionOf(curve, { before: low, first: knot, last: knot, after: high });
    if (Number.isNaN(knot.gap)) return [];
    if (knot.gap * low.gap > 0) low = knot;
    else high = knot;
  }
  const size = Math.max(Math.abs(before.value), Math.abs(after.value), Math.abs(curve.target));
  if (Math.abs(high.value - low.value) > smallestJump * size) {
    curve.jumps.push({ below: low.at, above: high.at });
    return [];
  }
  return [pointAt(plainest(curve, Math.abs(low.gap) < Math.abs(high.gap) ? low : high).at)];
}

/** The stretch of the input on which a run is on target. */
export function solutionOf(curve: Curve, { before, first, last, after }: Run): Solution[] {
  const isOn = (at: number): boolean => curve.look(at).gap === 0;
  const from = before ? bisect({ below: before.at, above: first.at }, isOn).above : first.at;
  const to = after ? bisect({ below: last.at, above: after.at }, (at) => !isOn(at)).below : last.at;
  if (!isFlat(curve, from, to)) return point(curve, { from: before ? from : null, to: after ? to : null, first, last });
  const [plainFrom, plainTo] = [
    before ? plainPlace(from, curve.input) : from,
    after ? plainPlace(to, curve.input) : to,
  ];
  return [{ from: plainFrom, to: plainTo, includesFrom: isOn(plainFrom), includesTo: isOn(plainTo) }];
}

/**
 * True where a stretch on target is a flat run. Around a crossing or a turn the measure is on target for a while, too,
 * because nearly equal numbers count as equal; but there it moves through the whole tolerance.
 */
function isFlat(curve: Curve, from: number, to: number): boolean {
  if (to - from <= 8 * reachAt(to, curve.input)) return false;
  const [low, middle, high] = [0.1, 0.5, 0.9].map((part) => curve.valueAt(from + part * (to - from)));
  const tolerance = Math.max(1e-13 * Math.abs(curve.target), 1e-16);
  return Math.abs(low! - middle!) <= tolerance && Math.abs(high! - middle!) <= tolerance;
}

/** The one place in a stretch on target that is meant; none where the target is only come near to, before a jump. */
function point(
  curve: Curve,
  { from, to, first, last }: { from: number | null; to: number | null; first: Knot; last: Knot },
): Solution[] {
  const [low, high] = [from ?? first.at, to ?? last.at];
  const middle = curve.look(low + (high - low) / 2);
  const ends = [from === null ? [first] : [], to === null ? [last] : []].flat();
  const nearest = [middle, ...ends].reduce((one, other) => (missOf(curve, other) < missOf(curve, one) ? other : one));
  const plain = curve.look(plainPlace(nearest.at, curve.input));
  if (plain.gap === 0) return [pointAt(plain.at)];
  return nearest.gap === 0 && !isBesideJump(curve, nearest) ? [pointAt(nearest.at)] : [];
}

const missOf = ({ target }: Curve, { value }: Knot): number =>
  Number.isNaN(value) ? Infinity : Math.abs(value - target);

/** The plain number beside a knot, if the measure is as good there. */
function plainest(curve: Curve, knot: Knot): Knot {
  const plain = curve.look(plainPlace(knot.at, curve.input));
  return plain.gap === 0 || missOf(curve, plain) <= missOf(curve, knot) ? plain : knot;
}

function isBesideJump(curve: Curve, { at, value }: Knot): boolean {
  const reach = reachAt(at, curve.input);
  const { least, most } = curve.input;
  return [at - 4 * reach, at + 4 * reach].some((side) => {
    const isInside = side >= least && side <= most;
    return isInside && isFar(curve, { at, value }, curve.valueAt(side));
  });
}

/**
 * True where a measure right beside a place, within eight reaches, is not what it is there: across a jump, or because it
 * fails. What it moves by as part of its way through the neighbourhood is no jump: near zero that is all there is.
 */
export function isFar(curve: Curve, { at, value }: Pick<Knot, 'at' | 'value'>, beside: number): boolean {
  const distance = curve.input.step / 8;
  const around = [at - distance, at + distance].map((each) => curve.valueAt(each)).filter(Number.isFinite);
  const size = Math.max(...[beside, value, ...around].map(Math.abs));
  const way = Math.max(0, ...around.map((each) => Math.abs(each - value)));
  const part = (8 * reachAt(at, curve.input)) / distance;
  return !(Math.abs(beside - value) <= 1e-7 * size + 8 * part * way);
}

const pointAt = (at: number): Solution => ({ from: at, to: at, includesFrom: true, includesTo: true });
