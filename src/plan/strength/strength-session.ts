import type { PatternId } from '../../training/method/strength-rules.js';
import { candidates, type CandidateGround } from '../../training/strength/candidates.js';
import { fillSession } from '../../training/strength/fill-session.js';
import type { PlannedSession } from '../sessions-of.js';
import type { Exercise, StrengthSession } from './document.js';
import { exerciseOf, type WeightGround } from './exercise.js';
import type { StrengthGround } from './strength-ground.js';
import type { StrengthWishes } from './wishes.js';

/** What every session of a week is made from. */
export interface SessionGround extends CandidateGround, WeightGround {
  readonly rules: StrengthGround['rules'];
  readonly wishes: StrengthWishes;
}

/** A planned session, what its legs do, and the patterns it would have. */
export interface SessionPlace {
  readonly planned: PlannedSession;
  readonly legs: StrengthSession['legs'];
  readonly patterns: readonly PatternId[];
}

/** Fills the minutes that there are for a session, those planned where nothing else is said. */
export function strengthSession({ planned, legs, patterns }: SessionPlace, ground: SessionGround): StrengthSession {
  const { rules, stage, wishes } = ground;
  const minutes = wishes.minutes ?? planned.minutes;
  const wanted = candidates(patterns, legs, ground);
  const { order, time } = rules;
  const filled = fillSession({ minutes, candidates: wanted, order, pairs: stage.pairs, time });
  const blocks = filled.blocks.map(({ turn, rest, seconds }) => ({
    exercises: turn.map((each) => exerciseOf(each, ground)),
    rest,
    seconds,
  }));
  return {
    minutes,
    plannedMinutes: planned.minutes,
    day: planned.day,
    legs,
    warmUp: filled.warmUp,
    blocks,
    coolDown: filled.coolDown,
    seconds: filled.seconds,
    spare: 60 * minutes - filled.seconds,
    leftOut: filled.leftOut.map(({ pattern, movement }) => ({ pattern, movement: movement.id })),
    landings: landings(blocks.flatMap(({ exercises }) => exercises)),
  };
}

function landings(exercises: readonly Exercise[]): number {
  return exercises
    .filter(({ role }) => role === 'jump')
    .reduce((sum, { sets, repetitions, eachSide }) => sum + sets * (repetitions ?? 0) * (eachSide ? 2 : 1), 0);
}
