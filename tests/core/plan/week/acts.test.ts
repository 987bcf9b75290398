import { describe, expect, test } from 'vitest';
import * as acts from '../../../../src/plan/week/acts.js';
import type { WeekWishes } from '../../../../src/plan/week/wishes.js';
import { session, sevenDays, wished, wishes } from './seven-days.js';

const { days } = sevenDays;
const tempo = session('tempo', 35, 0);
const strength = session('strength', 35, 1);
const slow = session('slow', 35, 2);
const intervals = session('intervals', 25, 3);
const heavy = session('strength', 40, 4);

/** An act on a frozen week, and how its wishes differ from those of that week. */
type Row = readonly [name: string, made: WeekWishes, from: WeekWishes, fields: Partial<WeekWishes>];

const pinnedTwo = wished({ pinned: [strength, heavy] });
const doneTwo = wished({ done: [tempo, strength], pinned: [heavy], passed: 2 });

const rows: readonly Row[] = [
  ['a day gets other minutes', acts.setDayMinutes(wishes, 2, 45), wishes, { days: wishes.days.with(2, 45) }],
  ['a day is kept free', acts.toggleFree(wished({ free: [5] }).wishes, 2), wishes, { free: [2, 5] }],
  ['a free day is used again', acts.toggleFree(wished({ free: [2, 5] }).wishes, 5), wishes, { free: [2] }],
  [
    'a day falls out, with the pin on it',
    acts.dayFellOut(pinnedTwo, 4),
    wishes,
    { free: [4], pinned: [strength], before: days },
  ],
  ['a free day falls out', acts.dayFellOut(wished({ free: [4] }), 4), wishes, { free: [4], before: days }],

  ['a session is moved', acts.moveCard(sevenDays, tempo, 6), wishes, { pinned: [{ ...tempo, day: 6 }], before: days }],
  [
    'a pinned session is moved, and leaves its day',
    acts.moveCard(pinnedTwo, strength, 6),
    wishes,
    { pinned: [heavy, { ...strength, day: 6 }], before: days },
  ],
  [
    'a session is moved where one of its kind is pinned, which makes way',
    acts.moveCard(pinnedTwo, strength, 4),
    wishes,
    { pinned: [{ ...strength, day: 4 }], before: days },
  ],
  [
    'a session is moved where another kind is pinned, which stays',
    acts.moveCard(pinnedTwo, tempo, 4),
    wishes,
    { pinned: [strength, heavy, { ...tempo, day: 4 }], before: days },
  ],
  ['a session is pinned where it is', acts.moveCard(sevenDays, tempo, 0), wishes, { pinned: [tempo], before: days }],
  ['a session may move again', acts.releaseCard(pinnedTwo, strength), wishes, { pinned: [heavy], before: days }],
  ['a session that may move is released', acts.releaseCard(sevenDays, tempo), wishes, { before: days }],

  ['a session is done', acts.toggleDone(sevenDays, tempo), wishes, { done: [tempo], before: days }],
  [
    'a pinned session is done',
    acts.toggleDone(pinnedTwo, heavy),
    wishes,
    { done: [heavy], pinned: [strength], before: days },
  ],
  [
    'a session is not done after all',
    acts.toggleDone(doneTwo, tempo),
    doneTwo.wishes,
    { done: [strength], before: days },
  ],
  [
    'a session is missed: what came before it is done',
    acts.missCard(pinnedTwo, intervals),
    wishes,
    { done: [tempo, strength, slow], pinned: [heavy], passed: 4, before: days },
  ],
  [
    'a pinned session is missed and no longer pinned',
    acts.missCard(pinnedTwo, heavy),
    wishes,
    { done: [tempo, strength, slow, intervals], pinned: [], passed: 5, before: days },
  ],
  [
    'a session that was done was missed after all',
    acts.missCard(doneTwo, strength),
    doneTwo.wishes,
    { done: [tempo], before: days },
  ],
  [
    'a session is missed after later days are over',
    acts.missCard(wished({ passed: 5 }), slow),
    wishes,
    { done: [tempo, strength], passed: 5, before: days },
  ],
];

describe('an act makes other wishes:', () => {
  test.each(rows)('%s', (_, made, from, fields) => {
    expect(made).toEqual({ ...from, ...fields });
  });

  test('what is done and undone again leaves nothing but the week it was done in', () => {
    const twice = acts.toggleDone(wished(acts.toggleDone(sevenDays, tempo)), tempo);
    expect(twice).toEqual({ ...wishes, before: days });
    expect(acts.toggleFree(acts.toggleFree(wishes, 3), 3)).toEqual(wishes);
    const pinned = acts.moveCard(sevenDays, tempo, 0);
    expect(acts.releaseCard(wished(pinned), tempo)).toEqual({ ...wishes, before: days });
  });
});
