import { describe, expect, it } from 'vitest';
import { wishKinds, type Wish } from '../../../../src/training/week/wish.js';
import { loadWords } from '../../../../src/words/load-words.js';
import { wishLine } from '../../../../src/words/week/wish-line.js';
import { german, planner } from '../planned.js';

const words = await loadWords('en');

const none = { day: null, category: null, amount: 0 } as const;

const cases: readonly [Wish, string, string][] = [
  [
    { ...none, kind: 'minutes', category: 'slow', amount: 70 },
    '70 minutes of slow running',
    '70 Minuten langsames Laufen',
  ],
  [{ ...none, kind: 'minutes', category: 'intervals' }, 'no intervals', 'ohne Intervalle'],
  [{ ...none, kind: 'day-minutes', day: 2, amount: 30 }, 'Wednesday has 30 minutes', 'Mittwoch hat 30 Minuten'],
  [{ ...none, kind: 'day-minutes', day: 1 }, 'Tuesday is off', 'am Dienstag ist keine Zeit'],
  [{ ...none, kind: 'free-day', day: 4 }, 'Friday stays free', 'Freitag bleibt frei'],
  [{ ...none, kind: 'long-run', day: 6 }, 'the long run is on Sunday', 'der lange Lauf ist am Sonntag'],
  [{ ...none, kind: 'rest-days', amount: 1 }, 'one rest day at least', 'mindestens ein Ruhetag'],
  [{ ...none, kind: 'rest-days', amount: 3 }, 'three rest days at least', 'mindestens drei Ruhetage'],
  [{ ...none, kind: 'sessions-a-day', amount: 1 }, 'one session a day at most', 'höchstens eine Einheit am Tag'],
  [{ ...none, kind: 'sessions-a-day', amount: 2 }, 'two sessions a day at most', 'höchstens zwei Einheiten am Tag'],
  [
    { kind: 'pinned', day: 2, category: 'tempo', amount: 60 },
    '60 minutes of tempo running stay on Wednesday',
    '60 Minuten Tempolauf bleiben am Mittwoch',
  ],
];

describe('wishLine(words, method, wish)', () => {
  it.each(cases)('%j', (wish, english, other) => {
    expect(wishLine(words, planner.method, wish)).toBe(english);
    expect(wishLine(german, planner.method, wish)).toBe(other);
  });

  it('has a case above for every kind of wish', () => {
    const covered = new Set(cases.map(([{ kind }]) => kind));
    expect(wishKinds.filter((kind) => !covered.has(kind))).toEqual([]);
  });
});
