import { categoryIds } from '../method/ids.js';
import { missedSteps, type Choice } from './choice.js';
import { dayCount, has } from './day-sets.js';
import { Filling } from './filling.js';
import { longBounds, type LongChoice } from './long-run.js';
import type { KindNeed } from './week-problem.js';

const slow = categoryIds.indexOf('slow');

/** How long the sessions are, once their days are chosen: as near to the rounded minutes as the days allow. */
export class Lengths {
  readonly filling = new Filling();
  /** Steps of each session that nothing can take away. */
  readonly least = new Int32Array(categoryIds.length * dayCount);
  readonly #needs: readonly KindNeed[];
  readonly #fixed: readonly (readonly number[])[];
  readonly #sums = new Int32Array(categoryIds.length);

  constructor(needs: readonly KindNeed[], fixed: readonly (readonly number[])[]) {
    this.#needs = needs;
    this.#fixed = fixed;
  }

  /**
   * Chooses lengths.
   *
   * @param room steps that days have beyond the shortest sessions chosen.
   * @returns the steps missed over all kinds, the fewest there can be; -1 where no lengths fit.
   */
  choose(chosen: readonly Choice[], room: ArrayLike<number>, long: LongChoice | null): number {
    this.filling.room.set(room);
    this.filling.given.fill(0);
    for (let kind = 0; kind < chosen.length; kind += 1)
      if (!this.#begin(kind, chosen[kind]!, kind === slow ? long : null)) return -1;
    return this.#meetLeast() ? this.#comeNear() : -1;
  }

  #begin(kind: number, { days, low, high }: Choice, long: LongChoice | null): boolean {
    const { filling } = this;
    this.#sums[kind] = 0;
    for (let day = 0; day < dayCount; day += 1) {
      const fixed = this.#fixed[kind]![day]!;
      let bounds = { least: low[day]! + fixed, most: high[day]! + fixed };
      if (long && has(days, day)) {
        bounds = longBounds(long, day, bounds);
        if (bounds.least > bounds.most) return false;
        filling.room[day]! -= bounds.least - fixed - low[day]!;
        if (filling.room[day]! < 0) return false;
      }
      filling.most[kind * dayCount + day] = bounds.most - bounds.least;
      this.least[kind * dayCount + day] = bounds.least;
      this.#sums[kind] += bounds.least;
    }
    return true;
  }

  /** Every kind gets what it must have before any gets what it would like. */
  #meetLeast(): boolean {
    return this.#needs.every(({ least, most, sessions }, kind) => {
      if (sessions) return true;
      const due = least - this.#sums[kind]!;
      if (due > 0) this.#sums[kind]! += this.filling.ship(kind, due);
      return this.#sums[kind]! >= least && this.#sums[kind]! <= most;
    });
  }

  #comeNear(): number {
    return this.#needs.reduce((missed, need, kind) => {
      const wanted = need.sessions ? 0 : Math.floor(need.rounded) - this.#sums[kind]!;
      if (wanted > 0) this.#sums[kind]! += this.filling.ship(kind, wanted);
      return missed + missedSteps(need, this.#sums[kind]!);
    }, 0);
  }
}
