import { describe, expect, test } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import { Planner } from '../../../../src/plan/planner.js';
import { seasonNoticeCodes } from '../../../../src/plan/season/document.js';
import type { Problem } from '../../../../src/problem.js';
import { createSheet } from '../../../../src/sheet/sheet.js';
import { builtInFormulas } from '../../../../src/training/method/built-in-formulas.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { expandMethod } from '../../../../src/training/method/expand.js';
import { eventIds } from '../../../../src/training/method/ids.js';
import { seasonPhaseIds } from '../../../../src/training/method/season-rules.js';
import { seasonOf } from '../../../reference/season/season-door.js';
import { inShort } from '../../in-short.js';
import { valueOf } from '../../training/method/documents.js';

const planner = builtInPlanner();
/** Requests from outside, which no compiler has seen. */
const ask = (season: unknown) => planner.plan({ hours: 4, season });
const problemsOf = (season: unknown): readonly Problem[] => {
  const outcome = ask(season);
  return outcome.ok ? [] : outcome.problems;
};

type Fault = readonly [code: Problem['code'], allowed?: Problem['allowed'], given?: unknown];
type Row = readonly [changes: unknown, path: string, value: unknown, ...Fault];

const date = '2027-04-11';
const dates = { least: '1900-01-01', most: '2199-12-31' };
const days = (count: number) => Array.from({ length: count }, () => ({ date, event: '5k' }));
const range = (least: number, most: number): Fault => ['out-of-range', { least, most }];
const type = (expected: string, given?: unknown): Fault => ['wrong-type', { expected }, given];
const whole: Fault = ['not-a-step', { step: 1 }];
const unknownField: Fault = ['unknown-field', {}];

