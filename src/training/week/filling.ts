import { dayCount } from './day-sets.js';

const kindCount = 5;

/**
 * Fills sessions with steps, each between none and what its kind and day may take, while days have room: a flow from
 * kinds to days, by augmenting paths. What a kind has been given it keeps in sum, though not day by day, so kinds may be
 * served one after the other and the sum over all is the most that can be.
 */
export class Filling {
  /** Steps put into a session so far, by kind and day: `given[kind * 7 + day]`. */
  readonly given = new Int32Array(kindCount * dayCount);
  /** Most steps that a session may take. */
  readonly most = new Int32Array(kindCount * dayCount);
  /** Steps that a day still has. */
  readonly room = new Int32Array(dayCount);
  readonly #from = new Int32Array(kindCount);
  readonly #via = new Int32Array(kindCount);
  readonly #queue = new Int32Array(kindCount);

  /** Gives a kind up to `wanted` more steps; returns how many there was room for. */
  ship(kind: number, wanted: number): number {
    let shipped = this.#shipDirectly(kind, wanted);
    while (shipped < wanted) {
      const end = this.#findWay(kind);
      if (end < 0) break;
      shipped += this.#shift(kind, end, wanted - shipped);
    }
    return shipped;
  }

  #shipDirectly(kind: number, wanted: number): number {
    let left = wanted;
    for (let day = 0; day < dayCount && left > 0; day += 1) {
      const place = kind * dayCount + day;
      const steps = Math.min(this.most[place]! - this.given[place]!, this.room[day]!, left);
      this.given[place]! += steps;
      this.room[day]! -= steps;
      left -= steps;
    }
    return wanted - left;
  }

  /** Looks for a kind that could give way on a full day and go to one with room; -1 where there is none. */
  #findWay(kind: number): number {
    this.#from.fill(-1);
    this.#from[kind] = kind;
    this.#queue[0] = kind;
    for (let next = 0, known = 1; next < known; next += 1) {
      const current = this.#queue[next]!;
      if (current !== kind && this.#freeDay(current) >= 0) return current;
      for (let day = 0; day < dayCount; day += 1) {
        if (!this.#canTake(current, day)) continue;
        for (let other = 0; other < kindCount; other += 1) {
          if (this.#from[other]! >= 0 || this.given[other * dayCount + day]! === 0) continue;
          this.#from[other] = current;
          this.#via[other] = day;
          this.#queue[known] = other;
          known += 1;
        }
      }
    }
    return -1;
  }

  #canTake(kind: number, day: number): boolean {
    const place = kind * dayCount + day;
    return this.given[place]! < this.most[place]!;
  }

  #freeDay(kind: number): number {
    for (let day = 0; day < dayCount; day += 1) if (this.room[day]! > 0 && this.#canTake(kind, day)) return day;
    return -1;
  }

  /** Moves steps along the way found: the last kind takes them on a free day, each gives them up for the one before it. */
  #shift(kind: number, end: number, wanted: number): number {
    const free = this.#freeDay(end);
    let steps = Math.min(wanted, this.room[free]!, this.#spare(end, free));
    for (let at = end; at !== kind; at = this.#from[at]!) {
      const day = this.#via[at]!;
      steps = Math.min(steps, this.given[at * dayCount + day]!, this.#spare(this.#from[at]!, day));
    }
    this.given[end * dayCount + free]! += steps;
    this.room[free]! -= steps;
    for (let at = end; at !== kind; at = this.#from[at]!) {
      const day = this.#via[at]!;
      this.given[at * dayCount + day]! -= steps;
      this.given[this.#from[at]! * dayCount + day]! += steps;
    }
    return steps;
  }

  #spare(kind: number, day: number): number {
    const place = kind * dayCount + day;
    return this.most[place]! - this.given[place]!;
  }
}
