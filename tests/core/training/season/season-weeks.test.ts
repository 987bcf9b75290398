import { describe, expect, test } from 'vitest';
import {
  hoursFrame,
  seasonWeeks,
  weeksFrom,
  type CalendarWeek,
  type SeasonOutline,
} from '../../../../src/training/season/season-weeks.js';

const outline: SeasonOutline = {
  start: '2026-12-23',
  main: { date: '2027-01-24', event: '10k' },
  others: [],
  phases: [
    { phase: 'base', weeks: 2 },
    { phase: 'build', weeks: 1 },
  ],
  taperWeeks: 2,
  recoveryWeeks: 1,
  easierEvery: 2,
};
const shown = (weeks: readonly CalendarWeek[]) =>
  weeks.map(({ number, start, week, weeksToGo, phase, isEasier }) =>
    [number, start, week, weeksToGo, phase, isEasier ? 'easier' : '-'].join(' '),
  );

describe('seasonWeeks(outline)', () => {
  test('goes over New Year with a week 53, Monday by Monday', () => {
    // 2026 has 53 weeks: it begins on a Thursday (ISO 8601-1:2019, 5.3).
    expect(shown(seasonWeeks(outline))).toEqual([
      '1 2026-12-21 2026-W52 4 base -',
      '2 2026-12-28 2026-W53 3 base easier',
      '3 2027-01-04 2027-W01 2 build -',
      '4 2027-01-11 2027-W02 1 taper -',
      '5 2027-01-18 2027-W03 0 taper -',
      '6 2027-01-25 2027-W04 -1 recovery -',
    ]);
  });

  test('begins in the week of its first day and ends the taper in that of the event, whichever days they are', () => {
    const weeks = seasonWeeks(outline);
    for (const start of ['2026-12-21', '2026-12-27'])
      for (const date of ['2027-01-18', '2027-01-24']) {
        const other = seasonWeeks({ ...outline, start, main: { date, event: '10k' } });
        expect(shown(other)).toEqual(shown(weeks));
        expect(other[4]?.events).toEqual([{ date, event: '10k', isMain: true }]);
      }
  });

  test('has every other event in its week, and the main one first', () => {
    const others = [
      { date: '2027-01-10', event: '5k' },
      { date: '2027-01-24', event: '5k' },
    ] as const;
    const events = seasonWeeks({ ...outline, others }).map((week) => week.events);
    expect(events).toEqual([
      ...[[], [], [{ date: '2027-01-10', event: '5k', isMain: false }], []],
      [
        { date: '2027-01-24', event: '10k', isMain: true },
        { date: '2027-01-24', event: '5k', isMain: false },
      ],
      [],
    ]);
  });

  test('goes on in base to an event after the rest, with easier weeks again', () => {
    const others = [{ date: '2027-02-13', event: 'marathon' }] as const;
    expect(shown(seasonWeeks({ ...outline, others })).slice(5)).toEqual([
      '6 2027-01-25 2027-W04 -1 recovery -',
      '7 2027-02-01 2027-W05 -2 base -',
      '8 2027-02-08 2027-W06 -3 base easier',
    ]);
  });

  test.each([
    ['none at 0', 0, []],
    ['every one at 1, but for taper and rest', 1, [1, 2, 3]],
    ['every third', 3, [3]],
    ['none where the fourth is in the taper', 4, []],
  ] as const)('weeks are easier: %s', (_, easierEvery, numbers) => {
    const easier = seasonWeeks({ ...outline, easierEvery }).filter(({ isEasier }) => isEasier);
    expect(easier.map(({ number }) => number)).toEqual(numbers);
  });

  test.each([
    ['is as long as there are weeks', '2027-01-18', 3, ['taper']],
    ['may be none', '2027-01-18', 0, []],
  ] as const)('the taper %s', (_, start, taperWeeks, phases) => {
    const weeks = seasonWeeks({ ...outline, start, phases: [], taperWeeks, recoveryWeeks: 0 });
    expect(weeks.map(({ phase }) => phase)).toEqual(phases);
  });
});

describe('weeksFrom(start, end)', () => {
  test.each([
    ['2026-12-23', '2027-01-24', 5],
    ['2026-12-21', '2026-12-27', 1],
    ['2026-12-27', '2026-12-28', 2],
    ['2026-12-28', '2026-12-27', 0],
    ['2026-12-21', '2027-04-11', 16],
  ])('from %s to %s are %d', (start, end, weeks) => {
    expect(weeksFrom(start, end)).toBe(weeks);
  });
});

describe('hoursFrame(week, { rising, byHand })', () => {
  const week: CalendarWeek = {
    ...{ number: 1, start: '2026-12-21', week: '2026-W52', weeksToGo: 4, phase: 'base', isEasier: false, events: [] },
  };
  const frame = (changes: Partial<CalendarWeek>, byHand: number | null = null) =>
    hoursFrame({ ...week, ...changes }, { rising: ['base'], byHand });

  test.each([
    ['base', 'rises'],
    ['build', 'holds'],
    ['off-season', 'holds'],
    ['taper', 'taper'],
    ['recovery', 'recovery'],
  ] as const)('a week in %s %s', (phase, course) => {
    expect(frame({ phase }).course).toBe(course);
  });

  test('counts the weeks of the taper after it by the weeks to go, none after the event', () => {
    expect(frame({ phase: 'taper', weeksToGo: 1 }).taperLeft).toBe(1);
    expect(frame({ phase: 'taper', weeksToGo: 0 }).taperLeft).toBe(0);
    expect(frame({ phase: 'recovery', weeksToGo: -2 }).taperLeft).toBe(0);
  });

  test('has another event only where it is not the main one, and hands on what is set by hand', () => {
    const event = { date: '2026-12-27', event: '5k' } as const;
    expect(frame({ events: [{ ...event, isMain: true }] }).hasOtherEvent).toBe(false);
    expect(frame({ events: [{ ...event, isMain: false }] }).hasOtherEvent).toBe(true);
    expect(frame({ isEasier: true }, 0)).toMatchObject({ isEasier: true, byHand: 0 });
    expect(frame({}).byHand).toBeNull();
  });
});
