import type { Words } from '../words.js';

/** A week has seven days; larger numbers are written in figures. */
const mostWrittenOut = 7;

/**
 * What a text about a few things needs: `count` chooses its plural form, `number` is written out from two to seven.
 *
 * @example counted(words, 3) // { count: 3, number: 'three' }
 */
export function counted(words: Words, count: number): { readonly count: number; readonly number: string } {
  const isWrittenOut = count >= 2 && count <= mostWrittenOut;
  return { count, number: isWrittenOut ? words.say(`week.number.${count}`) : words.number(count) };
}
