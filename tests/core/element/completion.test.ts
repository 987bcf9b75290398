import { describe, expect, test } from 'vitest';
import {
  accept,
  replace,
  suggestions,
  typedWord,
  type TextAtCaret,
} from '../../../src/element/formula-field/completion.js';

/** A text with `|` where the caret stands. */
const at = (marked: string): TextAtCaret => ({ text: marked.replace('|', ''), caret: marked.indexOf('|') });
const marked = ({ text, caret }: TextAtCaret): string => `${text.slice(0, caret)}|${text.slice(caret)}`;

const names = [
  { id: 'weekly_hours', name: 'Stunden je Woche' },
  { id: 'slow_share', name: 'Anteil ruhiges Laufen' },
  { id: 'strength_share', name: 'Anteil Kraft' },
  { id: 'strength_cap', name: 'Obergrenze für Kraft' },
  { id: 'cross_minutes', name: 'Übungen zum Ausgleich' },
] as const;
const found = (word: string): string[] => suggestions(names, word).map(({ id }) => id);

describe('typedWord(text at caret)', () => {
  test.each([
    ['|', ''],
    ['stren|', 'stren'],
    ['2 * stren|gth_share + 1', 'stren'],
    ['2 * |strength_share', ''],
    ['weekly_hours *|', ''],
    ['weekly_hours * |', ''],
    ['min(slow_|, 3)', 'slow_'],
    ['ob_ergränze2|', 'ob_ergränze2'],
    ['12|', ''],
    ['2e3|', ''],
    ['a+b|', 'b'],
  ])('%s', (text, word) => {
    expect(typedWord(at(text))).toBe(word);
  });
});

describe('suggestions(names, word)', () => {
  test('puts ids that begin with the word first, then ids that hold it, then plain names, in the order given', () => {
    expect(found('s')).toEqual(['slow_share', 'strength_share', 'strength_cap', 'weekly_hours', 'cross_minutes']);
    expect(found('share')).toEqual(['slow_share', 'strength_share']);
    expect(found('anteil')).toEqual(['slow_share', 'strength_share']);
  });

  test.each([
    ['STRENGTH_C', ['strength_cap']],
    ['ubung', ['cross_minutes']],
    ['Übung', ['cross_minutes']],
    ['fur', ['strength_cap']],
    ['nothing', []],
  ])('does not mind case and accents: %s', (word, ids) => {
    expect(found(word)).toEqual(ids);
  });

  test('has nothing to say where the word is the whole id of the only one', () => {
    expect(found('strength_cap')).toEqual([]);
    expect(found('strength_ca')).toEqual(['strength_cap']);
  });

  test('gives all names for no word, and 8 at most for a word', () => {
    const many = Array.from({ length: 12 }, (_, index) => ({ id: `x${String(index)}`, name: 'X' }));
    expect(suggestions(many, '')).toHaveLength(12);
    expect(suggestions(many, 'x').map(({ id }) => id)).toEqual(many.slice(0, 8).map(({ id }) => id));
  });
});

describe('accept(text at caret, id)', () => {
  test.each([
    ['|', 'slow_share|'],
    ['2 * slo|', '2 * slow_share|'],
    ['2 * sl|ow + 1', '2 * slow_share| + 1'],
    ['2 * |slow + 1', '2 * slow_share| + 1'],
    ['2 * slow| + 1', '2 * slow_share| + 1'],
    ['min(a|,b)', 'min(slow_share|,b)'],
    ['2 * | + 1', '2 * slow_share| + 1'],
    // A number stays as it is.
    ['12|', '12 slow_share|'],
    ['1|2', '1 slow_share |2'],
  ])('%s becomes %s', (before, after) => {
    expect(marked(accept(at(before), 'slow_share'))).toBe(after);
  });
});

test('replace(text, piece, by) puts the caret behind what stands there now', () => {
  expect(marked(replace('2 * slo + 1', { position: 4, length: 3 }, 'slow_share'))).toBe('2 * slow_share| + 1');
  expect(marked(replace('2 * ', { position: 4, length: 0 }, 'a'))).toBe('2 * a|');
});