/** What differs from a season to 11 April 2027, or the whole season in a list. */
const rows: Readonly<Record<string, readonly Row[]>> = {
  dates: [
    [{ date: '2027-02-30' }, 'date', '2027-02-30', 'no-date', dates],
    [{ date: '2027-02-29' }, 'date', '2027-02-29', 'no-date', dates],
    [{ date: '11.4.2027' }, 'date', '11.4.2027', 'no-date', dates],
    [{ date: '' }, 'date', '', 'no-date', dates],
    [{ date: '2200-01-01' }, 'date', '2200-01-01', 'no-date', dates],
    [{ date: 20270411 }, 'date', 20270411, ...type('text')],
    [{ date: null }, 'date', null, ...type('text')],
    [{ start: '2026-13-01' }, 'start', '2026-13-01', 'no-date', dates],
    [{ start: '1899-12-31' }, 'start', '1899-12-31', 'no-date', dates],
    [[{ weeks: 16 }], 'date', undefined, 'missing'],
    [[{}], 'date', undefined, 'missing'],
    // The event a day before the week of the first day, and 105 weeks on.
    [{ start: '2027-04-12' }, 'date', date, 'too-far-apart', { start: '2027-04-12', most: 104 }],
    [{ start: '2025-04-13' }, 'date', date, 'too-far-apart', { start: '2025-04-13', most: 104 }],
    // Three given that do not agree: from the week of 21 December it is sixteen.
    [{ start: '2026-12-23', weeks: 15 }, 'weeks', 15, 'not-one-of', { choices: [16] }],
    [{ weeks: 0 }, 'weeks', 0, ...range(1, 104)],
    [{ weeks: 105 }, 'weeks', 105, ...range(1, 104)],
    [{ weeks: 15.5 }, 'weeks', 15.5, ...whole],
    [{ weeks: '16' }, 'weeks', '16', ...type('number')],
    // The season would begin before there are dates, or end after.
    [[{ date: '1900-01-10', weeks: 16 }], 'date', '1900-01-10', 'no-date', dates],
    [[{ start: '2199-12-20', weeks: 16 }], 'start', '2199-12-20', 'no-date', dates],
    [{ events: [{ date: '2027-02-30', event: '5k' }] }, 'events[0].date', '2027-02-30', 'no-date', dates],
    [{ byHand: [{ start: '2027-02-30' }] }, 'byHand[0].start', '2027-02-30', 'no-date', dates],
  ],
  hours: [
    [{ hours: 0.49 }, 'hours', 0.49, ...range(0.5, 20)],
    [{ hours: 20.01, mostHours: 20 }, 'hours', 20.01, ...range(0.5, 20)],
    [{ hours: '4' }, 'hours', '4', ...type('number')],
    [{ hours: NaN }, 'hours', NaN, ...type('number')],
    // A most below the hours at the start is no fault: the season begins with it, and says so.
    [{ mostHours: 0.49 }, 'mostHours', 0.49, ...range(0.5, 20)],
    [{ mostHours: 20.25 }, 'mostHours', 20.25, ...range(0.5, 20)],
    [{ mostHours: Infinity }, 'mostHours', Infinity, ...range(0.5, 20)],
    [{ byHand: [{ start: date, hours: -1 }] }, 'byHand[0].hours', -1, ...range(0, 20)],
    [{ byHand: [{ start: date, hours: 20.25 }] }, 'byHand[0].hours', 20.25, ...range(0, 20)],
    [{ byHand: [{ start: date, hours: '0' }] }, 'byHand[0].hours', '0', ...type('number')],
  ],
  'parts and counts': [
    [{ rise: -0.01 }, 'rise', -0.01, ...range(0, 1)],
    [{ rise: 1.01 }, 'rise', 1.01, ...range(0, 1)],
    [{ easierEvery: 9 }, 'easierEvery', 9, ...range(0, 8)],
    [{ easierEvery: 2.5 }, 'easierEvery', 2.5, ...whole],
    [{ easierDrop: 0.96 }, 'easierDrop', 0.96, ...range(0, 0.95)],
    [{ taperWeeks: 4 }, 'taperWeeks', 4, ...range(0, 3)],
    [{ taperDrop: 1 }, 'taperDrop', 1, ...range(0, 0.95)],
    [{ upkeepFrom: 'build' }, 'upkeepFrom', 'build', 'not-one-of', { choices: ['never', 'taper', 'peak'] }],
    [{ upkeepSessions: 0 }, 'upkeepSessions', 0, ...range(1, 3)],
    [{ upkeepSessions: 4 }, 'upkeepSessions', 4, ...range(1, 3)],
    [{ recoveryWeeks: 9 }, 'recoveryWeeks', 9, ...range(0, 8)],
    [{ weeksOff: -1 }, 'weeksOff', -1, ...range(0, 104)],
    [{ weeksOff: 105 }, 'weeksOff', 105, ...range(0, 104)],
    [{ longestRun: -5 }, 'longestRun', -5, ...range(0, 10_080)],
    [{ longestRun: 62.5 }, 'longestRun', 62.5, ...whole],
  ],
  'phases, events and weeks by hand': [
    [{ phases: [] }, 'phases', [], 'missing', {}, 'list of 0'],
    [{ phases: 'base' }, 'phases', 'base', ...type('list')],
    [{ phases: [{ phase: 'taper' }] }, 'phases[0].phase', 'taper', 'not-one-of', { choices: seasonPhaseIds }],
    [{ phases: [{ weeks: 4 }] }, 'phases[0].phase', undefined, 'missing'],
    [{ phases: [{ phase: 'base', weeks: -1 }] }, 'phases[0].weeks', -1, ...range(0, 104)],
    [{ events: [{ date, event: 'mile' }] }, 'events[0].event', 'mile', 'not-one-of', { choices: eventIds }],
    [{ events: [{ event: '5k' }] }, 'events[0].date', undefined, 'missing'],
    [{ events: [date] }, 'events[0]', date, ...type('object')],
    [{ byHand: [{ hours: 0 }] }, 'byHand[0].start', undefined, 'missing'],
    [
      { byHand: [{ start: date, reason: 'lazy' }] },
      ...(['byHand[0].reason', 'lazy', 'not-one-of', { choices: ['holiday', 'ill', 'other'] }] as const),
    ],
    // A Monday and a Sunday of one week.
    [{ byHand: [{ start: '2027-04-05' }, { start: date }] }, 'byHand[1].start', date, 'duplicate'],
    [{ byHand: [{ start: date, sessions: { slow: 30 } }] }, 'byHand[0].sessions.slow', 30, ...type('list')],
    [
      { byHand: [{ start: date, sessions: { yoga: [30] } }] },
      'byHand[0].sessions.yoga',
      [30],
      'unknown-field',
      {},
      'list of 1',
    ],
    [{ byHand: [{ start: date, sessions: { slow: [30.5] } }] }, 'byHand[0].sessions.slow[0]', 30.5, ...whole],
  ],
  'fields that are none': [
    [{ colour: 'red' }, 'colour', 'red', ...unknownField],
    [{ constructor: 1 }, 'constructor', 1, ...unknownField],
    [[JSON.parse(`{"date": "${date}", "__proto__": 1}`)], '__proto__', 1, ...unknownField],
    [{ events: [{ date, event: '5k', isMain: true }] }, 'events[0].isMain', true, ...unknownField],
    [{ phases: [{ phase: 'base', share: 1 }] }, 'phases[0].share', 1, ...unknownField],
    [[16], '', 16, ...type('object')],
    [['2027-04-11'], '', '2027-04-11', ...type('object')],
    [[[]], '', [], ...type('object', 'list of 0')],
    [[true], '', true, ...type('object')],
  ],
};

const seasonFrom = (changes: unknown): unknown =>
  Array.isArray(changes) ? changes[0] : { date, ...(changes as object) };

