import { describe, expect, it } from 'vitest';
import { languages, loadWords, matchLanguage } from '../../../src/words/load-words.js';

describe('matchLanguage(tag)', () => {
  it.each([
    ['de', 'de'],
    ['de-AT', 'de'],
    ['DE_ch', 'de'],
    ['en-GB', 'en'],
    ['fr', 'en'],
    ['', 'en'],
    ['constructor', 'en'],
  ])('%j is %j', (tag, expected) => {
    expect(matchLanguage(tag)).toBe(expected);
  });
});

describe('loadWords(tag)', () => {
  it('loads every language there is', async () => {
    const loaded = await Promise.all(languages.map((language) => loadWords(language)));
    expect(loaded.map(({ language }) => language)).toEqual(languages);
    expect(loaded.map((words) => words.say('table.total'))).toEqual(['Total', 'Summe']);
  });

  it('gives English where the language is unknown, without loading anything', async () => {
    expect(await loadWords('fr')).toBe(await loadWords('en'));
  });
});
