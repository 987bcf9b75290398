/** A text around one of its pieces. */
export interface Excerpt {
  readonly before: string;
  readonly found: string;
  readonly after: string;
}

/** Characters kept on each side: what a small phone shows in two lines. */
const kept = 24;

/**
 * The piece of a text with what stands around it, cut where it is long.
 *
 * @example excerpt('2 * stren + 1', { position: 4, length: 5 }) // { before: '2 * ', found: 'stren', after: ' + 1' }
 */
export function excerpt(text: string, { position, length }: { position: number; length: number }): Excerpt {
  const end = position + length;
  const before = text.slice(0, position);
  const found = text.slice(position, end);
  const after = text.slice(end);
  return {
    before: before.length > kept ? `…${before.slice(-kept)}` : before,
    found: found.length > 2 * kept ? `${found.slice(0, 2 * kept)}…` : found,
    after: after.length > kept ? `${after.slice(0, kept)}…` : after,
  };
}
