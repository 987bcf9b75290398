/** A quantity that a formula may name: its id, and its name in plain words. */
export interface FormulaName {
  readonly id: string;
  readonly name: string;
}

/** The text of a formula, and where in it the caret stands, counted from 0. */
export interface TextAtCaret {
  readonly text: string;
  readonly caret: number;
}

const mostSuggestions = 8;
const runBefore = /[\p{L}\p{M}\p{N}_]*$/u;
const runAfter = /^[\p{L}\p{M}\p{N}_]*/u;

/**
 * The part before the caret of the word that the caret stands in or behind; '' where there is none. A number is no word.
 *
 * @example typedWord({ text: '2 * stren', caret: 9 }) // 'stren'
 */
export function typedWord({ text, caret }: TextAtCaret): string {
  const run = runBefore.exec(text.slice(0, caret))?.[0] ?? '';
  return isNumber(run) ? '' : run;
}

/**
 * The names that a typed word may stand for: first those whose id begins with it, then those whose id holds it, then those
 * whose plain name holds it, each in the order given and 8 at most. Case and accents do not count. For '' all names.
 *
 * @returns none where the word is the whole id of the only one: there is nothing left to complete.
 */
export function suggestions(names: readonly FormulaName[], word: string): readonly FormulaName[] {
  if (word === '') return names;
  const wanted = folded(word);
  const ranked = names.map((name) => ({ name, rank: rankOf(name, wanted) })).filter(({ rank }) => rank < 3);
  const best = ranked.sort((one, other) => one.rank - other.rank).map(({ name }) => name);
  return best.length === 1 && best[0]?.id === word ? [] : best.slice(0, mostSuggestions);
}

function rankOf({ id, name }: FormulaName, wanted: string): number {
  const place = folded(id).indexOf(wanted);
  if (place >= 0) return Math.min(place, 1);
  return folded(name).includes(wanted) ? 2 : 3;
}

/** Letters without their accents and without case. */
const folded = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/**
 * Puts an id in place of the whole word at the caret, or at the caret where there is no word; the caret goes behind it.
 *
 * @example accept({ text: '2 * stren + 1', caret: 6 }, 'strength_share') // { text: '2 * strength_share + 1', caret: 18 }
 */
export function accept({ text, caret }: TextAtCaret, id: string): TextAtCaret {
  const before = runBefore.exec(text.slice(0, caret))?.[0] ?? '';
  const after = runAfter.exec(text.slice(caret))?.[0] ?? '';
  // Behind a number there is no word to replace, and an id that touched it would be part of it.
  const [head, tail] = isNumber(before) ? [0, 0] : [before.length, after.length];
  const put = `${isNumber(before) ? ' ' : ''}${id}${tail < after.length ? ' ' : ''}`;
  return replace(text, { position: caret - head, length: head + tail }, put);
}

/** Replaces a piece of the text; the caret goes behind what stands there now. */
export function replace(
  text: string,
  { position, length }: { position: number; length: number },
  by: string,
): TextAtCaret {
  const head = text.slice(0, position) + by;
  return { text: head + text.slice(position + length), caret: head.length };
}

const isNumber = (run: string): boolean => /^\p{N}/u.test(run);
