type Reads = ReadonlyMap<string, readonly string[]>;

/** An order in which every cell comes after the cells it reads, and the circles that stand in its way. */
export interface Order {
  /** Ids of cells, readers after what they read. Cells on a circle are left out. */
  readonly sorted: readonly string[];
  /** For each cell on a circle, a shortest circle from that cell back to itself. */
  readonly circles: ReadonlyMap<string, readonly string[]>;
}

/**
 * Sorts cells by what they read; ids that are no keys of `reads` are ignored.
 *
 * @example orderOf(new Map([['b', ['a']], ['a', []]])).sorted // ['a', 'b']
 */
export function orderOf(reads: Reads): Order {
  const sorted: string[] = [];
  const circles = new Map<string, readonly string[]>();
  for (const knot of knotsOf(reads))
    for (const id of knot) {
      const circle = circleFrom(id, reads, new Set(knot));
      if (circle) circles.set(id, circle);
      else sorted.push(id);
    }
  return { sorted, circles };
}

/**
 * Groups of cells that all depend on each other, most of them of one cell; each group after those it reads (Tarjan,
 * Depth-first search and linear graph algorithms, SIAM Journal on Computing 1, 1972).
 */
function knotsOf(reads: Reads): string[][] {
  const knots: string[][] = [];
  const numbers = new Map<string, number>();
  const open: string[] = [];
  const closed = new Set<string>();

  /** The least number of a cell still open to which the way leads from here. */
  const visit = (id: string): number => {
    const number = numbers.size;
    numbers.set(id, number);
    open.push(id);
    let least = number;
    for (const read of reads.get(id) ?? [])
      if (reads.has(read) && !closed.has(read)) least = Math.min(least, numbers.get(read) ?? visit(read));
    if (least === number) {
      const knot = open.splice(open.indexOf(id));
      for (const member of knot) closed.add(member);
      knots.push(knot);
    }
    return least;
  };
  for (const id of reads.keys()) if (!numbers.has(id)) visit(id);
  return knots;
}

/** A shortest way from a cell back to itself within its knot, if there is one. */
function circleFrom(start: string, reads: Reads, knot: ReadonlySet<string>): readonly string[] | null {
  const seen = new Set<string>();
  const paths = [[start]];
  for (const path of paths)
    for (const read of reads.get(path.at(-1) ?? start) ?? []) {
      if (read === start) return [...path, start];
      if (!knot.has(read) || seen.has(read)) continue;
      seen.add(read);
      paths.push([...path, read]);
    }
  return null;
}
