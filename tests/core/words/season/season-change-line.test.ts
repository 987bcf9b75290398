import { describe, expect, test } from 'vitest';
import { seasonChangeKinds, type SeasonChange } from '../../../../src/plan/season/document.js';
import { seasonChangeLine, waysOutLine } from '../../../../src/words/season/season-change-line.js';
import { planner } from '../planned.js';
import { plain } from '../sheet/languages.js';
import { english, german, planned } from './seasons.js';

const { method } = planner;
const { season } = planned();
const of = { method, season };

const none = { amount: 0, phase: null, start: null, category: null, sessions: null } as const;
const change = (kind: SeasonChange['kind'], others: Partial<SeasonChange>): SeasonChange => ({
  ...none,
  kind,
  ...others,
});

const cases: readonly (readonly [SeasonChange, string, string])[] = [
  [
    change('weeks', { amount: 18 }),
    'begin earlier, 18 weeks before the event',
    'früher beginnen, 18 Wochen vor dem Wettkampf',
  ],
  // The phases are base, build and peak.
  [change('phase-weeks', { amount: 3, phase: 1 }), 'build: 3 weeks', 'Aufbauphase: 3 Wochen'],
  [change('phase-weeks', { amount: 1, phase: 2 }), 'peak: one week', 'Spitzenphase: eine Woche'],
  [change('taper-weeks', { amount: 1 }), 'taper: one week', 'Tapering: eine Woche'],
  [
    change('most-hours', { amount: 6.5 }),
    'at most 6 hours 30 minutes a week',
    'höchstens 6 Stunden 30 Minuten pro Woche',
  ],
  [change('rise', { amount: 0.14 }), 'rise by up to 14% a week', 'um bis zu 14 % pro Woche steigern'],
  [
    change('week-hours', { amount: 4.5, start: '2027-01-04' }),
    '4 hours 30 minutes in the week of Jan 4',
    '4 Stunden 30 Minuten in der Woche ab 4. Jan.',
  ],
  [
    change('week-sessions', { start: '2027-01-04', category: 'slow', sessions: [35, 35, 30] }),
    'cut slow running as 2 × 35 + 30',
    'langsames Laufen als 2 × 35 + 30',
  ],
];

describe('seasonChangeLine(words, { method, season }, change)', () => {
  test.each(cases)('%j', (given, expected, other) => {
    expect(seasonChangeLine(english, of, given)).toBe(expected);
    expect(plain(seasonChangeLine(german, of, given))).toBe(other);
  });

  test('has a case above for every kind of change', () => {
    const covered = new Set(cases.map(([{ kind }]) => kind));
    expect(seasonChangeKinds.filter((kind) => !covered.has(kind))).toEqual([]);
  });
});

describe('waysOutLine(words, { method, season }, changes)', () => {
  const [most, rise] = [change('most-hours', { amount: 5 }), change('rise', { amount: 0.15 })];

  test('joins the changes into one sentence', () => {
    expect(waysOutLine(english, of, [most, rise])).toBe(
      'What would help: at most 5 hours a week or rise by up to 15% a week.',
    );
    expect(plain(waysOutLine(german, of, [most, rise]))).toBe(
      'Was helfen würde: höchstens 5 Stunden pro Woche oder um bis zu 15 % pro Woche steigern.',
    );
    expect(waysOutLine(english, of, [most])).toBe('What would help: at most 5 hours a week.');
  });

  test('is empty where nothing would help', () => {
    expect(waysOutLine(english, of, [])).toBe('');
  });
});
