import { describe, expect, it } from 'vitest';
import { loadWords } from '../../../../src/words/load-words.js';
import { dayTotalLine } from '../../../../src/words/week/day-total-line.js';
import { weekVerdict } from '../../../../src/words/week/week-verdict.js';
import { german, planned } from '../planned.js';

const words = await loadWords('en');

describe('weekVerdict(words, week)', () => {
  it.each([
    [
      { state: 'laid', cost: 0 },
      'Nothing clashes: no week costs less.',
      'Nichts kommt sich in die Quere: keine Woche kostet weniger.',
    ],
    [
      { state: 'laid', cost: 3 },
      'This week costs 3; no week costs less.',
      'Diese Woche kostet 3; keine Woche kostet weniger.',
    ],
    [{ state: 'looking', cost: null }, 'Still looking for the best week.', 'Die beste Woche wird noch gesucht.'],
    [
      { state: 'nothing-fits', cost: null },
      'These wishes cannot hold together.',
      'Diese Wünsche passen nicht zusammen.',
    ],
  ] as const)('%j', (week, english, other) => {
    expect(weekVerdict(words, week)).toBe(english);
    expect(weekVerdict(german, week)).toBe(other);
  });

  it('is the verdict on a week that was laid', () => {
    const { plan } = planned({ hours: 4, week: { days: [60, 0, 45, 60, 0, 90, 120] } });
    // By hand: seven sessions on five days, so two days have two; nothing else has to clash.
    expect(plan.week && weekVerdict(words, plan.week)).toBe('This week costs 2; no week costs less.');
  });
});

describe('dayTotalLine(words, used, available)', () => {
  it.each([
    [55, 60, '55 of 60 min', '55 von 60 min'],
    [0, 60, '0 of 60 min', '0 von 60 min'],
    [0, 0, 'day off', 'frei'],
    // Done, though the day has no time.
    [30, 0, '30 of 0 min', '30 von 0 min'],
  ])('%s of %s is "%s" and "%s"', (used, available, english, other) => {
    expect(dayTotalLine(words, used, available)).toBe(english);
    expect(dayTotalLine(german, used, available)).toBe(other);
  });
});
