import type { RunningKind, RunningRules } from '../../training/method/running-rules.js';
import { speedOf } from '../../training/running/distance.js';
import { bandAt, heartBands, heartSpan, highestAt, type Heart } from '../../training/running/heart-rate.js';
import { speedAt } from '../../training/running/oxygen.js';
import type { Span } from '../../training/running/span.js';
import type { HighestHeart, PlanRunning, RunningBasis, RunningGuide } from './document.js';
import type { RunningWishes } from './wishes.js';

/** Speeds of a kind of running in metres a minute, the slower first. */
export const speedsOf = ({ uptake }: RunningBasis, kind: RunningKind): Span => ({
  from: speedAt(uptake * kind.uptake.least),
  to: speedAt(uptake * kind.uptake.most),
});

/** How each kind of running is run: pace, heart rate, effort. */
export function guidesOf(
  rules: RunningRules,
  basis: RunningBasis | null,
  heart: Heart | null,
): readonly RunningGuide[] {
  const { bands } = rules.heart;
  return rules.kinds.map((kind) => {
    const beats = heart && heartSpan(kind.uptake, heart, bands);
    return {
      category: kind.id,
      effort: { from: kind.effort.least, to: kind.effort.most },
      pace: basis && paceOf(speedsOf(basis, kind)),
      heart: beats,
      bands: heart && beats && { from: bandAt(beats.from, heart, bands), to: bandAt(beats.to, heart, bands) },
    };
  });
}

const paceOf = ({ from, to }: Span): Span => ({ from: speedOf(to), to: speedOf(from) });

/** The highest heart rate: the one measured, else by the first of the method's equations. */
export function highestOf({ highestHeart, age }: RunningWishes, rules: RunningRules): HighestHeart | null {
  const estimates =
    age === null ? [] : rules.heart.estimates.map((each) => ({ id: each.id, beats: highestAt(age, each) }));
  if (highestHeart !== null) return { beats: highestHeart, from: 'measured', estimates };
  const [first] = estimates;
  return first ? { beats: first.beats, from: 'age', estimates } : null;
}

/** The bands of the position stand for a heart, where it is known. */
export const bandsOf = (heart: Heart | null, rules: RunningRules): PlanRunning['bands'] =>
  heart ? heartBands(heart, rules.heart.bands) : [];
