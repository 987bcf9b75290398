import { describe, expect, it } from 'vitest';
import type { Plan, PlanRequest } from '../../../src/plan.js';
import { headline, headlineText, hoursInWords } from '../../../src/words/headline.js';
import { loadWords } from '../../../src/words/load-words.js';
import { german, planned } from './planned.js';

const words = await loadWords('en');

const picked: PlanRequest = { hours: 4, phase: 'build', sessions: { strength: [30, 45] } };

describe('headline(words, method, plan)', () => {
  it('is the answer as a sentence', () => {
    const { method, plan } = planned(picked);
    expect(headlineText(headline(words, method, plan))).toBe(
      'Four hours in build: 75 minutes of strength, as 30 + 45.',
    );
    expect(headlineText(headline(german, method, plan))).toBe(
      'Vier Stunden in der Aufbauphase: 75 Minuten Krafttraining, als 30 + 45.',
    );
  });

  it('marks the numbers', () => {
    const { method, plan } = planned(picked);
    expect(headline(words, method, plan)).toEqual([
      { text: 'Four hours', strong: true },
      { text: ' ' },
      { text: 'in build' },
      { text: ': ' },
      { text: '75 minutes', strong: true },
      { text: ' of ' },
      { text: 'strength' },
      { text: ', as ' },
      { text: '30 + 45', strong: true },
      { text: '.' },
    ]);
  });

  it.each<[string, PlanRequest, string, string]>([
    [
      'one session',
      { hours: 1, phase: 'base' },
      'One hour in base: 20 minutes of strength, in one session.',
      'Eine Stunde in der Grundlagenphase: 20 Minuten Krafttraining, in einer Einheit.',
    ],
    [
      'hours between whole ones',
      { hours: 2.25, phase: 'recovery' },
      '2 hours 15 minutes in recovery: 35 minutes of strength, in one session.',
      '2 Stunden 15 Minuten in der Erholung: 35 Minuten Krafttraining, in einer Einheit.',
    ],
  ])('of a week with %s', (_, request, english, other) => {
    const { method, plan } = planned(request);
    expect(headlineText(headline(words, method, plan))).toBe(english);
    expect(headlineText(headline(german, method, plan))).toBe(other);
  });

  it('says so where there is no strength', () => {
    const { method, plan } = planned({ hours: 4, phase: 'build' });
    const without: Plan = {
      ...plan,
      rounded: { ...plan.rounded, strength: 0 },
      sessions: { ...plan.sessions, strength: [] },
    };
    expect(headlineText(headline(words, method, without))).toBe('Four hours in build: no strength this week.');
  });
});

describe('hoursInWords(words, hours)', () => {
  it.each([
    [1, 'one hour', 'eine Stunde'],
    [12, 'twelve hours', 'zwölf Stunden'],
    [13, '13 hours', '13 Stunden'],
    [0.5, '30 minutes', '30 Minuten'],
    [4.25, '4 hours 15 minutes', '4 Stunden 15 Minuten'],
  ])('%s is "%s" and "%s"', (hours, english, other) => {
    expect(hoursInWords(words, hours)).toBe(english);
    expect(hoursInWords(german, hours)).toBe(other);
  });
});
