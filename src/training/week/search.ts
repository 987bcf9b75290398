import { categoryIds } from '../method/ids.js';
import type { Choice } from './choice.js';
import { dayBit, dayCount, daysOf, type DaySet } from './day-sets.js';
import { crowdedDays, Frame, spread } from './frame.js';
import { lanesOf, type Lane } from './lane.js';
import { Lengths } from './lengths.js';
import { longChoices, longDays, longSet, type LongChoice } from './long-run.js';
import { LookAhead } from './look-ahead.js';
import { PairTally } from './pair-tally.js';
import type { WeekProblem } from './week-problem.js';
import { restDaySets, roomLeft } from './week-room.js';

/** The best way found to lay a week: the days of each kind, and which session is the long run where that matters. */
export interface Found {
  /** See `weights`. */
  readonly weight: number;
  readonly chosen: readonly Choice[];
  /** Steps that each day has beyond the shortest sessions chosen. */
  readonly room: readonly number[];
  readonly long: LongChoice | null;
}

const slow = categoryIds.indexOf('slow');

/**
 * Looks for the week of least weight (see `weights`), by branch and bound over the days of one kind after the other. Once
 * all days are chosen, the lengths of the sessions are a flow from kinds to days. It can be run in parts, gives the same
 * answer however it is run, and what it ends with is proven.
 */
export class WeekSearch {
  /** The best week so far, and the best there is once `run` says that it is done; null where nothing fits. */
  best: Found | null = null;
  readonly #problem: WeekProblem;
  readonly #isForAny: boolean;
  readonly #lanes: readonly Lane[];
  readonly #tally: PairTally;
  readonly #ahead: LookAhead;
  readonly #lengths: Lengths;
  readonly #room: readonly number[];
  /** A frame for each number of kinds laid. */
  readonly #frames: Frame[];
  /** Days kept free, and the least that a week with them weighs: where the search is to begin, the best last. */
  readonly #roots: { readonly closed: DaySet; readonly bound: number }[];
  #depth = -1;

