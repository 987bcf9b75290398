import { describe, expect, test } from 'vitest';
import evidence from '../../../shared/evidence/evidence.json' with { type: 'json' };
import english from '../../../shared/locales/en.json' with { type: 'json' };
import german from '../../../shared/locales/de.json' with { type: 'json' };
import { loadSpread } from '../../../src/training/load/load-spread.js';
import { builtInChecks } from '../../../src/training/method/built-in-checks.js';
import { checkedPlan, checkOf } from './checks-door.js';

/*
 * Numbers that texts say, held against the plan or against what was published. The published numbers stand here as they
 * were read; the ids are those of shared/evidence.
 */

const locales: readonly (readonly [string, Readonly<Record<string, unknown>>])[] = [
  ['English', english],
  ['German', german],
];

/** A text in which 5,205 and 5.205, 1.64 and 1,64 are alike, and numbers up to six are digits. */
function plainText(texts: Readonly<Record<string, unknown>>, key: string): string {
  const text = texts[key];
  if (typeof text !== 'string') throw new Error(`no text ${key}`);
  const words = {
    one: 1,
    ein: 1,
    eine: 1,
    two: 2,
    zwei: 2,
    three: 3,
    drei: 3,
    dreimal: 3,
    six: 6,
    sechs: 6,
    eight: 8,
    acht: 8,
  };
  const digits = text.replace(/(\d)[.,](?=\d{3}\b)/g, '$1').replace(/(\d),(?=\d)/g, '$1.');
  return Object.entries(words).reduce(
    (all, [word, value]) => all.replace(new RegExp(`\\b${word}\\b`, 'gi'), String(value)),
    digits,
  );
}

const numbersIn = (text: string): readonly number[] => (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);

describe.each(locales)('the %s text', (_, texts) => {
  const plan = checkedPlan({ hours: 4 });
  const check = checkOf(plan, 'hard-minutes');

  test('on the built-in division says the share and the minutes that the plan has at four hours', () => {
    const { tempo, intervals, slow } = plan.minutes;
    const share = Math.round((100 * (tempo + intervals)) / (tempo + intervals + slow));
    expect(Math.round(100 * (check?.value ?? NaN))).toBe(share);
    const text = plainText(texts, 'differs.hard-share');
    expect(numbersIn(text)).toEqual(expect.arrayContaining([share, tempo, intervals, tempo + intervals + slow]));
    for (const key of ['check-not.hard-minutes-recreational', 'check-not.hard-minutes-competitive'])
      expect(numbersIn(plainText(texts, key))).toContain(share);
  });

  test('on rises of 4 to 5 runs a week says what one hard run is of them', () => {
    expect(numbersIn(plainText(texts, 'check-not.hard-sessions'))).toEqual(expect.arrayContaining([100 / 5, 100 / 4]));
  });

  test('on the forms of the deviation says how much smaller the other monotony is', () => {
    const { monotony, sampleMonotony } = loadSpread([300, 0, 420, 240, 0, 600, 360]);
    const factor = (sampleMonotony ?? NaN) / (monotony ?? NaN);
    expect(numbersIn(plainText(texts, 'check-not.monotony'))).toContain(Math.round(100 * factor) / 100);
  });

  // The key of the text, the sources, and the numbers of it that were published there.
  test.each([
    ['check-reason.activity', [150, 300, 75, 150, 1, 2], 'A04, A06'],
    ['check-reason.youth-hours', [16, 1, 2, 3], 'E12'],
    ['check-reason.rest-days-youth', [1, 2], 'E12'],
    ['check-reason.balance-days', [65, 3], 'E19'],
    ['check-reason.hard-minutes-recreational', [23, 60, 65, 70, 35], 'B07, B08; 65 to 70 and 35 are ours'],
    ['check-reason.hard-minutes-competitive', [71, 21, 8, 29, 80, 30], 'B06, B11; 30 is ours'],
    ['check-reason.hard-sessions', [20], 'B01'],
    ['check-reason.strength-sessions', [2, 3, 6, 20, 2, 8], 'A11'],
    ['check-reason.strength-sessions-older', [65, 2, 2, 3], 'A25'],
    ['check-reason.load', [28], 'D06'],
    ['check-reason.hours-rise', [261, 20, 60, 21, 56, 98], 'C04'],
    ['check-reason.longest-run', [5205, 10, 30, 1.64, 1.52, 30, 100, 2.28], 'C05'],
    ['check-reason.season-longest-run', [5205, 10, 30, 1.64, 1.52, 30, 100, 2.28], 'C05'],
    ['check-reason.classes', [3, 6, 7.5, 9.3, 7.5, 11.8, 5], '2024 Compendium'],
    ['check-reason.screening', [30, 3, 3, 40], 'E02, E03'],
    ['differs.hard-share', [29, 80, 23, 60], 'B06, B11, B07, B08'],
    ['differs.ten-per-cent', [532, 30], 'C01, C05'],
    ['differs.strength-cap', [90, 120, 2, 3], 'common practice, A11'],
  ])('%s has %j, by %s', (key, published) => {
    expect(numbersIn(plainText(texts, key))).toEqual(expect.arrayContaining(published));
  });
});

describe('edges that texts name', () => {
  test('are those of the method', () => {
    const most = (id: string, place = 0) =>
      builtInChecks.list.find((rule) => rule.id === id)?.limits[place]?.in_line.most;
    expect([most('hard-minutes'), most('hard-minutes', 1)]).toEqual([0.35, 0.3]);
    expect(numbersIn(plainText(english, 'check-reason.hard-minutes-recreational'))).toContain(35);
    expect(numbersIn(plainText(english, 'check-reason.hard-minutes-competitive'))).toContain(30);
    expect([most('load'), most('monotony'), most('strain')]).toEqual([0.28, 0.28, 0.28]);
    expect(most('hours-rise')).toBe(0.2);
    expect(numbersIn(plainText(english, 'check-reason.hours-rise'))).toContain(20);
  });
});

describe('what the evidence has', () => {
  const claim = (id: string): string => evidence.find((each) => each.id === id)?.claim ?? '';

  test.each([
    ['A08', '0.338, 95 % interval 0.238 to 0.480'],
    ['A09', '9 articles, 1,904 people'],
    ['A11', '2 to 8 %'],
    ['A19', 'from 335 to 275 seconds after run first, and to 238 seconds after strength first'],
    ['A24', '0.02, 95 % interval −0.21 to 0.25; 19 trials, 482 people'],
    ['B06', '4,581, 1,354 and 487 minutes'],
    ['C01', '20.8 % against 20.3 %'],
    ['C04', '22.6 %, 95 % interval 0.9 to 44.3'],
    ['C05', '5,205 runners, 588,071 sessions'],
    ['D06', 'varies by 28 %, two heart-rate scores by 16 and 11 %'],
    ['E03', '54 % to a professional before any exercise, 3 % before vigorous'],
  ])('%s says %s, as it was read', (id, text) => {
    expect(claim(id)).toContain(text);
  });

  test('has the numbers of the classes that the text on them names', () => {
    for (const number of ['7.5', '9.3', '11.8', '5.0']) expect(claim('herrmann')).toContain(number);
  });

  test('has that the acute-to-chronic ratio pointed the other way, which a text says of it', () => {
    expect(claim('C05')).toMatch(/ratio of a week to the three before it ran the wrong way/);
  });
});