describe('a season with one fault has one problem:', () => {
  describe.each(Object.entries(rows))('%s', (_, faults) => {
    const titled = faults.map((row) => [inShort(seasonFrom(row[0])), row] as const);
    test.each(titled)('%s', (_title, [changes, path, value, code, allowed = {}, given = value]) => {
      const whole = path === '' ? 'season' : `season.${path}`;
      expect(problemsOf(seasonFrom(changes))).toEqual([{ path: whole, value: given, code, allowed }]);
    });
  });

  test.each([
    ['phases', (size: number) => Array.from({ length: size }, () => ({ phase: 'base', weeks: 0 })), 12],
    ['events', days, 12],
    ['byHand', (size: number) => Array.from({ length: size }, (_, week) => ({ start: `${2000 + week}-07-01` })), 104],
    ['byHand', (size: number) => [{ start: date, sessions: { slow: Array.from({ length: size }, () => 30) } }], 100],
  ])('%s, where there are too many', (field, make, most) => {
    expect(problemsOf({ date, [field]: make(most) })).toEqual([]);
    expect(problemsOf({ date, [field]: make(most + 1) })).toMatchObject([{ code: 'too-long', allowed: { most } }]);
  });

  test('and several faults have one each', () => {
    const season = { date: '2027-02-30', start: 'soon', hours: 0, mostHours: 30, events: [{ date: 'x', event: '5k' }] };
    const paths = problemsOf(season).map(({ path }) => path);
    expect([...paths].sort()).toEqual(
      ['season.date', 'season.events[0].date', 'season.hours', 'season.mostHours', 'season.start'].sort(),
    );
  });
});

describe('the dates of a season', () => {
  test.each([
    // The usual sixteen weeks of the method.
    [{ date }, '2026-12-21', date],
    [{ date, weeks: 1 }, '2027-04-05', date],
    [{ date: '2027-04-05', weeks: 2 }, '2027-03-29', '2027-04-05'],
    // The event is on the Sunday of the last week.
    [{ start: '2026-12-23' }, '2026-12-23', date],
    [{ start: '2026-12-23', weeks: 15 }, '2026-12-23', '2027-04-04'],
    [{ start: '2026-12-23', date }, '2026-12-23', date],
    [{ start: '2026-12-27', date, weeks: 16 }, '2026-12-27', date],
    // 104 weeks are the most.
    [{ start: '2025-04-14', date }, '2025-04-14', date],
    [{ start: date, date }, date, date],
  ])('%j: from %s to %s', (season, start, last) => {
    expect(seasonOf(season).wishes).toMatchObject({ start, date: last });
  });

  test('may be the edges of the calendar', () => {
    expect(problemsOf({ start: '1900-01-01', date: '1900-01-01' })).toEqual([]);
    // The last Sunday there is: a week that begins later would end beyond them.
    expect(problemsOf({ date: '2199-12-29', weeks: 1, recoveryWeeks: 0 })).toEqual([]);
  });
});

describe('what a request leaves out', () => {
  test('is as the method usually has it; hours are those of the request', () => {
    expect(seasonOf({ date }, { hours: 5 }).wishes).toEqual({
      ...{ start: '2026-12-21', date, hours: 5, mostHours: 7.5, rise: 0.1, easierEvery: 4, easierDrop: 0.3 },
      ...{ taperWeeks: 2, taperDrop: 0.5, upkeepFrom: 'taper', upkeepSessions: 2, recoveryWeeks: 2 },
      phases: [
        { phase: 'base', weeks: null },
        { phase: 'build', weeks: null },
        { phase: 'peak', weeks: null },
      ],
      ...{ events: [], byHand: [], weeksOff: 0, longestRun: null },
    });
  });

  test.each([
    [4.1, 6], // 6.15, on a step of the slider
    [16, 20], // the most of the method
    [20, 20],
    [0.5, 0.75],
  ])('the most of %d hours is %d', (hours, most) => {
    expect(seasonOf({ date }, { hours }).wishes.mostHours).toBe(most);
  });

  test('of a week by hand is nothing; its day is its Monday', () => {
    expect(seasonOf({ date, byHand: [{ start: '2027-02-17' }] }).wishes.byHand).toEqual([
      { start: '2027-02-15', hours: null, reason: 'other', sessions: {} },
    ]);
  });

  test('is everything where there is no season', () => {
    for (const season of [undefined, null]) expect(valueOf(ask(season)).season).toBeNull();
  });
});

describe('a planner that has not learned of seasons', () => {
  test('knows no such field', () => {
    const sheet = createSheet(expandMethod(builtInMethod), builtInFormulas);
    const outcome = new Planner({ method: builtInMethod, sheet }).plan({ season: { date } });
    expect(outcome).toMatchObject({ ok: false, problems: [{ path: 'season', code: 'unknown-field' }] });
  });
});

test('every notice has a code of its own', () => {
  expect(new Set(seasonNoticeCodes).size).toBe(seasonNoticeCodes.length);
});