  /** @param isForAny true where any layout will do: the search stops at the first. */
  constructor(problem: WeekProblem, isForAny = false) {
    this.#problem = problem;
    this.#isForAny = isForAny;
    this.#lanes = lanesOf(problem);
    this.#tally = new PairTally(problem);
    this.#ahead = new LookAhead(problem, this.#lanes, this.#tally);
    this.#lengths = new Lengths(
      problem.kinds,
      this.#lanes.map(({ fixed }) => fixed),
    );
    this.#room = roomLeft(problem);
    this.#frames = Array.from({ length: this.#lanes.length + 1 }, () => new Frame(this.#tally.start(), this.#lanes));
    const canBe = this.#lanes.every(({ choices }) => choices.length > 0);
    const closures = canBe ? restDaySets(problem) : [];
    const roots = closures.flatMap((closed) =>
      this.#begin(closed) ? [{ closed, bound: this.#frames[0]!.bound }] : [],
    );
    this.#roots = roots.sort((one, other) => other.bound - one.bound || other.closed - one.closed);
  }

  /**
   * Searches on, through at most so many nodes (a node takes some microseconds).
   *
   * @returns true where the search is done.
   */
  run(mostNodes = Number.POSITIVE_INFINITY): boolean {
    for (let nodes = 0; nodes < mostNodes; nodes += 1) {
      if (this.#isForAny && this.best) return true;
      if (this.#depth < 0 && !this.#nextRoot()) return true;
      this.#step();
    }
    return false;
  }

  get #limit(): number {
    return this.best ? this.best.weight : Number.POSITIVE_INFINITY;
  }

  /** Makes the first frame with days kept free; false where no week weighs less than the best. */
  #begin(closed: DaySet): boolean {
    const root = this.#frames[0]!;
    root.closed = closed;
    root.next = 0;
    root.least.fill(0);
    root.grouped = this.#lanes.reduce((days, { isGrouped, done }) => (isGrouped ? days | done : days), 0);
    root.room.set(this.#room);
    for (const day of daysOf(closed)) root.room[day] = 0;
    this.#lanes.forEach(({ choices }, kind) => {
      root.sizes[kind] = choices.length;
      for (let index = 0; index < choices.length; index += 1) root.left[kind]![index] = index;
    });
    return this.#ahead.enter(root, root, this.#limit);
  }

  #nextRoot(): boolean {
    for (let root = this.#roots.pop(); root && root.bound < this.#limit; root = this.#roots.pop()) {
      if (!this.#begin(root.closed)) continue;
      this.#depth = 0;
      return true;
    }
    return false;
  }

  /** Takes the next choice of the frame at hand, and goes one deeper where that can lead to something better. */
  #step(): void {
    const frame = this.#frames[this.#depth]!;
    const { kind, order } = frame;
    const values = frame.values[kind]!;
    const place = frame.next < frame.sizes[kind]! ? order[frame.next]! : -1;
    // Choices come in the order of what they add: where one adds too much, so do all after it.
    if (place < 0 || Math.max(frame.bound, frame.sum - values[order[0]!]! + values[place]!) >= this.#limit) {
      this.#depth -= 1;
      return;
    }
    frame.next += 1;
    const next = this.#frames[this.#depth + 1]!;
    this.#lay(frame, next, frame.left[kind]![place]!);
    if (this.#depth + 1 === this.#lanes.length) this.#finish(next);
    else if (this.#ahead.enter(frame, next, this.#limit)) this.#depth += 1;
  }

  /** Makes the frame after a choice. */
  #lay(frame: Frame, next: Frame, index: number): void {
    const { kind } = frame;
    const lane = this.#lanes[kind]!;
    const choice = lane.choices[index]!;
    for (let day = 0; day < dayCount; day += 1) next.room[day] = frame.room[day]! - choice.low[day]!;
    next.chosen.set(frame.chosen);
    next.chosen[kind] = index;
    next.closed = frame.closed;
    next.perDay = frame.perDay + spread[choice.days]!;
    next.occupied = frame.occupied | choice.days;
    next.grouped = lane.isGrouped ? frame.grouped | choice.days : frame.grouped;
    next.sessions = frame.sessions + choice.count;
    next.under = frame.under + choice.under;
    next.base = frame.base + choice.own + this.#tally.enter({ from: frame.pairs, to: next.pairs }, kind, choice);
    next.next = 0;
  }

  /** All days are chosen: the lengths decide what the week misses, and which session is the long run. */
  #finish(frame: Frame): void {
    const { crowdWeight, missWeight } = this.#ahead;
    const chosen = Array.from(frame.chosen, (index, kind) => this.#lanes[kind]!.choices[index]!);
    const missed = this.#lengths.choose(chosen, frame.room, null);
    if (missed < 0) return;
    const atBest = chosen.reduce((sum, each) => sum + each.missed, 0);
    const structure = frame.base + crowdWeight * crowdedDays(frame.perDay) - missWeight * atBest;
    const found = { chosen, room: [...frame.room], long: null, weight: structure + missWeight * missed };
    if (found.weight >= this.#limit) return;
    if (this.#isLongOpen(frame, chosen[slow]!)) this.#finishLong(frame, found, { structure, missed });
    else this.best = found;
  }

  /** True where it is left to the lengths which session is the long run, and that makes a difference. */
  #isLongOpen({ pairs }: Frame, { days, isLongOpen }: Choice): boolean {
    if (!isLongOpen || this.#problem.longRun !== null) return isLongOpen;
    return daysOf(days).some((day) => this.#tally.long(pairs, dayBit(day)) > 0);
  }

  #finishLong(
    frame: Frame,
    found: Found,
    { structure, missed }: { readonly structure: number; readonly missed: number },
  ): void {
    const { longRun } = this.#problem;
    const { missWeight } = this.#ahead;
    const slowChoice = found.chosen[slow]!;
    for (const day of longDays(slowChoice.days, longRun)) {
      // A wanted day has been counted with the days of slow running.
      const alone = structure + (longRun === null ? this.#tally.long(frame.pairs, longSet(day)) : 0);
      if (alone + missWeight * missed >= this.#limit) continue;
      for (const long of longChoices(slowChoice.days, day, this.#slowLengths(slowChoice, day, frame.room))) {
        const missedSo = this.#lengths.choose(found.chosen, frame.room, long);
        const weight = alone + missWeight * missedSo;
        if (missedSo >= 0 && weight < this.#limit) this.best = { ...found, weight, long };
        if (missedSo === missed) break;
      }
    }
  }

  /** The shortest and the longest that the long run could be on a day, or the longest two sessions on any. */
  #slowLengths({ days, low, high }: Choice, long: number | null, room: Int32Array): { least: number; most: number } {
    const { fixed } = this.#lanes[slow]!;
    const all = long === null ? daysOf(days) : [long];
    return {
      least: Math.min(...all.map((day) => low[day]! + fixed[day]!)),
      most: Math.max(...all.map((day) => Math.min(high[day]!, low[day]! + room[day]!) + fixed[day]!)),
    };
  }
}
