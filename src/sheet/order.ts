/** An order in which every cell comes after the cells it reads, and the circles that stand in its way. */
export interface Order {
  /** Ids of cells, readers after what they read. Cells on a circle are left out. */
  readonly sorted: readonly string[];
  /** For each cell on a circle, the circle from that cell back to itself. */
  readonly circles: ReadonlyMap<string, readonly string[]>;
}

/**
 * Sorts cells by what they read; ids that are no keys of `reads` are ignored.
 *
 * @example orderOf(new Map([['b', ['a']], ['a', []]])).sorted // ['a', 'b']
 */
export function orderOf(reads: ReadonlyMap<string, readonly string[]>): Order {
  const sorted: string[] = [];
  const circles = new Map<string, readonly string[]>();
  const state = new Map<string, 'open' | 'done'>();
  const path: string[] = [];

  const close = (id: string): void => {
    const circle = path.slice(path.indexOf(id));
    circle.forEach((member, index) => {
      if (!circles.has(member)) circles.set(member, [...circle.slice(index), ...circle.slice(0, index), member]);
    });
  };
  const visit = (id: string): void => {
    if (state.get(id) === 'done' || !reads.has(id)) return;
    if (state.get(id) === 'open') return close(id);
    state.set(id, 'open');
    path.push(id);
    for (const read of reads.get(id) ?? []) visit(read);
    path.pop();
    state.set(id, 'done');
    sorted.push(id);
  };
  for (const id of reads.keys()) visit(id);
  return { sorted: sorted.filter((id) => !circles.has(id)), circles };
}
