import type { Span } from '../../training/running/span.js';
import type { Words } from '../words.js';

/** How hard it should feel, 0 to 10: "5 to 6". */
export const effortSpan = (words: Words, { from, to }: Span): string =>
  from === to ? words.number(from) : words.say('running.span', { from: words.number(from), to: words.number(to) });
