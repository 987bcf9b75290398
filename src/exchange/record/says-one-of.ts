import { kindKey } from './kinds-in.js';

/** A longer text is prose: no title of a column, no name of a kind. */
const longest = 200;
const between = /[^\p{L}\p{N}]+/u;
const spaced = (key: string): string => ` ${key.split(between).filter(Boolean).join(' ')} `;

/** How well a text says one of some words: 2 where it is one of them, 1 where one stands in it among others, else 0. */
export type Says = (text: string) => 0 | 1 | 2;

/**
 * Tells how well a text says one of the words.
 *
 * @example saysOneOf(['dauer'])('Dauer (min)') // 1
 */
export function saysOneOf(words: readonly string[]): Says {
  const keys = words.map(kindKey).filter((key) => key !== '');
  const inside = keys.map(spaced).filter((key) => key.trim() !== '');
  return (text) => {
    if (text.length > longest) return 0;
    const key = kindKey(text);
    if (keys.includes(key)) return 2;
    const around = spaced(key);
    return inside.some((word) => around.includes(word)) ? 1 : 0;
  };
}
