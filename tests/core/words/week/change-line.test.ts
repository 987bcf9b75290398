import { describe, expect, it } from 'vitest';
import { changeKinds, type Change } from '../../../../src/training/week/wish.js';
import { loadWords } from '../../../../src/words/load-words.js';
import { changeLine } from '../../../../src/words/week/change-line.js';
import { wayOutLine } from '../../../../src/words/week/way-out-line.js';
import { german, planner } from '../planned.js';

const words = await loadWords('en');
const { method } = planner;

const none = { day: null, category: null, amount: 0, sessions: null } as const;
const more = (day: number, amount: number): Change => ({ ...none, kind: 'more-minutes', day, amount });
const settled = (category: Change['category'], sessions: readonly number[]): Change => ({
  ...none,
  kind: 'settle-sessions',
  category,
  sessions,
});

const cases: readonly [Change, string, string][] = [
  [more(3, 20), '20 more minutes on Thursday', '20 Minuten mehr am Donnerstag'],
  [more(3, 1), '1 more minute on Thursday', '1 Minute mehr am Donnerstag'],
  [{ ...none, kind: 'use-free-day', day: 4 }, 'use Friday', 'Freitag nutzen'],
  [{ ...none, kind: 'any-long-run', day: 6 }, 'any day for the long run', 'ein beliebiger Tag für den langen Lauf'],
  [{ ...none, kind: 'fewer-rest-days' }, 'no rest day', 'kein Ruhetag'],
  [{ ...none, kind: 'fewer-rest-days', amount: 1 }, 'one rest day', 'ein Ruhetag'],
  [{ ...none, kind: 'fewer-rest-days', amount: 2 }, 'two rest days', 'zwei Ruhetage'],
  [{ ...none, kind: 'more-sessions-a-day', amount: 3 }, 'up to three sessions a day', 'bis zu drei Einheiten am Tag'],
  [
    { ...none, kind: 'unpin', day: 2, category: 'tempo', amount: 60 },
    'let Wednesday’s tempo running move',
    'Tempolauf am Mittwoch nicht festhalten',
  ],
  [settled('slow', [35]), 'slow running once for 35 minutes', 'langsames Laufen einmal mit 35 Minuten'],
  [settled('intervals', []), 'no intervals this week', 'diese Woche ohne Intervalle'],
  [settled('strength', [30, 45]), 'strength as 30 + 45', 'Krafttraining als 30 + 45'],
  [settled('strength', [25, 25, 25]), 'strength as 3 × 25', 'Krafttraining als 3 × 25'],
];

describe('changeLine(words, method, change)', () => {
  it.each(cases)('%j', (change, english, other) => {
    expect(changeLine(words, method, change)).toBe(english);
    expect(changeLine(german, method, change)).toBe(other);
  });

  it('has a case above for every kind of change', () => {
    const covered = new Set(cases.map(([{ kind }]) => kind));
    expect(changeKinds.filter((kind) => !covered.has(kind))).toEqual([]);
  });
});

describe('wayOutLine(words, method, wayOut)', () => {
  it.each<[string, readonly Change[], string, string]>([
    ['one change', [more(3, 20)], '20 more minutes on Thursday', '20 Minuten mehr am Donnerstag'],
    [
      'several',
      [settled('slow', [35]), settled('strength', [45])],
      'slow running once for 35 minutes and strength once for 45 minutes',
      'langsames Laufen einmal mit 35 Minuten und Krafttraining einmal mit 45 Minuten',
    ],
    [
      'the same minutes on several days',
      [more(0, 20), more(3, 20), more(6, 20)],
      '20 more minutes each on Monday, Thursday, and Sunday',
      'je 20 Minuten mehr am Montag, Donnerstag und Sonntag',
    ],
    [
      'different minutes on several days',
      [more(0, 20), more(3, 25)],
      '20 more minutes on Monday and 25 more minutes on Thursday',
      '20 Minuten mehr am Montag und 25 Minuten mehr am Donnerstag',
    ],
    [
      'kinds that are left out',
      [settled('slow', [35]), settled('tempo', []), settled('intervals', [])],
      'slow running once for 35 minutes and no tempo running or intervals this week',
      'langsames Laufen einmal mit 35 Minuten und diese Woche ohne Tempolauf oder Intervalle',
    ],
  ])('of %s', (_, changes, english, other) => {
    expect(wayOutLine(words, method, { changes, cost: 3 })).toBe(english);
    expect(wayOutLine(german, method, { changes, cost: 3 })).toBe(other);
  });
});
