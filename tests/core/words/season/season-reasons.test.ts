import { describe, expect, test } from 'vitest';
import defaultMethod from '../../../../shared/methods/default.json';
import { createPlanner } from '../../../../src/plan.js';
import { phaseIds } from '../../../../src/training/method/ids.js';
import { seasonReasons } from '../../../../src/words/season/season-reasons.js';
import { citations } from '../../../../src/words/sources.js';
import { planner } from '../planned.js';
import { languages, leaksIn } from '../sheet/languages.js';
import { english, german } from './seasons.js';

const { method } = planner;

describe('seasonReasons(words, method)', () => {
  test('has every number of the season, the most important first, with how well it is founded', () => {
    const practice = 'common practice, no published source';
    expect(seasonReasons(english, method).map(({ id, status }) => [id, status])).toEqual([
      ['rise', practice],
      ['easier', practice],
      ['taper', 'published'],
      ['single_run', 'published'],
      ['upkeep', 'published'],
      ['way_back', 'assumption, adjustable'],
      ['recovery', 'assumption, adjustable'],
      ['load', 'assumption, adjustable'],
    ]);
  });

  test('names a source that is there for whatever is published', () => {
    for (const { id, status, sources } of seasonReasons(english, method)) {
      if (status === 'published') expect([id, sources.length > 0]).toEqual([id, true]);
      // An unknown id would be cited by itself.
      expect(citations(sources).filter((each) => each.cite === each.id)).toEqual([]);
    }
  });

  test('leaves no gap in either language', () => {
    for (const [words, keys] of languages)
      for (const { text, status } of seasonReasons(words, method)) {
        expect(leaksIn(text, keys)).toEqual([]);
        expect(leaksIn(status, keys)).toEqual([]);
      }
  });

  test('says where an assumption is made, and that no number of a rise is proven', () => {
    const text = (id: string): string => seasonReasons(english, method).find((each) => each.id === id)?.text ?? '';
    for (const id of ['way_back', 'recovery', 'load']) expect(text(id)).toMatch(/assumption/);
    expect(text('rise')).toMatch(/no number is proven/);
    expect(text('single_run')).toMatch(/extrapolation/);
  });

  test("has a coach's own words", async () => {
    const rise = { ...defaultMethod.season.rise, reason: 'As the club has it.', status: 'assumption', sources: [] };
    const own = await createPlanner({ ...defaultMethod, season: { ...defaultMethod.season, rise } });
    if (!own.ok) throw new Error(JSON.stringify(own.problems));
    expect(seasonReasons(german, own.value.method)[0]).toEqual({
      id: 'rise',
      text: 'As the club has it.',
      status: 'Annahme, einstellbar',
      sources: [],
    });
  });
});

describe('the terms of the literature', () => {
  // Bompa (1999) and Matveyev (1977): shared/evidence C20 and C21.
  test('are there for every phase, in both languages', () => {
    expect(phaseIds.map((phase) => english.say(`phase-term.${phase}`))).toEqual([
      'transition',
      'general preparation',
      'specific preparation',
      'pre-competition',
      'competition',
      'transition',
    ]);
    const [, keys] = languages[1] ?? [];
    for (const phase of phaseIds) expect(leaksIn(german.say(`phase-term.${phase}`), keys ?? new Set())).toEqual([]);
  });
});
