import { describe, expect, it, test } from 'vitest';
import { headed, joined } from '../../../src/words/joined.js';
import { loadWords } from '../../../src/words/load-words.js';

const parts = ['a', 'b', 'c'];

// Marks as the languages write them: in French with a narrow no-break space before all but the comma (Imprimerie nationale,
// Lexique des règles typographiques), in Arabic with a comma and a semicolon of its own (U+060C, U+061B).
describe.each([
  ['en', 'a: b', 'a, b, c', 'a; b; c'],
  ['de', 'a: b', 'a, b, c', 'a; b; c'],
  ['es', 'a: b', 'a, b, c', 'a; b; c'],
  ['fr', 'a\u202F: b', 'a, b, c', 'a\u202F; b\u202F; c'],
  ['ar', 'a: b', 'a\u060C b\u060C c', 'a\u061B b\u061B c'],
])('the marks of %s', (language, head, commas, semicolons) => {
  test('headed(words, head, rest) puts a colon between', async () => {
    expect(headed(await loadWords(language), 'a', 'b')).toBe(head);
  });

  test("joined(words, parts, 'comma') puts a comma between", async () => {
    expect(joined(await loadWords(language), parts, 'comma')).toBe(commas);
  });

  test("joined(words, parts, 'semicolon') puts a semicolon between", async () => {
    expect(joined(await loadWords(language), parts, 'semicolon')).toBe(semicolons);
  });
});

describe('joined(words, parts, mark)', async () => {
  const english = await loadWords('en');

  it.each([
    ['nothing for no parts', [], ''],
    ['nothing for empty parts', ['', ''], ''],
    ['one part as it is', ['a'], 'a'],
    ['no mark for an empty part, wherever it stands', ['', 'a', '', 'b', ''], 'a; b'],
    ['parts that look like a place to fill as they are', ['{rest}', '{head}'], '{rest}; {head}'],
  ])('gives %s', (_, given, expected) => {
    expect(joined(english, given, 'semicolon')).toBe(expected);
  });
});

test('headed(words, head, rest) gives the head with its mark where the rest is empty', async () => {
  expect(headed(await loadWords('en'), 'a', '')).toBe('a: ');
});
