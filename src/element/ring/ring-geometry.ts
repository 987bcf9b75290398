/** A part of the ring: where it begins and how long it is, as shares of the whole, clockwise from the top. */
export interface RingPart<T> {
  readonly of: T;
  readonly start: number;
  readonly share: number;
  /** Where the label stands; `side` says to which side of that point the text runs. */
  readonly label: { readonly x: number; readonly y: number; readonly side: 'left' | 'right' };
  /** Where a line to the label leaves the ring. */
  readonly edge: { readonly x: number; readonly y: number };
}

export interface RingSize {
  readonly radius: number;
  readonly labelRadius: number;
  /** Least distance between the middles of two labels on one side. */
  readonly labelGap: number;
  /** Labels stay between this far above and below the middle. */
  readonly labelReach: number;
}

/**
 * Lays the parts of a ring out, with a label at the middle of each; labels that would touch are moved apart.
 *
 * @param weights not negative; parts without weight are left out.
 */
export function ringParts<T>(weights: readonly (readonly [of: T, weight: number])[], size: RingSize): RingPart<T>[] {
  const total = weights.reduce((sum, [, weight]) => sum + weight, 0);
  let start = 0;
  const parts = weights
    .filter(([, weight]) => weight > 0)
    .map(([of, weight]): RingPart<T> => {
      const share = weight / total;
      const part = placed(of, { start, share }, size);
      start += share;
      return part;
    });
  return [...spread(parts, 'right', size), ...spread(parts, 'left', size)].sort((a, b) => a.start - b.start);
}

function placed<T>(of: T, { start, share }: { start: number; share: number }, size: RingSize): RingPart<T> {
  const angle = (start + share / 2) * 2 * Math.PI;
  const [x, y] = [Math.sin(angle), -Math.cos(angle)];
  const label = {
    x: x * size.labelRadius,
    y: y * size.labelRadius,
    side: x < 0 ? ('left' as const) : ('right' as const),
  };
  return { of, start, share, label, edge: { x: x * size.radius, y: y * size.radius } };
}

/** Moves the labels of one side apart, downwards first and then up from the lower bound; none moves into the ring. */
function spread<T>(parts: readonly RingPart<T>[], side: 'left' | 'right', size: RingSize): RingPart<T>[] {
  const { labelGap, labelReach, labelRadius } = size;
  const ours = parts.filter(({ label }) => label.side === side).sort((a, b) => a.label.y - b.label.y);
  const down = ours.reduce<number[]>(
    (ys, { label }) => [...ys, Math.max(label.y, (ys.at(-1) ?? -Infinity) + labelGap, -labelReach)],
    [],
  );
  const up = down.reduceRight<number[]>(
    (ys, y) => [Math.min(y, (ys[0] ?? Infinity) - labelGap, labelReach), ...ys],
    [],
  );
  return ours.map((part, index) => {
    const y = up[index] ?? part.label.y;
    const outside = Math.sqrt(Math.max(0, labelRadius ** 2 - y ** 2));
    const x = Math.max(Math.abs(part.label.x), outside) * (side === 'left' ? -1 : 1);
    return { ...part, label: { x, y, side } };
  });
}
