import { describe, expect, test } from 'vitest';
import {
  makeSeasonChange,
  moveSeasonStart,
  pickedIn,
  setSeasonDate,
  setSeasonStart,
  setSeasonWeek,
  setSeasonWeeks,
} from '../../../../src/plan/season/acts.js';
import { seasonChangeKinds, type SeasonChange } from '../../../../src/plan/season/document.js';
import type { SeasonRequest, SeasonWishes, WishedPhase } from '../../../../src/plan/season/wishes.js';
import { seasonOf } from '../../../reference/season/season-door.js';
import { frozen } from '../scenarios/sheets.js';

const byDate: SeasonRequest = frozen({ date: '2027-04-11', weeks: 16, rise: 0.08 });
const byStart: SeasonRequest = frozen({ start: '2026-12-23', rise: 0.08 });
const byBoth: SeasonRequest = frozen({ start: '2026-12-23', date: '2027-04-11', rise: 0.08 });
const wishesOf = (request: SeasonRequest): SeasonWishes => frozen(seasonOf(request).wishes);
const whenOf = (request: SeasonRequest): string => {
  const { wishes, weeks } = seasonOf(request);
  const toMain = weeks.filter(({ weeksToGo }) => weeksToGo >= 0).length;
  return `${wishes.start} to ${wishes.date}, ${toMain}`;
};

describe('an act on the dates of a season', () => {
  type Row = readonly [act: string, by: SeasonRequest, after: SeasonRequest, when: string];
  const weeks = (by: SeasonRequest, count: number) => setSeasonWeeks(by, wishesOf(by), count);
  const date = (by: SeasonRequest, day: string) => setSeasonDate(by, wishesOf(by), day);
  const start = (by: SeasonRequest, day: string) => setSeasonStart(by, wishesOf(by), day);
  const move = (by: SeasonRequest, count: number) => moveSeasonStart(by, wishesOf(by), count);
  const rows: readonly Row[] = [
    // Other weeks move the first day; or the event, where only the first day was given.
    ['weeks', weeks(byDate, 12), { date: '2027-04-11', weeks: 12 }, '2027-01-18 to 2027-04-11, 12'],
    ['weeks', weeks(byBoth, 12), { date: '2027-04-11', weeks: 12 }, '2027-01-18 to 2027-04-11, 12'],
    ['weeks', weeks(byStart, 12), { start: '2026-12-23', weeks: 12 }, '2026-12-23 to 2027-03-14, 12'],
    // Another event moves the first day where the weeks were asked for; else that stays.
    ['date', date(byDate, '2027-04-18'), { date: '2027-04-18', weeks: 16 }, '2026-12-28 to 2027-04-18, 16'],
    ['date', date(byBoth, '2027-04-18'), { start: '2026-12-23', date: '2027-04-18' }, '2026-12-23 to 2027-04-18, 17'],
    ['date', date(byStart, '2027-04-18'), { start: '2026-12-23', date: '2027-04-18' }, '2026-12-23 to 2027-04-18, 17'],
    ['start', start(byDate, '2027-01-06'), { start: '2027-01-06', date: '2027-04-11' }, '2027-01-06 to 2027-04-11, 14'],
    [
      'start',
      start(byStart, '2027-01-06'),
      { start: '2027-01-06', date: '2027-04-11' },
      '2027-01-06 to 2027-04-11, 14',
    ],
    // Moved by whole weeks, over New Year and its week 53; the event stays.
    ['move', move(byDate, 2), { start: '2027-01-04', date: '2027-04-11' }, '2027-01-04 to 2027-04-11, 14'],
    ['move', move(byBoth, -1), { start: '2026-12-14', date: '2027-04-11' }, '2026-12-14 to 2027-04-11, 17'],
    ['move', move(byStart, 1), { start: '2026-12-28', date: '2027-04-11' }, '2026-12-28 to 2027-04-11, 15'],
  ];

  test.each(rows)('%s: %j', (_, after, expected, when) => {
    expect(after).toEqual({ ...expected, rise: 0.08 });
    expect(whenOf(after)).toBe(when);
  });
});

