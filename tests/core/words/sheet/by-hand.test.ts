import { describe, expect, it } from 'vitest';
import { builtInMethod as method } from '../../../../src/training/method/built-in.js';
import { byHandLine } from '../../../../src/words/by-hand-line.js';
import { derivationLines } from '../../../../src/words/derivation-lines.js';
import { noticeSentence } from '../../../../src/words/notice-sentence.js';
import { problemSentence } from '../../../../src/words/problem-sentence.js';
import { outcomeOf, planOf, sheetWith } from '../../plan/scenarios/sheets.js';
import { english, german, languages, leaksIn } from './languages.js';

/** Every quantity of a scenario in words: its line by hand, and the notice of it. */
async function said(over: Readonly<Record<string, string | number>>, words = english) {
  const plan = await planOf(sheetWith(over));
  return {
    line: (quantity: string) => derivationLines(words, { method, plan }, quantity)?.byHand,
    notices: plan.notices
      .filter(({ code }) => code === 'by-hand')
      .map((notice) => noticeSentence(words, method, notice)),
    all: [
      ...Object.keys(plan.derivations).map(
        (quantity) => derivationLines(words, { method, plan }, quantity)?.byHand ?? 'none',
      ),
      ...plan.notices.map((notice) => noticeSentence(words, method, notice)),
    ],
  };
}

describe('byHandLine(words, method, derivation)', () => {
  it('says what stands instead of what, by which formula', async () => {
    const { line } = await said({ strength_minutes: 'value + weekly_hours * 7' });
    expect(line('strength_minutes')).toBe('100 minutes instead of 72 minutes: minutes of strength + hours a week × 7');
    expect(line('slow_minutes')).toBe('60 minutes instead of 72 minutes; it gives way to minutes of strength');
    expect(line('weekly_minutes')).toBeNull();
  });

  it('is German in German', async () => {
    const { line } = await said({ strength_share: 0.5 }, german);
    expect(line('tempo_share')?.replaceAll('\u00A0', ' ')).toBe(
      '10,7 % statt 15 %; macht Platz für Anteil Krafttraining',
    );
  });

  it('has words for what has no value', () => {
    const byHand = { kind: 'override', formula: '1 / 0', readings: [], before: null, to: [] } as const;
    expect(byHandLine(english, method, { quantity: 'slow_minutes', value: null, byHand })).toBe(
      'no value instead of no value: 1 ÷ 0',
    );
  });
});

describe('noticeSentence(words, method, notice) of what is set by hand', () => {
  it('tells whether others give way', async () => {
    expect((await said({ strength_minutes: 100 })).notices).toEqual([
      'Strength is set by hand: 100 minutes instead of 72 minutes; the others give way.',
    ]);
    expect((await said({ weekly_hours: 5, running_share: 0.5 })).notices).toEqual([
      'Hours a week is set by hand: 5 hours instead of 4 hours.',
      'Share of running is set by hand: 50% instead of 55%.',
    ]);
    expect((await said({ season_phase: 'phase_taper' })).notices).toEqual([
      'Season phase is set by hand: taper instead of build.',
    ]);
  });

  it('has words for a value that fails', async () => {
    const { notices } = await said({ running_share: '1 / 0' });
    expect(notices).toEqual(['Share of running is set by hand: no value instead of 55%.']);
  });

  it.each([
    { slow_share: 0.5, strength_minutes: 60, slow_rounded: 80, weekly_hours: 6 },
    { in_season_slow_share: 0.4, split_taper: 1, total_rounded: 300, slow_shortest: 25 },
    { running_share: '1 / 0', notice_few_hours: 1, athlete_level: 0, strength_cap: 95 },
  ])('leaves no key, placeholder or NaN: %o', async (over) => {
    for (const [words, keys] of languages)
      expect((await said(over, words)).all.flatMap((text) => leaksIn(text, keys))).toEqual([]);
  });
});

describe('problemSentence(words, problem) of what is set by hand', () => {
  it.each([
    [{ strength_minutes: 300 }, /what is set by hand is 60 more than there is/i],
    [{ weekly_hours: 30 }, 'hours is 30; allowed: 0.5 to 20.'],
    [{ slow_rounded: -10 }, 'slow_rounded is -10; allowed: 0 to 10,080.'],
    [{ slow_shortest: 22 }, /^slow_shortest .*22.* 5/],
    [{ slow_longest: 30 }, /slow_longest.*slow_typical|slow_typical.*slow_longest/],
    [{ slow_rounded: 300 }, /held by hand beyond the week, cannot be rounded/],
    [{ slow_minutes: 'tempo_minutes + 1' }, /slow_minutes → tempo_minutes → slow_minutes/],
  ])('%o', async (over, sentence) => {
    const outcome = await outcomeOf(sheetWith(over));
    const [problem] = outcome.ok ? [] : outcome.problems;
    if (!problem) throw new Error('there is a plan');
    expect(problemSentence(english, problem)).toMatch(sentence);
    for (const [words, keys] of languages) expect(leaksIn(problemSentence(words, problem), keys)).toEqual([]);
  });
});
