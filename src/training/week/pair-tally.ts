import { categoryIds } from '../method/ids.js';
import { weights } from './choice.js';
import { countDays, daysEarlier, has, type DaySet } from './day-sets.js';
import type { WeekProblem } from './week-problem.js';
import { addsUp, pairClashes } from './pair-costs.js';

const longMember = categoryIds.length;

interface Pair {
  readonly weight: number;
  readonly apart: number;
  readonly addsUp: boolean;
  /** Members on each side as the bits of a number: the kinds in their order, then the long run. */
  readonly first: number;
  readonly then: number;
}

/** Days so far on either side of each pair. */
export interface PairDays {
  readonly firsts: Int32Array;
  readonly thens: Int32Array;
}

/** Days that a kind takes, and of these the day of the long run where it is known. */
export interface Taken {
  readonly days: DaySet;
  readonly long: DaySet;
}

/** Counts pairs that clash while kinds are laid one after the other. */
export class PairTally {
  readonly #pairs: readonly Pair[];
  /** For each kind the places of the pairs that it is in, and whose cost adds up. */
  readonly #ofKind: readonly (readonly number[])[];

  constructor(problem: Pick<WeekProblem, 'rules' | 'fixed'>) {
    this.#pairs = pairClashes(problem.rules).map((pair) => ({
      weight: weights.cost * pair.cost,
      apart: pair.days_apart,
      addsUp: addsUp(pair, problem),
      first: memberBits(pair.first),
      then: memberBits(pair.then),
    }));
    this.#ofKind = categoryIds.map((id, kind) => {
      const members = (1 << kind) | (id === 'slow' ? 1 << longMember : 0);
      const isIn = (pair: Pair): boolean => pair.addsUp && ((pair.first | pair.then) & members) !== 0;
      return [...this.#pairs.keys()].filter((index) => isIn(this.#pairs[index]!));
    });
  }

  /** Sides of pairs with no day in them. */
  start(): PairDays {
    return { firsts: new Int32Array(this.#pairs.length), thens: new Int32Array(this.#pairs.length) };
  }

  /** Enters the days of a kind into `to`, which then follows on `from`, and tells what that weighs. */
  enter({ from, to }: { readonly from: PairDays; readonly to: PairDays }, kind: number, taken: Taken): number {
    let added = 0;
    for (let index = 0; index < this.#pairs.length; index += 1) {
      const pair = this.#pairs[index]!;
      const first = from.firsts[index]!;
      const then = from.thens[index]!;
      const newFirst = first | daysIn(pair.first, kind, taken);
      const newThen = then | daysIn(pair.then, kind, taken);
      to.firsts[index] = newFirst;
      to.thens[index] = newThen;
      added += pair.weight * (clashing(newFirst, newThen, pair.apart) - clashing(first, then, pair.apart));
    }
    return added;
  }

  /** What the days of a kind would add at least, whatever is laid after it. */
  atLeast({ firsts, thens }: PairDays, kind: number, taken: Taken): number {
    let added = 0;
    for (const index of this.#ofKind[kind]!) {
      const pair = this.#pairs[index]!;
      const first = firsts[index]!;
      const then = thens[index]!;
      const newFirst = first | daysIn(pair.first, kind, taken);
      const newThen = then | daysIn(pair.then, kind, taken);
      added += pair.weight * (clashing(newFirst, newThen, pair.apart) - clashing(first, then, pair.apart));
    }
    return added;
  }

  /** What a long run on a day weighs. */
  long({ firsts, thens }: PairDays, long: DaySet): number {
    let added = 0;
    for (let index = 0; index < this.#pairs.length; index += 1) {
      const pair = this.#pairs[index]!;
      const first = firsts[index]!;
      const then = thens[index]!;
      const newFirst = first | (has(pair.first, longMember) ? long : 0);
      const newThen = then | (has(pair.then, longMember) ? long : 0);
      added += pair.weight * (clashing(newFirst, newThen, pair.apart) - clashing(first, then, pair.apart));
    }
    return added;
  }
}

const clashing = (first: DaySet, then: DaySet, apart: number): number => countDays(first & daysEarlier(then, apart));

function daysIn(members: number, kind: number, { days, long }: Taken): DaySet {
  return (has(members, kind) ? days : 0) | (has(members, longMember) ? long : 0);
}

function memberBits(members: readonly string[]): number {
  let bits = 0;
  for (const member of members)
    bits |= 1 << (member === 'long' ? longMember : categoryIds.findIndex((id) => id === member));
  return bits;
}
