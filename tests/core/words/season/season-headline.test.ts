import { describe, expect, test } from 'vitest';
import type { SeasonRequest } from '../../../../src/plan/season/wishes.js';
import { loadWords } from '../../../../src/words/load-words.js';
import { seasonHeadline } from '../../../../src/words/season/season-headline.js';
import { leaksIn, languages } from '../sheet/languages.js';
import { english, german, planned } from './seasons.js';

describe('seasonHeadline(words, inputs, season)', () => {
  // 11 April 2027 is a Sunday. Numbers by hand: tests/reference/season/worked-season.test.ts.
  test.each<[string, SeasonRequest, string, string]>([
    [
      'rises to its most',
      {},
      'Half marathon on Sunday, April 11, 2027: 16 weeks, from 4 hours a week to 6 hours in week 11, the last 2 weeks a taper.',
      'Halbmarathon am Sonntag, 11. April 2027: 16 Wochen, von 4 Stunden pro Woche auf 6 Stunden in Woche 11, die letzten 2 Wochen als Tapering.',
    ],
    [
      'keeps its level',
      { mostHours: 4, taperWeeks: 1 },
      'Half marathon on Sunday, April 11, 2027: 16 weeks, 4 hours a week at most, the last week a taper.',
      'Halbmarathon am Sonntag, 11. April 2027: 16 Wochen, höchstens 4 Stunden pro Woche, die letzte Woche als Tapering.',
    ],
    [
      'has no taper and no rest',
      { mostHours: 4, taperWeeks: 0, recoveryWeeks: 0 },
      'Half marathon on Sunday, April 11, 2027: 16 weeks, 4 hours a week at most.',
      'Halbmarathon am Sonntag, 11. April 2027: 16 Wochen, höchstens 4 Stunden pro Woche.',
    ],
    [
      'has one week',
      { weeks: 1, taperWeeks: 0 },
      'Half marathon on Sunday, April 11, 2027: one week, 4 hours a week at most.',
      'Halbmarathon am Sonntag, 11. April 2027: eine Woche, höchstens 4 Stunden pro Woche.',
    ],
  ])('of a season that %s', (_, request, expected, other) => {
    const { inputs, season } = planned(request);
    expect(seasonHeadline(english, inputs, season)).toBe(expected);
    expect(seasonHeadline(german, inputs, season)).toBe(other);
  });

  test('does not call a week set by hand the most', () => {
    const { inputs, season } = planned({ byHand: [{ start: '2027-01-18', hours: 12 }] });
    expect(seasonHeadline(english, inputs, season)).toContain('from 4 hours a week to 6 hours in week');
  });

  test.each([
    ['en', 'Until Sunday, April 11, 2027, without an event: 16 weeks, '],
    ['de', 'Bis Sonntag, 11. April 2027, ohne Wettkampf: 16 Wochen, '],
    ['es', 'Hasta el domingo, 11 de abril de 2027, sin competición: 16 semanas, '],
    ['fr', 'Jusqu’au dimanche 11 avril 2027, sans compétition\u202F: 16 semaines, '],
    ['ar', 'حتى الأحد، 11 أبريل 2027، بلا سباق: 16 أسبوعا، '],
  ])('says in %s that a season leads to no event', async (language, beginning) => {
    const { inputs, season } = planned();
    const line = seasonHeadline(await loadWords(language), { ...inputs, event: 'none' }, season);
    expect(line.slice(0, beginning.length)).toBe(beginning);
  });

  test('leaves no gap for any event', () => {
    const { inputs, season } = planned();
    for (const event of ['none', '5k', '10k', 'half-marathon', 'marathon', 'longer'] as const)
      for (const [words, keys] of languages)
        expect(leaksIn(seasonHeadline(words, { ...inputs, event }, season), keys)).toEqual([]);
  });
});
