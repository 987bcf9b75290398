import type { Choice } from './choice.js';
import { weights } from './choice.js';
import { countDays, dayCount, has, type DaySet } from './day-sets.js';
import { Filling } from './filling.js';
import { crowdedDays, isOverfull, marginOf, spread, type Frame } from './frame.js';
import type { Lane } from './lane.js';
import { countCost } from './pair-costs.js';
import type { PairTally } from './pair-tally.js';
import type { WeekProblem } from './week-problem.js';
import { sessionLimits, usableDays } from './week-room.js';

/** Works out, for a frame, what is left to the kinds not yet laid, and the least that a layout from there on weighs. */
export class LookAhead {
  readonly crowdWeight: number;
  readonly missWeight: number;
  readonly #limits: readonly number[];
  readonly #margin: number;
  /** The most sessions that any day may have. */
  readonly #mostADay: number;
  /** Each session beyond the first of a day crowds it, at least in part. */
  readonly #crowdShare: number;
  readonly #lanes: readonly Lane[];
  readonly #tally: PairTally;
  readonly #usable: DaySet;
  readonly #filling = new Filling();
  readonly #sums: Int32Array;
  // The least over the choices of a kind: as it is, with its sessions counted instead of crowded days, and both without
  // what it misses. Fields, because a search makes millions of them.
  #value = 0;
  #counted = 0;
  #bare = 0;
  #bareCounted = 0;
  #fewest = 0;

  constructor(problem: WeekProblem, lanes: readonly Lane[], tally: PairTally) {
    const { rules } = problem;
    this.#limits = sessionLimits(problem);
    this.#margin = marginOf(this.#limits);
    this.#mostADay = Math.max(...this.#limits);
    this.crowdWeight = weights.cost * countCost(rules, 'crowded-day');
    this.missWeight = weights.cost * countCost(rules, 'missed-minutes');
    this.#crowdShare = this.#mostADay > 1 ? this.crowdWeight / (this.#mostADay - 1) : 0;
    this.#lanes = lanes;
    this.#tally = tally;
    this.#usable = usableDays(problem);
    this.#sums = new Int32Array(lanes.length);
  }

