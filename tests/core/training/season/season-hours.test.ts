import { describe, expect, test } from 'vitest';
import {
  hoursReasons,
  seasonHours,
  type HoursFrame,
  type HoursReason,
  type Pace,
} from '../../../../src/training/season/season-hours.js';

/** Four hours, six at most, in steps of five minutes; the shares are those of the default method. */
const pace: Pace = {
  start: 240,
  weeksOff: 0,
  most: 360,
  least: 30,
  step: 5,
  rise: 0.1,
  easierDrop: 0.3,
  taper: { weeks: 2, drop: 0.5 },
  recoveryShare: 0.5,
  wayBack: {
    offShare: 0.25,
    steps: [
      { weeks: 1, shares: [0.8] },
      { weeks: 2, shares: [0.6, 0.8] },
      { weeks: 4, shares: [0.5, 0.65, 0.8] },
    ],
  },
};
const plain: HoursFrame = { course: 'holds', taperLeft: 0, isEasier: false, hasOtherEvent: false, byHand: null };
const kinds: Readonly<Record<string, Partial<HoursFrame>>> = {
  hold: {},
  rise: { course: 'rises' },
  easier: { course: 'rises', isEasier: true },
  other: { course: 'rises', hasOtherEvent: true },
  both: { course: 'rises', isEasier: true, hasOtherEvent: true },
  taper1: { course: 'taper', taperLeft: 1 },
  taper: { course: 'taper' },
  rest: { course: 'recovery' },
};
/** Weeks by name; a number is a week that rises, set by hand to so many minutes. */
const framesOf = (weeks: string): HoursFrame[] =>
  weeks.split(' ').map((name) => {
    const kind = kinds[name] ?? { course: 'rises', byHand: Number(name) };
    return { ...plain, ...kind };
  });

type Row = readonly [weeks: string, hours: string, changes?: Partial<Pace>];
/** The hours as text, a week each: minutes and the reason. */
const shown = (weeks: string, changes: Partial<Pace> = {}): string =>
  seasonHours(framesOf(weeks), { ...pace, ...changes })
    .map(({ minutes, reason }) => `${minutes} ${reason}`)
    .join(', ');

