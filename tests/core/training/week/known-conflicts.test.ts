import { describe, expect, test } from 'vitest';
import type { Conflict } from '../../../../src/training/week/wish.js';
import { roomy, weekOf } from '../../plan/week/weeks.js';
import { session } from '../../plan/week/seven-days.js';
import type { WeekRequest } from '../../../../src/plan/week/wishes.js';

const tempo = session('tempo', 35, 1);
const intervals = session('intervals', 25, 1);
const allDays = [0, 1, 2, 3, 4, 5, 6];

/** A wish and a change in short. */
type Short = readonly [kind: string, about: number | string | null, amount: number];
interface Case {
  readonly week: WeekRequest;
  readonly wishes: readonly Short[];
  /** The single changes that help, in any order. */
  readonly changes: readonly Short[];
}

/* Four hours in build; what stands in the way of what, by hand. Each of these has one cause. */
const cases: Readonly<Record<string, Case>> = {
  'a pin on a day that is over': {
    week: { ...roomy, passed: 2, pinned: [tempo] },
    wishes: [['pinned', 'tempo', 35]],
    changes: [['unpin', 'tempo', 35]],
  },
  'a pin on a free day': {
    week: { ...roomy, free: [1], pinned: [tempo] },
    wishes: [
      ['pinned', 'tempo', 35],
      ['free-day', 1, 0],
    ],
    changes: [
      ['unpin', 'tempo', 35],
      ['use-free-day', 1, 0],
    ],
  },
  'a pin longer than its day': {
    week: { days: roomy.days.with(1, 20), pinned: [tempo] },
    wishes: [
      ['pinned', 'tempo', 35],
      ['day-minutes', 1, 20],
    ],
    changes: [
      ['unpin', 'tempo', 35],
      ['more-minutes', 1, 15],
    ],
  },
  'two quality runs pinned on one day': {
    week: { ...roomy, pinned: [tempo, intervals] },
    wishes: [
      ['pinned', 'tempo', 35],
      ['pinned', 'intervals', 25],
    ],
    changes: [
      ['unpin', 'tempo', 35],
      ['unpin', 'intervals', 25],
    ],
  },
  'a quality run pinned where another is done': {
    week: { ...roomy, done: [tempo], pinned: [intervals] },
    wishes: [['pinned', 'intervals', 25]],
    changes: [['unpin', 'intervals', 25]],
  },
  'more done than the minutes of a kind allow': {
    week: { ...roomy, done: [session('tempo', 60, 1), session('tempo', 60, 3)] },
    wishes: [['minutes', 'tempo', 35]],
    changes: [['settle-sessions', 'tempo', 0]],
  },
  'a session done that is not among those settled': {
    week: { ...roomy, done: [session('tempo', 60, 1)], sessions: { tempo: [35] } },
    wishes: [['minutes', 'tempo', 35]],
    changes: [['settle-sessions', 'tempo', 0]],
  },
  'a long run on a day that is over': {
    week: { ...roomy, passed: 1, longRun: 0 },
    wishes: [
      ['minutes', 'slow', 70],
      ['long-run', 0, 0],
    ],
    changes: [
      ['any-long-run', 0, 0],
      ['settle-sessions', 'slow', 0],
    ],
  },
};

const inShort = (each: Conflict['wishes'][number]): Short => [each.kind, each.category ?? each.day, each.amount];
const ordered = (list: readonly Short[]): readonly Short[] =>
  [...list].sort((one, other) => one.join().localeCompare(other.join()));

describe('what stands in the way, and what helps:', () => {
  test.each(Object.entries(cases))('%s', (_, { week, wishes, changes }) => {
    const { state, conflict } = weekOf(week);
    expect(state).toBe('nothing-fits');
    expect(ordered(conflict?.wishes.map(inShort) ?? [])).toEqual(ordered(wishes));
    const made = conflict?.waysOut.map((way) =>
      way.changes.map(({ kind, day, category, amount }): Short => [kind, category ?? day, amount]),
    );
    expect(made?.every((way) => way.length === 1)).toBe(true);
    expect(ordered(made?.flat() ?? [])).toEqual(ordered(changes));
  });

  // 70, 35, 25, 35 and 75 minutes missed are 14, 7, 5, 7 and 15 steps; 2, 1, 1, 1 and 2 sessions are wished.
  const nothingAtAll = 14 + 7 + 5 + 7 + 15 + 2 * (2 + 1 + 1 + 1 + 2);

  test.each<[string, WeekRequest]>([
    ['every day is over', { ...roomy, passed: 7 }],
    ['no day has minutes', { days: [0, 0, 0, 0, 0, 0, 0] }],
  ])('where %s, only a week without sessions is left', (_, week) => {
    const [way, ...others] = weekOf(week).conflict?.waysOut ?? [];
    expect(others).toEqual([]);
    expect(way?.cost).toBe(nothingAtAll);
    expect(way?.changes.map(({ kind, category, sessions }) => [kind, category, sessions]).sort()).toEqual(
      ['cross', 'intervals', 'slow', 'strength', 'tempo'].map((id) => ['settle-sessions', id, []]),
    );
  });

  test('where every day is free, days are used again one after the other, or there is no week', () => {
    const ways = weekOf({ ...roomy, free: allDays }).conflict?.waysOut ?? [];
    expect(ways.map(({ changes }) => [...new Set(changes.map(({ kind }) => kind))])).toEqual([
      ['use-free-day'],
      ['settle-sessions'],
    ]);
    expect(ways.at(-1)?.cost).toBe(nothingAtAll);
  });

  test('more rest days than are left make way for sessions, as few of them as must be', () => {
    // Tempo, intervals, two of strength (at most an hour each), slow and cross need three days at two a day.
    const { conflict } = weekOf({ ...roomy, restDays: 5 });
    expect(conflict?.waysOut.map(({ changes }) => changes.map(inShortChange))).toContainEqual([['fewer-rest-days', 4]]);
    expect(weekOf({ ...roomy, restDays: 4 }).state).toBe('laid');
  });
});

const inShortChange = ({ kind, amount }: { readonly kind: string; readonly amount: number }): unknown[] => [
  kind,
  amount,
];

test.each([
  ['three sessions on a day that takes two', [tempo, session('slow', 35, 1), session('strength', 35, 1)]],
  ['two quality runs on one day', [tempo, session('intervals', 30, tempo.day)]],
  ['a session on every day', [0, 1, 2, 3, 4, 5, 6].map((day) => session('cross', 20, day))],
])('what is done is never in the way of the rest: %s', (_, done) => {
  const sum = (category: string): number =>
    done.filter((each) => each.category === category).reduce((total, { minutes }) => total + minutes, 0);
  const sessions = sum('cross') > 0 ? { cross: done.map(({ minutes }) => minutes) } : {};
  expect(weekOf({ ...roomy, done, sessions }).state).toBe('laid');
});
