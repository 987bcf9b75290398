import type { Words } from './words.js';

/** A mark between the parts of a text, as the language writes it: a text of `mark` in shared/locales. */
export type Mark = 'comma' | 'semicolon';

/**
 * Texts one after the other in a line; an empty one is left out, with its mark.
 *
 * @example joined(words, ['effort 8 of 10', '2 repetitions in hand'], 'comma') // 'effort 8 of 10, 2 repetitions in hand'
 */
export const joined = (words: Pick<Words, 'say'>, parts: readonly string[], mark: Mark): string =>
  parts
    .filter((part) => part !== '')
    .reduce((head, rest) => (head === '' ? rest : words.say(`mark.${mark}`, { head, rest })), '');

/**
 * What is told, behind what it is told of. An empty `rest` gives the head with its mark, for what stands in an element of
 * its own.
 *
 * @example headed(words, 'Tempo running', 'effort 6 of 10') // 'Tempo running: effort 6 of 10'
 */
export const headed = (words: Pick<Words, 'say'>, head: string, rest: string): string =>
  words.say('mark.colon', { head, rest });
