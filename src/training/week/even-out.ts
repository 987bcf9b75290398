import { dayCount } from './day-sets.js';
import type { Filling } from './filling.js';

/** The days, and a place for the room that is left: what moves to a day with room needs no other move to make some. */
const spare = dayCount;
const places = dayCount + 1;

/** What it changes to move a step from one place to another, and of which kind of training; null where none can move. */
interface Move {
  readonly kind: number;
  readonly change: number;
}

/**
 * Moves steps between the sessions of each kind until the sum of the squares of all lengths is the least that there is for
 * these sums: a flow of least convex cost, by cancelling rounds of moves that gain (Klein 1967, from memory).
 *
 * @param least steps of each session that do not move, by kind and day.
 */
export function evenOut(filling: Filling, least: Int32Array): void {
  for (let round = gainingRound(filling, least); round; round = gainingRound(filling, least))
    for (const { from, to, kind } of round) {
      if (from === spare) filling.room[to]! += 1;
      else if (to === spare) filling.room[from]! -= 1;
      else {
        filling.given[kind * dayCount + from]! -= 1;
        filling.given[kind * dayCount + to]! += 1;
      }
    }
}

interface Step {
  readonly from: number;
  readonly to: number;
  readonly kind: number;
}

/** Moves one after the other, back to the first place, that gain something together; null where there are none. */
function gainingRound(filling: Filling, least: Int32Array): Step[] | null {
  const moves = Array.from({ length: places * places }, (_, index) =>
    moveBetween(filling, least, { from: Math.floor(index / places), to: index % places }),
  );
  const reach = new Array<number>(places).fill(0);
  const before = new Array<number>(places).fill(-1);
  for (let pass = 0; pass < places; pass += 1) {
    let last = -1;
    moves.forEach((move, index) => {
      const from = Math.floor(index / places);
      const to = index % places;
      if (!move || reach[from]! + move.change >= reach[to]!) return;
      reach[to] = reach[from]! + move.change;
      before[to] = from;
      last = to;
    });
    if (last < 0) return null;
    if (pass === places - 1) return roundThrough(before, last, (from, to) => moves[from * places + to]?.kind ?? 0);
  }
  return null;
}

/** Follows the places back from one that keeps gaining, into the round and once around it. */
function roundThrough(before: readonly number[], last: number, kindOf: (from: number, to: number) => number): Step[] {
  let start = last;
  for (let pass = 0; pass < places; pass += 1) start = before[start]!;
  const steps: Step[] = [];
  for (let to = start; steps.length === 0 || to !== start; to = before[to]!)
    steps.push({ from: before[to]!, to, kind: kindOf(before[to]!, to) });
  return steps;
}

function moveBetween(
  filling: Filling,
  least: Int32Array,
  { from, to }: { readonly from: number; readonly to: number },
): Move | null {
  if (from === to) return null;
  if (from === spare) return { kind: 0, change: 0 };
  if (to === spare) return filling.room[from]! > 0 ? { kind: 0, change: 0 } : null;
  let best: Move | null = null;
  for (let place = 0, kind = 0; place < least.length; place += dayCount, kind += 1) {
    if (filling.given[place + from]! === 0 || filling.given[place + to]! >= filling.most[place + to]!) continue;
    const lengthFrom = least[place + from]! + filling.given[place + from]!;
    const lengthTo = least[place + to]! + filling.given[place + to]!;
    const change = 2 * (lengthTo - lengthFrom) + 2;
    if (!best || change < best.change) best = { kind, change };
  }
  return best;
}
