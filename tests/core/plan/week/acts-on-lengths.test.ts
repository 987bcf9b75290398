import { describe, expect, test } from 'vitest';
import * as acts from '../../../../src/plan/week/acts.js';
import type { WeekWishes } from '../../../../src/plan/week/wishes.js';
import { session, sevenDays, wished, wishes } from './seven-days.js';

const { days } = sevenDays;
const tempo = session('tempo', 35, 0);
const strength = session('strength', 35, 1);
const slow = session('slow', 35, 2);
const heavy = session('strength', 40, 4);
const otherSlow = session('slow', 35, 5);
const cross = session('cross', 35, 6);

/** An act on a frozen week, and how its wishes differ from those of that week. */
type Row = readonly [name: string, made: WeekWishes, from: WeekWishes, fields: Partial<WeekWishes>];

const pinnedTwo = wished({ pinned: [strength, heavy] });

const rows: readonly Row[] = [
  [
    'lengths are settled, in order',
    acts.settleSessions(sevenDays, 'strength', [45, 30]),
    wishes,
    { sessions: { strength: [30, 45] }, before: days },
  ],
  [
    'a pin whose length is settled stays, another goes',
    acts.settleSessions(pinnedTwo, 'strength', [40, 35, 35]),
    wishes,
    { sessions: { strength: [35, 35, 40] }, pinned: [strength, heavy], before: days },
  ],
  [
    'of two pins of a length that is settled once, one goes; other kinds stay',
    acts.settleSessions(wished({ pinned: [slow, otherSlow, tempo] }), 'slow', [35, 40]),
    wishes,
    { sessions: { slow: [35, 40] }, pinned: [slow, tempo], before: days },
  ],
  [
    'what is done takes its length before a pin does',
    acts.settleSessions(wished({ done: [slow], pinned: [otherSlow] }), 'slow', [35, 40]),
    wished({ done: [slow] }).wishes,
    { sessions: { slow: [35, 40] }, before: days },
  ],
  [
    'lengths are left to the week again',
    acts.settleSessions(wished({ sessions: { slow: [70], strength: [25, 50] } }), 'strength', null),
    wishes,
    { sessions: { slow: [70] }, before: days },
  ],

  [
    'a session gets another length and stays on its day',
    acts.resizeCard(sevenDays, slow, 45),
    wishes,
    { sessions: { slow: [35, 45] }, pinned: [{ ...slow, minutes: 45 }], before: days },
  ],
  [
    'a pinned session gets another length',
    acts.resizeCard(pinnedTwo, heavy, 50),
    wishes,
    { sessions: { strength: [35, 50] }, pinned: [strength, { ...heavy, minutes: 50 }], before: days },
  ],
  [
    'a session of an even number of steps is split in halves',
    acts.splitCard(sevenDays, heavy, 5),
    wishes,
    { sessions: { strength: [20, 20, 35] }, before: days },
  ],
  [
    'a session of an odd number of steps is split as equal as whole steps allow, and is no longer pinned',
    acts.splitCard(pinnedTwo, strength, 5),
    wishes,
    { sessions: { strength: [15, 20, 40] }, pinned: [heavy], before: days },
  ],
  [
    'a session is split by steps of another method',
    acts.splitCard(sevenDays, strength, 1),
    wishes,
    { sessions: { strength: [17, 18, 40] }, before: days },
  ],
  [
    'two sessions become one, on the day of the first',
    acts.mergeCards(pinnedTwo, heavy, strength),
    wishes,
    { sessions: { strength: [75] }, pinned: [{ ...heavy, minutes: 75 }], before: days },
  ],
  ['a session is taken away', acts.removeCard(sevenDays, cross), wishes, { sessions: { cross: [] }, before: days }],
  [
    'a pinned session is taken away',
    acts.removeCard(pinnedTwo, heavy),
    wishes,
    { sessions: { strength: [35] }, pinned: [strength], before: days },
  ],
  [
    'a session is added',
    acts.addSession(sevenDays, 'cross', 30),
    wishes,
    { sessions: { cross: [30, 35] }, before: days },
  ],
];

describe('an act on lengths makes other wishes:', () => {
  test.each(rows)('%s', (_, made, from, fields) => {
    expect(made).toEqual({ ...from, ...fields });
  });

  test.each([5, 10, 15, 20, 25, 30, 35, 40, 85, 150])(
    'a split of %i minutes keeps the sum, in whole steps',
    (minutes) => {
      const week = { ...sevenDays, sessions: { ...sevenDays.sessions, tempo: [minutes] } };
      const { tempo: halves = [] } = acts.splitCard(week, { ...tempo, minutes }, 5).sessions;
      expect(halves).toHaveLength(2);
      const [less = 0, more = 0] = halves;
      expect([less + more, less % 5, more % 5]).toEqual([minutes, 0, 0]);
      expect(more - less).toBe(minutes % 10 === 0 ? 0 : 5);
    },
  );
});
