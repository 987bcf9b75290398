/** A total cut into a number of parts within limits, all in whole units. */
export interface Cut {
  readonly total: number;
  readonly count: number;
  readonly least: number;
  readonly most: number;
}

interface Candidate {
  readonly parts: number[];
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
  const waiting = [first];
  const found: number[][] = [];
  while (found.length < limit) {
    const best = takeBest(waiting);
    if (!best) break;
    found.push(best.parts);
    if (found.length < limit) addLessEven(best, cut, waiting);
  }
  return found;
}

function takeBest(waiting: Candidate[]): Candidate | undefined {
  let [best] = waiting;
  for (const candidate of waiting) if (best && isBetter(candidate, best)) best = candidate;
  if (best) waiting.splice(waiting.indexOf(best), 1);
  return best;
}

function evenest({ total, count, least, most }: Cut): Candidate | null {
  if (count < 1 || total < count * least || total > count * most) return null;
  const small = Math.floor(total / count);
  const larger = total - small * count;
  const parts = new Array<number>(count).fill(small).fill(small + 1, count - larger);
  return { parts, squares: count * small * small + larger * (2 * small + 1) };
}

/**
 * Adds all cuts that one unit's move from a part to an equal or larger one gives; lists stay ascending. Two cuts can lead
 * to the same one, but none leads back to a cut that was taken before: every move makes the squares larger.
 */
function addLessEven({ parts, squares }: Candidate, { least, most }: Cut, waiting: Candidate[]): void {
  for (let giver = 0; giver < parts.length; giver += 1) {
    const given = parts[giver] ?? 0;
    // The first of equal parts gives and the last of equal parts takes: that keeps the list in order.
    if (given === least || given === parts[giver - 1]) continue;
    for (let taker = parts.length - 1; taker > giver; taker -= 1) {
      const taken = parts[taker] ?? 0;
      if (taken === most || taken === parts[taker + 1]) continue;
      const moved = parts.slice();
      moved[giver] = given - 1;
      moved[taker] = taken + 1;
      const isKnown = waiting.some((other) => compareLists(other.parts, moved) === 0);
      if (!isKnown) waiting.push({ parts: moved, squares: squares + 2 * (taken - given) + 2 });
    }
  }
}

function isBetter(left: Candidate, right: Candidate): boolean {
  if (left.squares !== right.squares) return left.squares < right.squares;
  return compareLists(left.parts, right.parts) < 0;
}

/** Orders lists of numbers as a dictionary orders words. */
export function compareLists(left: readonly number[], right: readonly number[]): number {
  for (let index = 0; index < left.length; index += 1) {
    const difference = (left[index] ?? 0) - (right[index] ?? -Infinity);
    if (difference !== 0) return difference;
  }
  return left.length - right.length;
}
