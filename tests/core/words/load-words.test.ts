import { describe, expect, it } from 'vitest';
import english from '../../../shared/locales/en.json';
import { firstWords, languages, loadWords, matchLanguage } from '../../../src/words/load-words.js';

describe('matchLanguage(tag)', () => {
  it.each([
    ['de', 'de'],
    ['de-AT', 'de'],
    ['DE_ch', 'de'],
    ['en-GB', 'en'],
    ['nl', 'en'],
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
    expect(loaded.map((words) => words.say('table.total'))).toEqual(['Total', 'المجموع', 'Summe', 'Total', 'Total']);
  });

  it('gives English where the language is unknown', async () => {
    expect(await loadWords('nl')).toBe(await loadWords('en'));
  });

  it('has every English text of shared/locales', async () => {
    const words = await loadWords('en');
    const unlike = Object.entries(english).filter(([key, text]) => typeof text === 'string' && words.say(key) !== text);
    expect(unlike).toEqual([]);
  });
});

describe('firstWords', () => {
  it('has what the first screen says, at once', () => {
    expect(firstWords.language).toBe('en');
    expect(firstWords.say('table.total')).toBe('Total');
    expect(firstWords.say('headline.none', { hours: 'Four hours', phase: 'in build', kind: 'strength' })).toBe(
      'Four hours in build: no strength this week.',
    );
  });
});