describe('a week set by hand', () => {
  const monday = '2027-02-15';
  const holiday = { start: monday, hours: 0, reason: 'holiday', sessions: {} } as const;

  test('is set by any of its days, and changed by another', () => {
    const set = setSeasonWeek(byDate, '2027-02-17', { hours: 0, reason: 'holiday' });
    expect(set).toEqual({ ...byDate, byHand: [holiday] });
    const again = setSeasonWeek(set, '2027-02-21', { hours: 2 });
    expect(again.byHand).toEqual([{ ...holiday, hours: 2 }]);
    expect(setSeasonWeek(again, monday, { sessions: { slow: [40] } }).byHand).toEqual([
      { ...holiday, hours: 2, sessions: { slow: [40] } },
    ]);
  });

  test('is lifted by null, and by nothing that is left of it', () => {
    const set = setSeasonWeek(byDate, monday, { hours: 0 });
    expect(setSeasonWeek(set, '2027-02-16', null).byHand).toEqual([]);
    expect(setSeasonWeek(set, monday, { hours: null }).byHand).toEqual([]);
    const picked = setSeasonWeek(set, monday, { sessions: { slow: [40] } });
    expect(setSeasonWeek(picked, monday, { hours: null }).byHand).toHaveLength(1);
    expect(setSeasonWeek(byDate, monday, null).byHand).toEqual([]);
  });

  test('leaves the others and the request it came from', () => {
    const two = setSeasonWeek(setSeasonWeek(byDate, monday, { hours: 0 }), '2027-02-22', { hours: 3 });
    expect(two.byHand?.map(({ start }) => start)).toEqual([monday, '2027-02-22']);
    expect(setSeasonWeek(two, monday, null).byHand).toMatchObject([{ start: '2027-02-22', hours: 3 }]);
    expect(byDate.byHand).toBeUndefined();
  });

  test('has its hours, and the durations picked for it', () => {
    const request = setSeasonWeek(byDate, monday, { hours: 5, sessions: { slow: [20, 70] } });
    const season = seasonOf(request);
    const week = season.weeks.find(({ start }) => start === monday);
    // 30 % of 300 minutes are 90.
    expect([week?.hours, week?.why.reason, week?.sessions.slow]).toEqual([5, 'by-hand', [20, 70]]);
    expect(week && pickedIn(season, week)).toEqual({ slow: [20, 70] });
  });

  test('is told that durations which do not fit are left out', () => {
    const season = seasonOf(setSeasonWeek(byDate, monday, { sessions: { slow: [20] } }));
    const week = season.weeks.find(({ start }) => start === monday);
    expect(week?.notices.map(({ code, category }) => [code, category])).toContainEqual(['pick-dropped', 'slow']);
    expect(week?.sessions.slow).not.toEqual([20]);
  });
});

describe('runs that a season cuts shorter', () => {
  test('are what is picked in that week, so that its plan has them too', () => {
    const season = seasonOf({ ...byDate, longestRun: 20 }, { hours: 4, phase: 'base' });
    const [first] = season.weeks;
    expect(first?.sessions.slow).toEqual([20, 25, 25]);
    expect(first && pickedIn(season, first)).toMatchObject({ slow: [20, 25, 25] });
  });
});

describe('a change that helps is made', () => {
  const wishes = wishesOf(byDate);
  const nothing = { amount: 0, phase: null, start: null, category: null, sessions: null };
  const phases: readonly WishedPhase[] = wishes.phases;
  const rows: readonly (readonly [change: SeasonChange, fields: SeasonRequest])[] = [
    [
      { ...nothing, kind: 'phase-weeks', phase: 1, amount: 3 },
      { phases: phases.with(1, { phase: 'build', weeks: 3 }) },
    ],
    [{ ...nothing, kind: 'taper-weeks', amount: 1 }, { taperWeeks: 1 }],
    [{ ...nothing, kind: 'most-hours', amount: 5 }, { mostHours: 5 }],
    [{ ...nothing, kind: 'rise', amount: 0.15 }, { rise: 0.15 }],
    [
      { ...nothing, kind: 'week-hours', start: '2027-02-15', amount: 4 },
      { byHand: [{ start: '2027-02-15', hours: 4, reason: 'other', sessions: {} }] },
    ],
    [
      { ...nothing, kind: 'week-sessions', start: '2027-02-15', category: 'slow', sessions: [40, 40] },
      { byHand: [{ start: '2027-02-15', hours: null, reason: 'other', sessions: { slow: [40, 40] } }] },
    ],
  ];

  test.each(rows)('%j', (change, fields) => {
    expect(makeSeasonChange(byDate, wishes, frozen(change))).toEqual({ ...byDate, ...fields });
  });

  test('by more weeks, whichever way the dates were given: the first week moves, the event stays', () => {
    for (const request of [byDate, byStart, byBoth]) {
      const more = makeSeasonChange(request, wishesOf(request), { ...nothing, kind: 'weeks', amount: 18 });
      expect(whenOf(more)).toBe('2026-12-07 to 2027-04-11, 18');
    }
  });

  test('in every kind there is', () => {
    const made = new Set<string>([...rows.map(([{ kind }]) => kind), 'weeks']);
    expect([...seasonChangeKinds].filter((kind) => !made.has(kind))).toEqual([]);
  });
});
