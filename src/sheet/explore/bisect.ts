/** Two values as near to each other as numbers get, between which something changes. */
export interface Bracket {
  readonly below: number;
  readonly above: number;
}

/** Between two values closer than this, as a part of the larger one, there is no other number. */
const finest = 2 ** -52;

/** The number in the middle of two, null where none is left between them. */
export function middleOf(below: number, above: number): number | null {
  const middle = below + (above - below) / 2;
  const width = above - below;
  const isDone = width <= finest * Math.max(Math.abs(below), Math.abs(above), 1e-12) || middle <= below;
  return isDone || middle >= above ? null : middle;
}

/** Where, from `below` up to `above`, `isAbove` turns from false to true; `isAbove` is taken for false and true there. */
export function bisect({ below, above }: Bracket, isAbove: (value: number) => boolean): Bracket {
  let [low, high] = [below, above];
  for (let middle = middleOf(low, high); middle !== null; middle = middleOf(low, high))
    [low, high] = isAbove(middle) ? [low, middle] : [middle, high];
  return { below: low, above: high };
}
