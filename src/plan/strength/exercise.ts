import type { StrengthRules } from '../../training/method/strength-rules.js';
import type { FilledSets } from '../../training/strength/fill-session.js';
import { repetitionsOf } from '../../training/strength/session-time.js';
import { shareOfMaximum } from '../../training/strength/share-of-maximum.js';
import { nextWeights, roundedDown } from '../../training/strength/weights.js';
import type { Exercise, StrengthMaximum } from './document.js';

/** What weights are worked out from. */
export interface WeightGround {
  readonly rules: Pick<StrengthRules, 'maximum' | 'progress'>;
  readonly maxima: readonly StrengthMaximum[];
}

/** A movement of a session with its sets, and its weight where a set of the same movement has told of it. */
export function exerciseOf({ candidate, sets }: FilledSets, ground: WeightGround): Exercise {
  const { movement, dose, pattern, role, mostSets } = candidate;
  return {
    movement: movement.id,
    pattern,
    role,
    sets,
    wishedSets: mostSets,
    repetitions: movement.held ? null : repetitionsOf(movement, dose),
    seconds: movement.held ? dose.seconds : null,
    eachSide: movement.each_side,
    effort: dose.effort,
    inHand: movement.held ? null : dose.in_hand,
    rest: dose.rest,
    ...weightOf(candidate, ground),
  };
}

/** Repetitions of the set and those in hand together are as many as the weight allows. */
function weightOf(
  { movement, dose }: FilledSets['candidate'],
  { rules, maxima }: WeightGround,
): Pick<Exercise, 'share' | 'kilograms' | 'next'> {
  const { table, step } = rules.maximum;
  const isWeighed = movement.loaded && !movement.held && dose.in_hand !== null;
  const share = isWeighed ? shareOfMaximum(dose.repetitions + dose.in_hand, table) : null;
  const maximum = maxima.find((each) => each.movement === movement.id);
  if (share === null || !maximum) return { share, kilograms: null, next: null };
  const kilograms = roundedDown(maximum.used * share, step);
  return { share, kilograms, next: nextWeights(kilograms, rules.progress, step) };
}
