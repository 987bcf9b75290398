import { categoryIds } from '../method/ids.js';
import { dayCount, has, type DaySet } from './day-sets.js';
import type { Lane } from './lane.js';
import type { PairDays } from './pair-tally.js';

/** What holds once some kinds are laid, and what is left to the others. Its arrays are used again and again. */
export class Frame {
  /** Steps that each day has beyond the shortest sessions laid. */
  readonly room = new Int32Array(dayCount);
  readonly pairs: PairDays;
  /** The choice taken for each kind, or -1. */
  readonly chosen = new Int32Array(categoryIds.length).fill(-1);
  /** The choices that each kind has left, how many, and what each would add at least. */
  readonly left: readonly Int32Array[];
  readonly sizes = new Int32Array(categoryIds.length);
  readonly values: readonly Float64Array[];
  /** The least of these for each kind. */
  readonly least = new Float64Array(categoryIds.length);
  /** Sessions by day, in `perDay`'s fields (see `spread`). */
  perDay = 0;
  occupied: DaySet = 0;
  /** Days that have a session of those kinds of which a day has one at most. */
  grouped: DaySet = 0;
  /** Days kept free so that there are enough of them. */
  closed: DaySet = 0;
  sessions = 0;
  /** Steps that what is laid has too few. */
  under = 0;
  /** Days that each kind not yet laid could have. */
  readonly open = new Int32Array(categoryIds.length);
  /** The weight of what is laid, crowded days aside. */
  base = 0;
  /** No layout from here on weighs less; `sum` is the part of that which adds up kind by kind. */
  bound = 0;
  sum = 0;
  /** The kind to be laid next, and the places of its choices in `left`, in the order in which they are tried. */
  kind = -1;
  readonly order: Int32Array;
  next = 0;

  constructor(pairs: PairDays, lanes: readonly Pick<Lane, 'choices'>[]) {
    this.pairs = pairs;
    this.left = lanes.map(({ choices: { length } }) => new Int32Array(length));
    this.values = lanes.map(({ choices: { length } }) => new Float64Array(length));
    this.order = new Int32Array(Math.max(1, ...lanes.map(({ choices: { length } }) => length)));
  }

  /** Brings the choices of the kind to be laid next into the order of what they add; equal ones stay in theirs. */
  sort(): void {
    const values = this.values[this.kind]!;
    const { order } = this;
    for (let place = 0; place < this.sizes[this.kind]!; place += 1) {
      let at = place;
      for (; at > 0 && values[order[at - 1]!]! > values[place]!; at -= 1) order[at] = order[at - 1]!;
      order[at] = place;
    }
  }
}

/** Sessions of several days in one number, four bits a day: `spread[0b11]` is 0x11, one on Monday and one on Tuesday. */
export const spread = Int32Array.from({ length: 128 }, (_, days) => {
  let fields = 0;
  for (let day = 0; day < dayCount; day += 1) if (has(days, day)) fields |= 1 << (4 * day);
  return fields;
});

/** What, added to sessions by day, sets the top bit of a field that is over its limit, which is 1 to 7. */
export function marginOf(limits: readonly number[]): number {
  return limits.reduce((fields, limit, day) => fields | ((7 - limit) << (4 * day)), 0);
}

/** True where a day has more sessions than allowed. */
export const isOverfull = (perDay: number, margin: number): boolean => ((perDay + margin) & 0x8888888) !== 0;

/** How many days have two sessions or more. */
export function crowdedDays(perDay: number): number {
  let days = 0;
  for (let left = perDay; left !== 0; left >>>= 4) if ((left & 15) > 1) days += 1;
  return days;
}
