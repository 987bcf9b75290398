import { describe, expect, test } from 'vitest';
import { excerpt } from '../../../src/element/formula-field/excerpt.js';
import { editDistance, nearestName } from '../../../src/element/formula-field/nearest-name.js';

const names = ['weekly_hours', 'strength_share', 'strength_cap', 'slow_share', 'hours'].map((id) => ({ id, name: id }));

describe('editDistance(one, other)', () => {
  // Wagner and Fischer, The string-to-string correction problem, 1974, and worked by hand.
  test.each([
    ['', '', 0],
    ['', 'abc', 3],
    ['kitten', 'sitting', 3],
    ['strenght', 'strength', 2],
    ['flaw', 'lawn', 2],
    ['same', 'same', 0],
  ])('%s, %s', (one, other, distance) => {
    expect(editDistance(one, other)).toBe(distance);
    expect(editDistance(other, one)).toBe(distance);
  });
});

describe('nearestName(word, names)', () => {
  test.each([
    ['strenght_share', 'strength_share'],
    ['Strength_Share', 'strength_share'],
    ['stength_cap', 'strength_cap'],
    ['hors', 'hours'],
    ['slow_shares', 'slow_share'],
    // Too far, or not a word.
    ['slow_minutes', undefined],
    ['ho', undefined],
    ['', undefined],
    ['*', undefined],
    ['2', undefined],
    // Known already.
    ['hours', undefined],
  ])('%s', (word, id) => {
    expect(nearestName(word, names)?.id).toBe(id);
  });

  test('the nearest one wins', () => {
    const near = ['abcdefgx', 'abcdefgh1', 'abcdefg'].map((id) => ({ id, name: id }));
    expect(nearestName('abcdefgh', near)?.id).toBe('abcdefgx');
    expect(nearestName('abcdefgy1', near)?.id).toBe('abcdefgh1');
  });
});

describe('excerpt(text, piece)', () => {
  test('is the whole of a short text', () => {
    expect(excerpt('2 * stren + 1', { position: 4, length: 5 })).toEqual({
      before: '2 * ',
      found: 'stren',
      after: ' + 1',
    });
    expect(excerpt('2 *', { position: 3, length: 0 })).toEqual({ before: '2 *', found: '', after: '' });
  });

  test('keeps what stands around the piece in a long one', () => {
    const { before, found, after } = excerpt(`${'a'.repeat(40)}wrong${'b'.repeat(40)}`, { position: 40, length: 5 });
    expect([before, found, after]).toEqual([`…${'a'.repeat(24)}`, 'wrong', `${'b'.repeat(24)}…`]);
    expect(excerpt('c'.repeat(2000), { position: 0, length: 2000 }).found).toBe(`${'c'.repeat(48)}…`);
  });
});
