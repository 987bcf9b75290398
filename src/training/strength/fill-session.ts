import type { RoleId, StrengthRules } from '../method/strength-rules.js';
import type { Candidate } from './candidates.js';
import { easyParts } from './easy-parts.js';
import { pairUp, type Turn } from './pair-up.js';
import { pairTime, singleTime, workSeconds, type TimedSets } from './session-time.js';

/** A candidate with the sets that it gets. */
export interface FilledSets {
  readonly candidate: Candidate;
  readonly sets: number;
}

/** One movement, or two that take turns; seconds. */
export interface FilledBlock {
  readonly turn: Turn<FilledSets>;
  readonly rest: number;
  /** What leads over to the next block included. */
  readonly seconds: number;
}

/** A session that fits into its minutes; seconds. */
export interface FilledSession {
  readonly warmUp: number;
  readonly blocks: readonly FilledBlock[];
  readonly coolDown: number;
  /** All of it. */
  readonly seconds: number;
  /** What did not fit, the most important first. */
  readonly leftOut: readonly Candidate[];
}

/** How a session is filled. */
export interface Filling {
  /** Whole minutes. */
  readonly minutes: number;
  /** The most important first. */
  readonly candidates: readonly Candidate[];
  /** In which order roles are done. */
  readonly order: readonly RoleId[];
  /** True where movements take turns. */
  readonly pairs: boolean;
  readonly time: StrengthRules['time'];
}

/**
 * Fills a session. As many movements as fit with their least sets, the most important first; then each gets a set more
 * in the same order, again and again, as long as there is time. With more minutes there is never a movement less.
 */
export function fillSession(filling: Filling): FilledSession {
  const { warmUp, coolDown, left } = easyParts(filling.minutes, filling.time);
  const atLeast = filling.candidates.map((candidate) => ({ candidate, sets: candidate.dose.sets.least }));
  const fits = (chosen: readonly FilledSets[]): boolean => total(blocksOf(chosen, filling)) <= 60 * left;
  const count = longestPrefix(atLeast, fits);
  const blocks = blocksOf(withMoreSets(atLeast.slice(0, count), fits), filling);
  const easy = count === 0 ? { warmUp: 0, coolDown: 0 } : { warmUp: 60 * warmUp, coolDown: 60 * coolDown };
  return {
    ...easy,
    blocks,
    seconds: easy.warmUp + total(blocks) + easy.coolDown,
    leftOut: filling.candidates.slice(count),
  };
}

/** A movement more can make better pairs, so every length is tried, not only the next. */
function longestPrefix<T>(list: readonly T[], fits: (prefix: readonly T[]) => boolean): number {
  const lengths = Array.from(list, (_, index) => list.length - index);
  return lengths.find((length) => fits(list.slice(0, length))) ?? 0;
}

function withMoreSets(
  chosen: readonly FilledSets[],
  fits: (chosen: readonly FilledSets[]) => boolean,
): readonly FilledSets[] {
  const raised = chosen.reduce((sofar, { candidate, sets }, index) => {
    if (sets >= candidate.mostSets) return sofar;
    const more = sofar.map((each, at) => (at === index ? { candidate, sets: sets + 1 } : each));
    return fits(more) ? more : sofar;
  }, chosen);
  return raised === chosen ? chosen : withMoreSets(raised, fits);
}

function blocksOf(chosen: readonly FilledSets[], { order, pairs, time }: Filling): readonly FilledBlock[] {
  const inOrder = order.flatMap((role) => chosen.filter(({ candidate }) => candidate.role === role));
  const pairable = inOrder.map((each) => ({ ...each.candidate, filled: each }));
  const turns: readonly Turn<(typeof pairable)[number]>[] = pairs ? pairUp(pairable) : pairable.map((each) => [each]);
  return turns.map(([one, other], index) => {
    const { rest, seconds } = other
      ? pairTime(timed(one.filled, time), timed(other.filled, time), time.between)
      : singleTime(timed(one.filled, time));
    const turn: Turn<FilledSets> = other ? [one.filled, other.filled] : [one.filled];
    return { turn, rest, seconds: seconds + (index === turns.length - 1 ? 0 : time.change_over) };
  });
}

function timed({ candidate, sets }: FilledSets, time: StrengthRules['time']): TimedSets {
  const { movement, dose } = candidate;
  return { sets, work: workSeconds(movement, dose, time), rest: dose.rest };
}

const total = (blocks: readonly FilledBlock[]): number => blocks.reduce((sum, { seconds }) => sum + seconds, 0);
