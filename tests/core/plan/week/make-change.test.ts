import { describe, expect, test } from 'vitest';
import { makeChange } from '../../../../src/plan/week/acts.js';
import type { WeekWishes } from '../../../../src/plan/week/wishes.js';
import { changeKinds, type Change } from '../../../../src/training/week/wish.js';
import { frozen } from '../scenarios/sheets.js';
import { session, wishes } from './seven-days.js';

const tempo = session('tempo', 35, 0);
const strength = session('strength', 35, 0);
const full: WeekWishes = frozen({
  ...wishes,
  free: [1, 4],
  longRun: 6,
  restDays: 2,
  pinned: [tempo, strength],
  done: [session('slow', 35, 2)],
  sessions: { slow: [35, 35] },
});
const nothing = { day: null, category: null, amount: 0, sessions: null };

const rows: readonly (readonly [change: Change, fields: Partial<WeekWishes>])[] = [
  [{ ...nothing, kind: 'more-minutes', day: 3, amount: 25 }, { days: wishes.days.with(3, 145) }],
  [{ ...nothing, kind: 'use-free-day', day: 4 }, { free: [1] }],
  [{ ...nothing, kind: 'any-long-run', day: 6 }, { longRun: null }],
  [{ ...nothing, kind: 'fewer-rest-days', amount: 1 }, { restDays: 1 }],
  [{ ...nothing, kind: 'fewer-rest-days', amount: 0 }, { restDays: 0 }],
  [{ ...nothing, kind: 'more-sessions-a-day', amount: 3 }, { sessionsADay: 3 }],
  [{ ...nothing, kind: 'unpin', day: 0, category: 'tempo', amount: 35 }, { pinned: [strength] }],
  [
    { ...nothing, kind: 'settle-sessions', category: 'strength', sessions: [40] },
    { sessions: { slow: [35, 35], strength: [40] } },
  ],
  [{ ...nothing, kind: 'settle-sessions', category: 'slow', sessions: [] }, { sessions: { slow: [] } }],
];

describe('a change that helps is made', () => {
  test.each(rows)('%j', (change, fields) => {
    expect(makeChange(full, frozen(change))).toEqual({ ...full, ...fields });
  });

  test('in every kind there is', () => {
    expect([...new Set(rows.map(([{ kind }]) => kind))].sort()).toEqual([...changeKinds].sort());
  });
});
