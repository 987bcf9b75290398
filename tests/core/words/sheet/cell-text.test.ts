import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Unit } from '../../../../src/words/quantity-value.js';
import { cellText, differenceText } from '../../../../src/words/sheet/cell-text.js';
import { runs } from '../../../reference/runs.js';
import { english, german, languages, leaksIn, plain } from './languages.js';

const units: readonly Unit[] = ['hours', 'minutes', 'share', 'phase', 'level', 'event', 'yes-no', 'number'];

describe('cellText(words, unit, value)', () => {
  it.each<[Unit, number, string, string]>([
    ['minutes', 72, '72', '72'],
    ['minutes', 40.55, '40.6', '40,6'],
    ['minutes', 1234.5, '1,234.5', '1.234,5'],
    ['minutes', -0.01, '0', '0'],
    ['hours', 4.25, '4 h 15 min', '4 h 15 min'],
    ['share', 0.3, '30%', '30 %'],
    ['share', 0.125, '12.5%', '12,5 %'],
    ['phase', 4, 'taper', 'Tapering'],
    ['level', 0, 'new', 'neu dabei'],
    ['event', 3, 'half marathon', 'Halbmarathon'],
    ['yes-no', 1, 'yes', 'ja'],
    ['yes-no', 0, 'no', 'nein'],
    ['number', 0.256, '0.26', '0,26'],
    ['minutes', NaN, '–', '–'],
    ['phase', NaN, '–', '–'],
    ['share', Infinity, '–', '–'],
  ])('%s %d is "%s" and "%s"', (unit, value, inEnglish, inGerman) => {
    expect(plain(cellText(english, unit, value))).toBe(inEnglish);
    expect(plain(cellText(german, unit, value))).toBe(inGerman);
  });
});

describe('differenceText(words, unit, { value, reference })', () => {
  it.each<[Unit, number, number, string, string]>([
    ['minutes', 108, 72, '+36', '+36'],
    ['minutes', 72, 108, '−36', '−36'],
    ['minutes', 72.25, 72, '+0.3', '+0,3'],
    ['hours', 4, 5.25, '−1 h 15 min', '−1 h 15 min'],
    ['hours', 0.5, 0, '+30 min', '+30 min'],
    ['share', 0.45, 0.3, '+15 pts', '+15 Pkt.'],
    ['share', 0.3, 0.325, '−2.5 pts', '−2,5 Pkt.'],
    ['number', 2.5, 4, '−1.5', '−1,5'],
  ])('%s: %d against %d is "%s" and "%s"', (unit, value, reference, inEnglish, inGerman) => {
    expect(plain(differenceText(english, unit, { value, reference }))).toBe(inEnglish);
    expect(plain(differenceText(german, unit, { value, reference }))).toBe(inGerman);
  });

  it.each<[what: string, Unit, number, number]>([
    ['equal', 'minutes', 72, 72],
    ['less apart than the screen shows', 'minutes', 72.04, 72],
    ['less apart than the screen shows', 'hours', 4.0005, 4],
    ['less apart than the screen shows', 'share', 0.3004, 0.3],
    ['less apart than the screen shows', 'number', 1.004, 1],
    ['apart by rounding errors', 'minutes', 0.1 + 0.2, 0.3],
    ['no number', 'minutes', NaN, 72],
    ['compared with no number', 'minutes', 72, NaN],
    ['without bounds', 'number', Infinity, 1],
    ['a phase', 'phase', 4, 2],
    ['a level', 'level', 1, 0],
    ['an event', 'event', 5, 3],
    ['an answer', 'yes-no', 1, 0],
  ])('is empty for what is %s: %s %d, %d', (_, unit, value, reference) => {
    for (const [words] of languages) expect(differenceText(words, unit, { value, reference })).toBe('');
  });

  it('turns its sign with the comparison, and never shows what is no number', () => {
    const anyValue = fc.oneof(fc.double(), fc.integer({ min: -20, max: 20 }), fc.constantFrom(NaN, Infinity, 0));
    fc.assert(
      fc.property(fc.constantFrom(...units), anyValue, anyValue, (unit, value, reference) => {
        for (const [words, keys] of languages) {
          const there = differenceText(words, unit, { value, reference });
          const back = differenceText(words, unit, { value: reference, reference: value });
          expect(back).toBe(there === '' ? '' : (there.startsWith('+') ? '−' : '+') + there.slice(1));
          expect(`${there} x`).not.toMatch(/NaN|∞|sheet\./);
          expect(leaksIn(`${cellText(words, unit, value)} x`, keys)).toEqual([]);
        }
      }),
      runs(200, 20_000),
    );
  });
});
