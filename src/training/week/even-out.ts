import { dayCount } from './day-sets.js';
import type { Filling } from './filling.js';

/** The days, and a place for the room that is left: what moves to a day with room needs no other move to make some. */
const spare = dayCount;
const places = dayCount + 1;

/**
 * Moves steps between the sessions of each kind until the sum of the squares of all lengths is the least that there is for
 * these sums: a flow of least convex cost, by cancelling rounds of moves that gain (Klein 1967, from memory).
 *
 * @param least steps of each session that do not move, by kind and day.
 */
export function evenOut(filling: Filling, least: Int32Array): void {
  for (let place = 0; place < least.length; place += dayCount) evenAlone(filling, least, place);
  const rounds = new Rounds(filling, least);
  while (rounds.find()) rounds.make();
}

/** What a kind can do by itself, in the room that there is: most of the way. */
function evenAlone({ given, most, room }: Filling, least: Int32Array, place: number): void {
  for (let from = 0; from < dayCount; from += 1)
    for (let to = 0; to < dayCount; to += 1) {
      const [source, target] = [place + from, place + to];
      const gap = least[source]! + given[source]! - least[target]! - given[target]!;
      const steps = Math.min(gap >> 1, given[source]!, most[target]! - given[target]!, room[to]!);
      if (steps <= 0) continue;
      given[source]! -= steps;
      given[target]! += steps;
      room[from]! += steps;
      room[to]! -= steps;
      from = -1;
      break;
    }
}

/** Finds moves, one after the other and back to the first place, that gain something together. */
class Rounds {
  readonly #filling: Filling;
  readonly #least: Int32Array;
  /** What it changes to move a step from one place to another, and of which kind it would be. */
  readonly #changes = new Float64Array(places * places);
  readonly #kinds = new Int32Array(places * places);
  readonly #reach = new Float64Array(places);
  readonly #before = new Int32Array(places);
  #start = -1;

  constructor(filling: Filling, least: Int32Array) {
    this.#filling = filling;
    this.#least = least;
  }

  /** False where no round gains anything. */
  find(): boolean {
    for (let from = 0; from < places; from += 1) for (let to = 0; to < places; to += 1) this.#price(from, to);
    this.#reach.fill(0);
    let last = -1;
    // A place that still gets nearer after as many passes as there are places is reached through a round that gains.
    for (let pass = 0; pass < places; pass += 1) {
      last = this.#pass();
      if (last < 0) return false;
    }
    for (let pass = 0; pass < places; pass += 1) last = this.#before[last]!;
    this.#start = last;
    return true;
  }

  /** Makes the moves of the round that was found. */
  make(): void {
    let to = this.#start;
    do {
      const from = this.#before[to]!;
      this.#move(from, to);
      to = from;
    } while (to !== this.#start);
  }

  #pass(): number {
    let last = -1;
    for (let from = 0; from < places; from += 1)
      for (let to = 0; to < places; to += 1) {
        const length = this.#reach[from]! + this.#changes[from * places + to]!;
        if (length >= this.#reach[to]!) continue;
        this.#reach[to] = length;
        this.#before[to] = from;
        last = to;
      }
    return last;
  }

  #price(from: number, to: number): void {
    const { given, most, room } = this.#filling;
    const at = from * places + to;
    this.#changes[at] = Number.POSITIVE_INFINITY;
    if (from === to) return;
    if (from === spare || to === spare) {
      if (from === spare || room[from]! > 0) this.#changes[at] = 0;
      return;
    }
    for (let place = 0; place < this.#least.length; place += dayCount) {
      const [source, target] = [place + from, place + to];
      if (given[source] === 0 || given[target]! >= most[target]!) continue;
      const change = 2 * (this.#least[target]! + given[target]! - this.#least[source]! - given[source]!) + 2;
      if (change >= this.#changes[at]) continue;
      this.#changes[at] = change;
      this.#kinds[at] = place;
    }
  }

  #move(from: number, to: number): void {
    const { given, room } = this.#filling;
    if (from === spare) room[to]! += 1;
    else if (to === spare) room[from]! -= 1;
    else {
      const place = this.#kinds[from * places + to]!;
      given[place + from]! -= 1;
      given[place + to]! += 1;
    }
  }
}