const tables: Readonly<Record<string, readonly Row[]>> = {
  'that rise': [
    // 240 × 1.1 = 264, 260 × 1.1 = 286, 285 × 1.1 = 313.5: the most is out of reach, so the ceiling is taken.
    ['rise rise rise rise', '240 start, 260 rise, 285 rise, 310 rise'],
    // ⁴√(300 / 240) = 1.0574: 253.8; ³√(300 / 255) = 1.0557: 269.2; √(300 / 270) = 1.0541: 284.6; 300.
    ['rise rise rise rise rise', '240 start, 255 rise, 270 rise, 285 rise, 300 rise', { most: 300 }],
    // No whole step is above 260 and at most 262.
    ['rise rise rise rise', '240 start, 250 rise, 260 rise, 260 most', { most: 262 }],
    ['rise rise', '260 start, 260 most', { start: 260, most: 262 }],
    ['rise rise', '255 start, 260 rise', { start: 255, most: 262 }],
    ['rise rise', '240 start, 240 most', { most: 240 }],
    ['rise rise rise', '240 start, 240 rise, 240 rise', { rise: 0 }],
    // Below a whole step a rise adds nothing: 40 × 1.1 = 44.
    ['rise rise', '40 start, 40 rise', { start: 40 }],
    ['hold hold hold', '240 start, 240 hold, 240 hold'],
    ['hold rise', '240 start, 260 rise'],
    // The starting level need not be a whole step; what rises from it is one.
    ['hold hold rise', '247 start, 247 hold, 270 rise', { start: 247 }],
  ],
  'that are easier': [
    // 240 × 0.7 = 168, nearest 170; the level stays at 240.
    ['rise easier rise', '240 start, 170 easier, 260 rise'],
    ['rise other rise', '240 start, 170 other-event, 260 rise'],
    ['rise both', '240 start, 170 other-event'],
    // What was before the season is one of the weeks before.
    ['easier rise', '170 easier, 260 rise'],
    // Four easier weeks in a row lower the level: 168, 168, 168, 168 of 240, then 170 × 0.7 = 119.
    [
      'hold easier easier easier easier easier',
      '240 start, 170 easier, 170 easier, 170 easier, 170 easier, 120 easier',
    ],
    ['hold easier', '30 start, 30 easier', { start: 30 }],
    // Never more than before: the nearest five to 243 is 245.
    ['hold easier', '243 start, 243 easier', { start: 243, easierDrop: 0 }],
    ['hold easier', '100 start, 5 easier', { start: 100, least: 0, easierDrop: 0.95 }],
  ],
  'of a taper and of rest': [
    // 0.618 × 360 = 222.5, 0.382 × 360 = 137.5: together the 360 that half of two such weeks are.
    ['hold taper1 taper', '360 start, 220 taper, 140 taper', { start: 360 }],
    ['taper1 taper', '150 taper, 90 taper'],
    // A season shorter than its taper has the end of it.
    ['taper', '90 taper'],
    ['hold taper', '240 start, 120 taper', { taper: { weeks: 1, drop: 0.5 } }],
    // Rest is half of what was before the taper; then the most of the four weeks before.
    [
      'hold taper1 taper rest rest hold',
      '360 start, 220 taper, 140 taper, 180 recovery, 180 recovery, 220 hold',
      { start: 360 },
    ],
    [
      'hold taper1 taper rest rest rest hold',
      '360 start, 220 taper, 140 taper, 180 recovery, 180 recovery, 180 recovery, 180 hold',
      { start: 360 },
    ],
    ['hold taper', '60 start, 30 taper', { start: 60 }],
  ],
  'set by hand': [
    // More than planned never raises the level.
    ['rise 400 rise', '240 start, 400 by-hand, 260 rise'],
    ['rise 100 rise', '240 start, 100 by-hand, 260 rise'],
    // A quarter is a week off, a minute more is not: 80 % of 240 are 192.
    ['rise 60 hold', '240 start, 60 by-hand, 190 way-back'],
    ['rise 61 hold', '240 start, 61 by-hand, 240 hold'],
    // Four lower weeks are a new level: 100 × 1.1.
    ['hold 100 100 100 rise', '240 start, 100 by-hand, 100 by-hand, 100 by-hand, 260 rise'],
    ['hold 100 100 100 100 rise', '240 start, 100 by-hand, 100 by-hand, 100 by-hand, 100 by-hand, 110 rise'],
    ['hold 200 taper', '240 start, 200 by-hand, 90 taper'],
    ['hold taper1 200 rest', '240 start, 150 taper, 200 by-hand, 120 recovery'],
  ],
  'after weeks off': [
    ['rise 0 rise rise', '240 start, 0 by-hand, 190 way-back, 205 rise'],
    // 144 and 192; two weeks off, or three.
    ['hold 0 0 hold hold hold', '240 start, 0 by-hand, 0 by-hand, 140 way-back, 190 way-back, 190 hold'],
    ['hold 0 0 0 hold hold', '240 start, 0 by-hand, 0 by-hand, 0 by-hand, 140 way-back, 190 way-back'],
    [
      'hold 0 0 0 0 hold hold hold',
      '240 start, 0 by-hand, 0 by-hand, 0 by-hand, 0 by-hand, 120 way-back, 155 way-back, 190 way-back',
    ],
    // Before the season: the hours are those before the break.
    ['hold hold', '190 way-back, 190 hold', { weeksOff: 1 }],
    ['rise rise rise', '140 way-back, 190 way-back, 205 rise', { weeksOff: 3 }],
    ['0 hold hold', '0 by-hand, 140 way-back, 190 way-back', { weeksOff: 1 }],
    // Easier than the way back allows is easier; what the way back allows counts for the weeks after.
    ['hold 0 easier hold', '240 start, 0 by-hand, 170 easier, 190 hold'],
    ['hold 0 0 easier hold', '240 start, 0 by-hand, 0 by-hand, 140 way-back, 190 way-back'],
    ['hold 0 taper1 taper', '240 start, 0 by-hand, 150 taper, 90 taper'],
    ['hold 0 0 taper1 taper', '240 start, 0 by-hand, 0 by-hand, 140 way-back, 90 taper'],
    // Another break on the way back: from the level before the first.
    ['hold 0 0 hold 0 hold hold', '240 start, 0 by-hand, 0 by-hand, 140 way-back, 0 by-hand, 190 way-back, 190 hold'],
    // A method without a way back.
    ['hold 0 hold', '240 start, 0 by-hand, 240 hold', { wayBack: { offShare: 0.25, steps: [] } }],
    [
      'hold 0 hold',
      '240 start, 0 by-hand, 240 hold',
      { wayBack: { offShare: 0.25, steps: [{ weeks: 2, shares: [0.5] }] } },
    ],
    ['hold 0 hold', '40 start, 0 by-hand, 30 way-back', { start: 40 }],
  ],
};

describe('seasonHours(frames, pace): weeks', () => {
  describe.each(Object.entries(tables))('%s', (_, rows) => {
    const whole = rows.map(([weeks, hours, changes = {}]) => [weeks, hours, changes] as const);
    test.each(whole)('%s: %s', (weeks, hours, changes) => {
      expect(shown(weeks, changes)).toBe(hours);
    });
  });

  test('of every reason there is', () => {
    const all = Object.values(tables).flatMap((rows) => rows.map(([, hours]) => hours));
    const isShown = (reason: HoursReason): boolean => all.some((hours) => hours.includes(` ${reason}`));
    expect(hoursReasons.filter((reason) => !isShown(reason))).toEqual([]);
  });

  test('have what they follow from', () => {
    const weeks = seasonHours(framesOf('rise rise easier 300 0 rise taper'), pace);
    const share = expect.closeTo((Math.sqrt(5) - 1) / 2, 9) as unknown;
    expect(weeks.map(({ base, share: part, risesLeft }) => [base, part, risesLeft])).toEqual([
      [240, null, 0],
      [240, 0.1, 2],
      [260, 0.7, 0],
      [260, null, 0],
      [260, null, 0],
      [260, 0.8, 0],
      [205, expect.anything(), 0],
    ]);
    const [taper] = seasonHours(framesOf('taper1 taper'), pace);
    expect(taper?.share).toEqual(share);
    expect(weeks.map(({ ceiling }) => Math.round(ceiling * 1e6) / 1e6)).toEqual([264, 264, 286, 286, 286, 286, 225.5]);
  });

  test('that are none are none', () => {
    expect(seasonHours([], pace)).toEqual([]);
  });
});
