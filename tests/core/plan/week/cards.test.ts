import { describe, expect, test } from 'vitest';
import { cardAt, cardsOf, isAt } from '../../../../src/plan/week/cards.js';
import { session, sevenDays, wished, wishes } from './seven-days.js';

const week = wished({ pinned: [session('strength', 35, 1)], done: [session('tempo', 35, 0)] });

describe('the cards of a week', () => {
  test('are its sessions day by day, with where they lie and whether they may move', () => {
    expect(cardsOf(week)).toEqual([
      { ...session('tempo', 35, 0), state: 'done' },
      { ...session('strength', 35, 1), state: 'pinned' },
      { ...session('slow', 35, 2), state: 'open' },
      { ...session('intervals', 25, 3), state: 'open' },
      { ...session('strength', 40, 4), state: 'open' },
      { ...session('slow', 35, 5), state: 'open' },
      { ...session('cross', 35, 6), state: 'open' },
    ]);
  });

  test('are none where there is no week', () => {
    expect(cardsOf({ days: null, wishes })).toEqual([]);
  });

  test('come in the order of their day', () => {
    const days = [[], [...(sevenDays.days[1] ?? []), ...(sevenDays.days[2] ?? [])], [], [], [], [], []];
    expect(cardsOf({ days, wishes }).map(({ category }) => category)).toEqual(['strength', 'slow']);
  });

  test('are found by kind and day', () => {
    expect(cardAt(week, { category: 'strength', day: 4 })).toEqual({ ...session('strength', 40, 4), state: 'open' });
    expect(cardAt(week, { category: 'strength', day: 5 })).toBeUndefined();
    expect(isAt({ category: 'slow', day: 2 })(session('slow', 60, 2))).toBe(true);
    expect(isAt({ category: 'slow', day: 2 })(session('cross', 60, 2))).toBe(false);
  });
});