  /**
   * Fills in the choices left, the bound and the kind to go on with.
   *
   * @param before the frame whose choices are still to be sifted; it may be the frame itself.
   * @returns false where no layout from here on weighs less than `limit`.
   */
  enter(before: Frame, frame: Frame, limit: number): boolean {
    let sum = frame.base + this.crowdWeight * crowdedDays(frame.perDay);
    let counted = frame.base + this.#crowdShare * (frame.sessions - countDays(this.#usable & ~frame.closed));
    let bare = sum - this.missWeight * frame.under;
    let bareCounted = counted - this.missWeight * frame.under;
    let rest = sumOfLeast(before, frame);
    let fewest = 0;
    frame.kind = -1;
    for (let kind = 0; kind < this.#lanes.length; kind += 1) {
      if (frame.chosen[kind]! >= 0) continue;
      rest -= before.least[kind]!;
      this.#sift(before, frame, { kind, limit: limit - sum - rest });
      if (frame.sizes[kind] === 0) return false;
      frame.least[kind] = this.#value;
      fewest += this.#fewest - this.#lanes[kind]!.fixedCount;
      sum += this.#value;
      // What a kind adds at least only grows as others are laid: the kinds not yet sifted add what they did before.
      if (sum + rest >= limit) return false;
      counted += this.#counted;
      bare += this.#bare;
      bareCounted += this.#bareCounted;
      if (frame.kind < 0 || this.#lanes[kind]!.rank < this.#lanes[frame.kind]!.rank) frame.kind = kind;
    }
    if (fewest > this.#placesLeft(frame)) return false;
    frame.sum = sum;
    frame.bound = Math.max(sum, counted);
    if (frame.bound >= limit) return false;
    const missed = this.#missedTogether(frame);
    if (missed < 0) return false;
    frame.bound = Math.max(frame.bound, Math.max(bare, bareCounted) + this.missWeight * missed);
    if (frame.bound >= limit) return false;
    frame.sort();
    return true;
  }

  /** Keeps the choices of a kind that still fit and add less than `limit`, with what each adds at least. */
  #sift(before: Frame, frame: Frame, { kind, limit }: { readonly kind: number; readonly limit: number }): void {
    const lane = this.#lanes[kind]!;
    const source = before.left[kind]!;
    const left = frame.left[kind]!;
    const values = frame.values[kind]!;
    const forbidden = frame.closed | (lane.isGrouped ? frame.grouped & ~lane.done : 0) | this.#shortDays(frame, lane);
    const scarce = this.#scarceDays(frame, lane);
    // With three sessions a day, kinds may share the cost of crowding it.
    const crowdWeight = this.#mostADay > 2 ? 0 : this.crowdWeight;
    let size = 0;
    let open = 0;
    this.#value = this.#counted = this.#bare = this.#bareCounted = this.#fewest = Number.POSITIVE_INFINITY;
    for (let place = 0; place < before.sizes[kind]!; place += 1) {
      const choice = lane.choices[source[place]!]!;
      const { days } = choice;
      // The choices of a kind are in the order of what they cost by themselves.
      if (choice.own >= limit) break;
      if ((days & forbidden) !== 0 || isOverfull(frame.perDay + spread[days]!, this.#margin)) continue;
      const lost = (days & scarce) === 0 ? 0 : this.#lostSteps(frame, lane, choice);
      if (lost < 0) continue;
      const alone = choice.own + this.#tally.atLeast(frame.pairs, kind, choice) + this.missWeight * lost;
      const value = alone + crowdWeight * countDays(days & frame.occupied);
      if (value >= limit) continue;
      left[size] = source[place]!;
      values[size] = value;
      size += 1;
      open |= days;
      if (choice.count < this.#fewest) this.#fewest = choice.count;
      this.#takeLeast(value, alone + this.#crowdShare * choice.count, this.missWeight * (lost + choice.under));
    }
    frame.sizes[kind] = size;
    frame.open[kind] = open;
  }

  #takeLeast(value: number, counted: number, missing: number): void {
    if (value < this.#value) this.#value = value;
    if (counted < this.#counted) this.#counted = counted;
    if (value - missing < this.#bare) this.#bare = value - missing;
    if (counted - missing < this.#bareCounted) this.#bareCounted = counted - missing;
  }

  /** How many sessions more the days could take, were all as short as the shortest of the kinds not yet laid. */
  #placesLeft({ room, chosen, perDay, closed }: Frame): number {
    let shortest = Number.POSITIVE_INFINITY;
    for (let kind = 0; kind < this.#lanes.length; kind += 1)
      if (chosen[kind]! < 0) shortest = Math.min(shortest, shortestOf(this.#lanes[kind]!.need));
    let places = 0;
    for (let day = 0; day < dayCount; day += 1) {
      if (has(closed, day)) continue;
      const free = this.#limits[day]! - ((perDay >> (4 * day)) & 15);
      places += Math.max(0, Math.min(free, Math.floor(room[day]! / shortest)));
    }
    return places;
  }

  /** Days without room for the shortest session of a kind whose lengths are open. */
  #shortDays({ room }: Frame, { need, fixed }: Lane): DaySet {
    if (need.sessions) return 0;
    let days = 0;
    for (let day = 0; day < dayCount; day += 1) if (room[day]! < need.shortest && fixed[day] === 0) days |= 1 << day;
    return days;
  }

  /** Days that may have less room than a session of the kind could take. */
  #scarceDays({ room }: Frame, { need, fixed }: Lane): DaySet {
    let days = 0;
    for (let day = 0; day < dayCount; day += 1) if (room[day]! < need.longest && fixed[day] === 0) days |= 1 << day;
    return need.sessions ? 127 : days;
  }

  /** The steps that a choice must miss beyond what it misses anyway, in the room that is left; -1 where it does not fit. */
  #lostSteps({ room }: Frame, { need, target }: Lane, { low, high, missed, most }: Choice): number {
    let lost = 0;
    for (let day = 0; day < dayCount; day += 1) {
      if (low[day]! > room[day]!) return -1;
      if (high[day]! > room[day]!) lost += high[day]! - room[day]!;
    }
    if (lost === 0) return 0;
    if (most - lost < need.least) return -1;
    return Math.max(0, target - (most - lost) - missed);
  }

  /**
   * The fewest steps that all kinds can miss together if every day open to a kind is its own; -1 where some cannot have
   * what they must.
   */
  #missedTogether(frame: Frame): number {
    this.#begin(frame);
    for (let kind = 0; kind < this.#lanes.length; kind += 1) {
      const due = this.#lanes[kind]!.least - this.#sums[kind]!;
      if (due <= 0) continue;
      if (this.#filling.ship(kind, due) < due) return -1;
      this.#sums[kind]! += due;
    }
    let missed = 0;
    for (let kind = 0; kind < this.#lanes.length; kind += 1) {
      const wanted = this.#lanes[kind]!.target - this.#sums[kind]!;
      if (wanted > 0) missed += wanted - this.#filling.ship(kind, wanted);
    }
    return missed;
  }

  #begin({ room, chosen, open }: Frame): void {
    const { given, most } = this.#filling;
    this.#filling.room.set(room);
    given.fill(0);
    for (let kind = 0; kind < this.#lanes.length; kind += 1) {
      const { need, choices, fixed, fixedSum } = this.#lanes[kind]!;
      const choice = choices[chosen[kind]!];
      this.#sums[kind] = fixedSum;
      for (let day = 0; day < dayCount; day += 1) {
        const place = kind * dayCount + day;
        if (choice) {
          most[place] = choice.high[day]! - choice.low[day]!;
          this.#sums[kind]! += choice.low[day]!;
        } else if (has(open[kind]!, day) && fixed[day] === 0) most[place] = Math.min(longestOf(need), room[day]!);
        else most[place] = 0;
      }
    }
  }
}

/** What the kinds not yet laid added at least in the frame before. */
function sumOfLeast(before: Frame, { chosen }: Frame): number {
  let sum = 0;
  for (let kind = 0; kind < chosen.length; kind += 1) if (chosen[kind]! < 0) sum += before.least[kind]!;
  return sum;
}

const shortestOf = ({ sessions, shortest }: Lane['need']): number =>
  Math.max(1, sessions ? Math.min(...sessions) : shortest);

const longestOf = ({ sessions, longest }: Lane['need']): number => (sessions ? Math.max(0, ...sessions) : longest);
