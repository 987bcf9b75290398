import type { FormulaName } from './completion.js';

/**
 * The known name that a word was probably meant to be: at most two letters wrong, and fewer than half of them.
 *
 * @returns null where none is near, where the word is a known id, and where it is no word at all.
 * @example nearestName('strenght_share', names)?.id // 'strength_share'
 */
export function nearestName(word: string, names: readonly FormulaName[]): FormulaName | null {
  if (!/^[\p{L}_][\p{L}\p{N}_]*$/u.test(word) || names.some(({ id }) => id === word)) return null;
  const limit = Math.min(2, (word.length - 1) / 2);
  const near = names
    .filter(({ id }) => Math.abs(id.length - word.length) <= limit)
    .map((name) => ({ name, wrong: editDistance(word.toLowerCase(), name.id.toLowerCase()) }))
    .filter(({ wrong }) => wrong <= limit)
    .sort((one, other) => one.wrong - other.wrong);
  return near[0]?.name ?? null;
}

/**
 * How many letters have to be put in, taken out or changed to make one word the other (Levenshtein 1966).
 *
 * @example editDistance('kitten', 'sitting') // 3
 */
export function editDistance(one: string, other: string): number {
  let above = Array.from({ length: other.length + 1 }, (_, index) => index);
  for (let row = 1; row <= one.length; row += 1) {
    const line = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const changed = (above[column - 1] ?? 0) + (one[row - 1] === other[column - 1] ? 0 : 1);
      line.push(Math.min(changed, (above[column] ?? 0) + 1, (line[column - 1] ?? 0) + 1));
    }
    above = line;
  }
  return above[other.length] ?? 0;
}
