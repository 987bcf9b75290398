import type { Dose, Movement, StrengthRules } from '../method/strength-rules.js';

/** Sets of a movement as far as time goes; seconds of one set, and of rest between two. */
export interface TimedSets {
  readonly sets: number;
  readonly work: number;
  readonly rest: number;
}

/** How long a block takes, and how long one rests after a set, or after a turn of both; in seconds. */
export interface BlockTime {
  readonly rest: number;
  readonly seconds: number;
}

/** Nobody rests 87 seconds: a rest that is worked out is in whole steps of so many. */
const clockStep = 5;

/** Repetitions of a set: more where there is no weight that would make few of them hard. */
export const repetitionsOf = (
  { loaded }: Pick<Movement, 'loaded'>,
  { repetitions, unweighted = repetitions }: Pick<Dose, 'repetitions' | 'unweighted'>,
): number => (loaded ? repetitions : unweighted);

/** Seconds of work in one set: repetitions, or the time that a movement is held, twice where it has sides. */
export function workSeconds(
  movement: Pick<Movement, 'held' | 'each_side' | 'loaded'>,
  dose: Pick<Dose, 'repetitions' | 'unweighted' | 'seconds'>,
  time: Pick<StrengthRules['time'], 'seconds_a_repetition'>,
): number {
  const oneSide = movement.held ? dose.seconds : repetitionsOf(movement, dose) * time.seconds_a_repetition;
  return movement.each_side ? 2 * oneSide : oneSide;
}

/** Of one movement: its sets, with a rest between two of them and none after the last. */
export function singleTime({ sets, work, rest }: TimedSets): BlockTime {
  return { rest, seconds: sets * work + (sets - 1) * rest };
}

/**
 * Of two movements that take turns: while one works the other rests, and after a turn both wait until each has had its
 * own rest. Sets that only one of them has left follow alone, each after its own rest.
 *
 * @param between seconds from the one movement to the other, and back.
 */
export function pairTime(one: TimedSets, other: TimedSets, between: number): BlockTime {
  const turns = Math.min(one.sets, other.sets);
  const longer = one.sets > other.sets ? one : other;
  const least = Math.max(between, one.rest - other.work - between, other.rest - one.work - between);
  const rest = Math.ceil(least / clockStep) * clockStep;
  const together = turns * (one.work + between + other.work) + (turns - 1) * rest;
  return { rest, seconds: together + (longer.sets - turns) * (longer.rest + longer.work) };
}
