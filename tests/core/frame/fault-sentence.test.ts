import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faultSentence, languageOf } from '../../../src/frame/fault-sentence.js';
import { colours, languages } from '../../../src/frame/parameters.js';
import { texts } from '../../../src/frame/texts.js';
import { languages as spoken } from '../../../src/words/load-words.js';

const readText = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');

describe('faultSentence(language, fault)', () => {
  it.each([
    [
      { name: 'hour', value: '4', code: 'unknown-field', allowed: ['hours', 'phase'] },
      'hour is not a known field here. Allowed: hours, phase.',
    ],
    [
      { name: 'scheme', value: 'dim', code: 'not-one-of', allowed: ['light', 'dark'] },
      'scheme is "dim"; allowed: light, dark.',
    ],
    [
      { name: 'text', value: '{field}', code: 'not-one-of', allowed: 'colour' },
      'text is "{field}"; allowed: a CSS colour, such as #20618f.',
    ],
    [
      { name: 'hours', value: '8', code: 'duplicate', allowed: [] },
      'hours is "8", which is taken already; each name stands once.',
    ],
  ] as const)('%j', (fault, sentence) => {
    expect(faultSentence('en', fault)).toBe(sentence);
  });

  it('cuts long values', () => {
    const fault = { name: 'text', value: 'x'.repeat(500), code: 'not-one-of', allowed: 'colour' } as const;
    expect(faultSentence('de', fault)).toBe(`text ist "${'x'.repeat(59)}…; erlaubt: eine CSS-Farbe wie #20618f.`);
  });

  it.each(languages)('fills every place, %s', (language) => {
    for (const code of ['unknown-field', 'not-one-of', 'duplicate'] as const)
      for (const allowed of ['colour', 'length', 'origin'] as const)
        expect(faultSentence(language, { name: 'a', value: 'b', code, allowed })).not.toMatch(/[{}]|undefined/);
  });
});

describe('languageOf(tag)', () => {
  it.each([
    ['de-AT', 'de'],
    ['AR', 'ar'],
    ['nl', 'en'],
    ['', 'en'],
  ])('%j is %j', (tag, language) => {
    expect(languageOf(tag)).toBe(language);
  });
});

describe('what the page to frame knows of the planner', () => {
  it('are all languages that it speaks', () => {
    expect([...languages].sort()).toEqual([...spoken].sort());
  });

  it('are all its colours, and its rounding', () => {
    const source = readText('src/element/weekwright-planner.ts');
    const known = [...source.matchAll(/@cssproperty \[--weekwright-([a-z-]+)/g)].map(([, name]) => name);
    expect([...colours, 'radius'].sort()).toEqual(known.sort());
  });

  it.each(languages)('are its sentences, %s', (language) => {
    const words = JSON.parse(readText(`shared/locales/${language}.json`)) as Record<string, unknown>;
    const { heading, duplicate, ...rest } = texts[language];
    expect(heading).toBe(words['problem.faulty-inputs']);
    expect(duplicate).toBe(words['problem.duplicate']);
    expect(rest['not-one-of']).toBe(words['problem.not-one-of']);
    expect(rest['unknown-field']).toBe(words['problem.unknown-field.fields']);
  });
});
