import { describe, expect, test } from 'vitest';
import type { SeasonRequest } from '../../../../src/plan/season/wishes.js';
import { hoursReasons } from '../../../../src/training/season/season-hours.js';
import { hoursReason } from '../../../../src/words/season/hours-reason.js';
import { plain } from '../sheet/languages.js';
import { english, german, planned } from './seasons.js';

type Row = readonly [reason: string, week: number, request: SeasonRequest, english: string, german: string];

const byHand = (reason: 'holiday' | 'ill' | 'other'): SeasonRequest => ({
  byHand: [{ start: '2027-01-21', hours: 3, reason }],
});

/*
 * Weeks counted from 1. Base and share by hand as in tests/reference/season/worked-season.test.ts: the eighth root of
 * 360/240 is 1.05199, 252.5 minutes, in whole steps 255, and 255/240 is 1.0625; that of 360/345 for the last rise 1.04348; a taper of two weeks that loses half keeps (√5 − 1) / 2.
 */
const rows: readonly Row[] = [
  ['start', 1, {}, 'The season starts from here.', 'Hier beginnt die Saison.'],
  [
    'rise',
    2,
    {},
    '6.3% above 4 hours, the highest of the four weeks before. 8 rises are left on the way to 6 hours; the ceiling is 10% a week.',
    '6,3 % über 4 Stunden, dem Höchsten der vier Wochen davor. Noch 8 Steigerungen auf dem Weg auf 6 Stunden; die Obergrenze ist 10 % pro Woche.',
  ],
  [
    'rise',
    11,
    {},
    '4.3% above 5 hours 45 minutes, the highest of the four weeks before. The last rise on the way to 6 hours; the ceiling is 10% a week.',
    '4,3 % über 5 Stunden 45 Minuten, dem Höchsten der vier Wochen davor. Die letzte Steigerung auf dem Weg auf 6 Stunden; die Obergrenze ist 10 % pro Woche.',
  ],
  ['most', 2, { mostHours: 4 }, 'The most hours that are wanted.', 'Die meisten Stunden, die gewünscht sind.'],
  [
    'hold',
    13,
    {},
    'This phase keeps the level: 6 hours, the highest of the four weeks before.',
    'Diese Phase hält das Niveau: 6 Stunden, das Höchste der vier Wochen davor.',
  ],
  [
    'easier',
    4,
    {},
    'An easier week: 70% of 4 hours 30 minutes, the highest of the four weeks before.',
    'Eine leichtere Woche: 70 % von 4 Stunden 30 Minuten, dem Höchsten der vier Wochen davor.',
  ],
  [
    'other-event',
    2,
    { events: [{ date: '2027-01-03', event: '10k' }] },
    'The week of an event on the way: 70% of 4 hours, the highest of the four weeks before.',
    'Woche eines Wettkampfs unterwegs: 70 % von 4 Stunden, dem Höchsten der vier Wochen davor.',
  ],
  [
    'taper',
    15,
    {},
    'Taper: 61.8% of 6 hours, the level before it. All its weeks together lose 50%.',
    'Tapering: 61,8 % von 6 Stunden, dem Niveau davor. Alle seine Wochen zusammen verlieren 50 %.',
  ],
  ['recovery', 18, {}, 'Rest: 50% of 6 hours, the level before.', 'Erholung: 50 % von 6 Stunden, dem Niveau davor.'],
  [
    'way-back',
    1,
    { weeksOff: 2 },
    'On the way back after a break: 60% of 4 hours, the level before it.',
    'Auf dem Weg zurück nach einer Pause: 60 % von 4 Stunden, dem Niveau davor.',
  ],
  ['by-hand', 5, byHand('holiday'), 'Set by hand: holiday.', 'Von Hand gesetzt: Urlaub.'],
  ['by-hand', 5, byHand('ill'), 'Set by hand: ill.', 'Von Hand gesetzt: krank.'],
  ['by-hand', 5, byHand('other'), 'Set by hand.', 'Von Hand gesetzt.'],
];

describe('hoursReason(words, season, week)', () => {
  test.each(rows)('of %s, week %i, %j', (reason, number, request, expected, other) => {
    const { season } = planned(request);
    const week = season.weeks[number - 1];
    if (!week) throw new Error('there is no such week');
    expect(week.why.reason).toBe(reason);
    expect(hoursReason(english, season, week)).toBe(expected);
    expect(plain(hoursReason(german, season, week))).toBe(other);
  });

  test('has a row above for every reason', () => {
    const covered = new Set(rows.map(([reason]) => reason));
    expect(hoursReasons.filter((reason) => !covered.has(reason))).toEqual([]);
  });
});
