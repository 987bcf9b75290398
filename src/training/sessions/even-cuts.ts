/** A total cut into a number of parts within limits, all in whole units. */
export interface Cut {
  readonly total: number;
  readonly count: number;
  readonly least: number;
  readonly most: number;
}

interface Candidate {
  readonly parts: readonly number[];
  readonly squares: number;
}

/**
 * The most even ways to cut a total into parts, most even first: least sum of squares, then the smaller ascending list.
 *
 * Starts from the cut that is as even as can be and moves one unit at a time from a smaller part to a larger one; every
 * other cut is reached by such moves, each of which makes it less even, so the next best is always at hand.
 *
 * @returns at most `limit` ascending lists; none where no cut fits the limits.
 * @example evenCuts({ total: 15, count: 2, least: 3, most: 12 }, 2) // [[7, 8], [6, 9]]
 */
export function evenCuts(cut: Cut, limit: number): number[][] {
  const first = evenest(cut);
  if (!first) return [];
  const found: number[][] = [];
  const waiting: Candidate[] = [first];
  const seen = new Set<string>([first.parts.join()]);
  while (found.length < limit && waiting.length > 0) {
    const best = waiting.reduce((left, right) => (isBetter(right, left) ? right : left));
    waiting.splice(waiting.indexOf(best), 1);
    found.push([...best.parts]);
    for (const next of lessEven(best, cut)) {
      const key = next.parts.join();
      if (!seen.has(key)) waiting.push(next);
      seen.add(key);
    }
  }
  return found;
}

function evenest({ total, count, least, most }: Cut): Candidate | null {
  if (count < 1 || total < count * least || total > count * most) return null;
  const small = Math.floor(total / count);
  const larger = total - small * count;
  const parts = Array.from({ length: count }, (_, index) => (index < count - larger ? small : small + 1));
  return { parts, squares: parts.reduce((sum, part) => sum + part * part, 0) };
}

/** All cuts that one unit's move from a part to an equal or larger one gives; lists stay ascending. */
function lessEven({ parts, squares }: Candidate, { least, most }: Cut): Candidate[] {
  const next: Candidate[] = [];
  for (let giver = 0; giver < parts.length; giver += 1) {
    const given = parts[giver] ?? 0;
    // The first of equal parts gives and the last of equal parts takes: that keeps the list in order.
    if (given === least || given === parts[giver - 1]) continue;
    for (let taker = parts.length - 1; taker > giver; taker -= 1) {
      const taken = parts[taker] ?? 0;
      if (taken === most || taken === parts[taker + 1]) continue;
      const moved = [...parts];
      moved[giver] = given - 1;
      moved[taker] = taken + 1;
      next.push({ parts: moved, squares: squares + 2 * (taken - given) + 2 });
    }
  }
  return next;
}

function isBetter(left: Candidate, right: Candidate): boolean {
  if (left.squares !== right.squares) return left.squares < right.squares;
  return compareLists(left.parts, right.parts) < 0;
}

/** Orders lists of numbers as a dictionary orders words. */
export function compareLists(left: readonly number[], right: readonly number[]): number {
  const index = left.findIndex((part, position) => part !== right[position]);
  return index === -1 ? left.length - right.length : (left[index] ?? 0) - (right[index] ?? Infinity);
}
