import { describe, expect, test } from 'vitest';
import { runningNoticeCodes, type RunningNotice } from '../../../../src/plan/running/document.js';
import type { RunningRequest } from '../../../../src/plan/running/wishes.js';
import { runningOf } from '../../../reference/running/running-door.js';

type Row = readonly [running: RunningRequest, notices: readonly RunningNotice[]];

const note = (code: RunningNotice['code'], values: RunningNotice['values']): RunningNotice => ({
  code,
  level: 'note',
  values,
});
const race = (metres: number, seconds: number, date?: string) => ({ race: { metres, seconds, date } });
const outside = (seconds: number) => note('race-outside', { seconds, least: 210, most: 13_800 });
/** 130 metres a minute are 7:41.5 a kilometre. */
const slow = note('slow-pace', { pace: 60_000 / 130 });
const young = (age: number): RunningNotice => ({ code: 'under-18', level: 'caution', values: { age } });

const rows: Readonly<Record<string, readonly Row[]>> = {
  // 1 July 2027 is day 180 after 2 January: 29 + 28 + 31 + 30 + 31 + 30 + 1.
  'a race that is old': [
    [{ ...race(5000, 1200, '2027-01-02'), today: '2027-07-01' }, []],
    [{ ...race(5000, 1200, '2027-01-01'), today: '2027-07-01' }, [note('old-race', { days: 181, limit: 180 })]],
    [{ ...race(5000, 1200, '2027-07-01'), today: '2027-07-01' }, []],
    [{ ...race(5000, 1200, '2017-07-01'), today: '2027-07-01' }, [note('old-race', { days: 3652, limit: 180 })]],
    [race(5000, 1200, '1990-01-01'), []],
    [{ ...race(5000, 1200), today: '2027-07-01' }, []],
  ],
  'a race outside 3.5 to 230 minutes': [
    [race(1000, 210), []],
    [race(1000, 209.9), [outside(209.9)]],
    [race(40_000, 13_800), []],
    [race(40_000, 13_801), [outside(13_801)]],
    // A pace held for an hour is no race.
    [{ thresholdPace: 240 }, []],
  ],
  // 0.6 of 34.7519 ml are what 130 metres a minute take: 5 km in 1628.5 seconds, or 5:39.5 a kilometre for an hour.
  'a slow pace': [
    [race(5000, 1628), []],
    [race(5000, 1629), [slow]],
    [{ thresholdPace: 339 }, []],
    [{ thresholdPace: 340 }, [slow]],
    // The race counts.
    [{ ...race(5000, 1200), thresholdPace: 700 }, []],
  ],
  // At 40 the method has 180 beats, and is off by up to twelve for one person in three: twice that is 24.
  'a highest heart rate below the estimate': [
    [{ age: 40, highestHeart: 156 }, []],
    [{ age: 40, highestHeart: 155 }, [note('heart-below-estimate', { beats: 155, estimate: 180 })]],
    [{ age: 40, highestHeart: 155.9 }, [note('heart-below-estimate', { beats: 155.9, estimate: 180 })]],
    [{ age: 40, highestHeart: 240 }, []],
    [{ age: 40 }, []],
    [{ highestHeart: 100 }, []],
  ],
  'an age below 18': [
    [{ age: 17 }, [young(17)]],
    [{ age: 17.9 }, [young(17.9)]],
    [{ age: 18 }, []],
    [{ age: 5 }, [young(5)]],
    [{}, []],
  ],
};

describe.each(Object.entries(rows))('%s', (_, cases) => {
  test.each(cases)('%j', (running, notices) => {
    expect(runningOf(running).notices).toEqual(notices);
  });
});

test('everything that there is to say is said at once, in one order', () => {
  const all = { ...race(30_000, 14_400, '2026-01-01'), today: '2027-01-01', age: 10, highestHeart: 100 };
  expect(runningOf(all).notices).toEqual([
    outside(14_400),
    note('old-race', { days: 365, limit: 180 }),
    slow,
    // 208 − 7.
    note('heart-below-estimate', { beats: 100, estimate: 201 }),
    young(10),
  ]);
});

test('every code is said in one of the cases', () => {
  const said = Object.values(rows).flatMap((cases) => cases.flatMap(([, notices]) => notices.map(({ code }) => code)));
  expect([...new Set(said)].sort()).toEqual([...runningNoticeCodes].sort());
});
