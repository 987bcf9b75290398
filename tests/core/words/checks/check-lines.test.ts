import { describe, expect, test } from 'vitest';
import type { CheckResult } from '../../../../src/plan/checks/document.js';
import { activityFactIds, dayFactIds, sessionFactIds, type FactId } from '../../../../src/training/checks/facts.js';
import { checkLines, unknownLines } from '../../../../src/words/checks/check-lines.js';
import { checkedPlan, checkOf } from '../../../reference/checks/checks-door.js';
import { documentWith, plannerOf } from '../../training/method/documents.js';
import { planner } from '../planned.js';
import { english, german, plain } from '../sheet/languages.js';

const { method } = planner;
const days = [60, 0, 45, 60, 0, 90, 120];
const weeks = [[300, 0, 300, 0, 200, 0, 500]];
const full = checkedPlan({ hours: 4, week: { days }, checks: { hoursBefore: 3, longestRun: 30, weeks, age: 40 } });
const bare = checkedPlan({ hours: 4 });
const unlaid = { method, load: bare.load };
const laid = { method, load: full.load };

/** A check of the plan, with something else about it. */
function checkWith(id: string, other: Partial<CheckResult> = {}): CheckResult {
  const check = checkOf(full, id);
  if (!check) throw new Error(`${id} was not made`);
  return { ...check, ...other };
}

const says = (check: CheckResult): readonly string[] =>
  [english, german].map((words) => plain(checkLines(words, laid, check).says));

describe('checkLines(words, ground, check)', () => {
  test.each([
    ['in-line', 'in line', 'im Rahmen'],
    ['look', 'worth a look', 'einen Blick wert'],
    ['caution', 'caution', 'Vorsicht'],
    [null, 'not known yet', 'noch nicht bekannt'],
  ] as const)('%s is "%s", in German "%s"', (level, inEnglish, inGerman) => {
    const check = checkWith('hours-rise', { level });
    expect(checkLines(english, laid, check).level).toBe(inEnglish);
    expect(checkLines(german, laid, check).level).toBe(inGerman);
  });

  test('names the check, what was measured, its range, its change and what it rests on', () => {
    expect(checkLines(english, laid, checkWith('hard-minutes'))).toEqual({
      id: 'hard-minutes',
      name: 'Hard share of running minutes',
      level: 'worth a look',
      // 36 and 24 of 132 minutes; 60 − 0.35 × 132 = 13.8, by hand.
      says: '45.5% of running minutes are tempo and intervals: 36 min and 24 min of 132 min. By sessions it is 2 of 4 runs.',
      range: 'in line up to 35%; caution above 60%',
      change: '14 min moved from tempo and intervals to slow running.',
      reason: {
        text: english.say('check-reason.hard-minutes-recreational'),
        status: 'assumption, adjustable',
        sources: ['B07', 'B08', 'B10'],
      },
      notSaid: english.say('check-not.hard-minutes-recreational'),
    });
  });

  test.each([
    [0.25, '25% more', '25 % mehr'],
    [-0.1, '10% less', '10 % weniger'],
    [0, 'the same', 'gleich viel'],
  ])('has a rise of %d in words: %s, %s', (value, inEnglish, inGerman) => {
    expect(says(checkWith('hours-rise', { value }))).toEqual([
      `4 h after 3 h a week: ${inEnglish}.`,
      `4 h nach 3 h in der Woche: ${inGerman}.`,
    ]);
  });

  test.each([
    [1, '1 day without training.', '1 Tag ohne Training.'],
    [3, '3 days without training.', '3 Tage ohne Training.'],
    [0, '0 days without training.', '0 Tage ohne Training.'],
  ])('has %d days in the plural that fits', (value, inEnglish, inGerman) => {
    expect(says(checkWith('rest-days', { value }))).toEqual([inEnglish, inGerman]);
  });

  test.each([
    [1, '1 session of strength a week.', '1 Einheit Kraft in der Woche.'],
    [2, '2 sessions of strength a week.', '2 Einheiten Kraft in der Woche.'],
  ])('has %d sessions in the plural that fits', (value, inEnglish, inGerman) => {
    expect(says(checkWith('strength-days', { value }))).toEqual([inEnglish, inGerman]);
  });

  test('has no change where it is in line or not known', () => {
    for (const level of ['in-line', null] as const)
      expect(checkLines(english, laid, checkWith('hard-minutes', { level })).change).toBeNull();
    for (const level of ['look', 'caution'] as const)
      expect(checkLines(english, laid, checkWith('hard-minutes', { level })).change).toMatch(/^14 min moved/);
  });

  test.each([
    // Enough whole minutes, and no more for a rounding error.
    [13.1, '14 min'],
    [13, '13 min'],
    [13.000_000_000_1, '13 min'],
  ])('asks for whole minutes: %d are %s', (amount, expected) => {
    const check = checkWith('longest-run', { change: { amount, unit: 'minutes' } });
    expect(checkLines(english, laid, check).change).toBe(`${expected} less of the longest run.`);
  });

  test('carries status and sources of its own limits', () => {
    const { reason } = checkLines(german, laid, checkWith('rest-days'));
    expect([reason.status, reason.sources]).toEqual(['gängige Praxis, keine veröffentlichte Quelle', []]);
  });

  test("has a coach's own words, with the numbers filled in", async () => {
    const own = await plannerOf(
      documentWith('checks.list[4]', {
        ...{ id: 'hard-minutes', group: 'intensity', measure: 'hard_minutes_share', name: 'Hard bits' },
        ...{ says: '{value} is hard, {tempo_minutes} of it tempo.', change: 'Drop {amount}.' },
        limits: [{ in_line: { most: 0.3 }, status: 'assumption', reason: 'Our own.', not_said: 'Much.' }],
      }),
    );
    const outcome = own.plan({ hours: 4, checks: {} });
    const check = outcome.ok ? checkOf(outcome.value, 'hard-minutes') : undefined;
    if (!check) throw new Error('it was not made');
    // 60 − 0.3 × 132 = 20.4.
    expect(checkLines(german, { method: own.method, load: null }, check)).toMatchObject({
      name: 'Hard bits',
      change: 'Drop 21 min.',
      notSaid: 'Much.',
      reason: { text: 'Our own.' },
    });
    expect(plain(checkLines(german, { method: own.method, load: null }, check).says)).toBe(
      '45,5 % is hard, 36 min of it tempo.',
    );
  });
});

describe('the range of a check', () => {
  type Caution = Partial<CheckResult['caution']>;

  test.each<[number | null, number | null, Caution, string]>([
    [1, null, {}, 'in line from 1 day on'],
    [null, 2, {}, 'in line up to 2 days'],
    [1, 3, {}, 'in line from 1 day to 3 days'],
    [0, null, {}, 'in line from 0 days on'],
    [1, null, { below: 1 }, 'in line from 1 day on; caution below 1 day'],
    [null, 2, { above: 4 }, 'in line up to 2 days; caution above 4 days'],
    [1, 3, { below: 1, above: 5 }, 'in line from 1 day to 3 days; caution below 1 day; caution above 5 days'],
  ])('from %s to %s with %j', (least, most, caution, expected) => {
    const check = checkWith('rest-days', {
      inLine: { least, most },
      caution: { below: null, above: null, ...caution },
    });
    expect(checkLines(english, laid, check).range).toBe(expected);
    const inGerman = checkLines(german, laid, check).range;
    expect(inGerman.match(/\d+/g)).toEqual(expected.match(/\d+/g));
    expect(inGerman.split('; ').map((part) => part.startsWith('Vorsicht'))).toEqual(
      expected.split('; ').map((part) => part.startsWith('caution')),
    );
  });

  test('of a rise is a rise too', () => {
    const lines = checkLines(english, laid, checkWith('longest-run'));
    expect(lines.range).toBe('in line up to 10% more; caution above 100% more');
  });
});

describe('what is missing', () => {
  test.each<[FactId | null, string]>([
    ['hours_before', 'Tell the hours of your weeks so far to see it.'],
    ['longest_run_before', 'Tell your longest run of the last 30 days to see it.'],
    ['own_load', 'Tell the loads of your own weeks to see it.'],
    ['own_monotony', 'Tell your own weeks day by day to see it.'],
    ['own_strain', 'Tell your own weeks day by day to see it.'],
    ['season_rise', 'Plan a season to see it.'],
    ['season_run_rise', 'Plan a season to see it.'],
    ['load_monotony', 'Lay the sessions on days to see it.'],
    ['week_strain', 'Lay the sessions on days to see it.'],
    ['hard_gap', 'Lay the sessions on days to see it.'],
    ['strength_gap', 'Lay the sessions on days to see it.'],
    ['rest_days', 'Lay the sessions on days to see it.'],
    [null, 'There is nothing to measure in this week.'],
  ])('%s: "%s"', (missing, expected) => {
    const check = checkWith('rest-days', { level: null, value: null, missing });
    expect(checkLines(english, unlaid, check).says).toBe(expected);
    expect(checkLines(english, { method, load: null }, check).says).toBe(expected);
    expect(checkLines(german, unlaid, check).says).toMatch(/^[A-Z].*\.$/);
  });

  test.each<[FactId, string]>([
    ['load_monotony', 'All days are alike, so there is no number for it: no week is more monotonous.'],
    ['week_strain', 'All days are alike, so there is no number for it: no week is more monotonous.'],
    ['hard_gap', 'There is nothing to measure in this week.'],
    ['strength_gap', 'There is nothing to measure in this week.'],
  ])('%s of a week that lies on days: "%s"', (missing, expected) => {
    expect(checkLines(english, laid, checkWith('rest-days', { level: null, missing })).says).toBe(expected);
  });

  test('says of every fact of days and sessions something that has a text', () => {
    for (const missing of [...dayFactIds, ...sessionFactIds, ...activityFactIds])
      for (const ground of [laid, unlaid])
        expect(checkLines(english, ground, checkWith('rest-days', { level: null, missing })).says).not.toMatch(
          /^check/,
        );
  });
});

describe('unknownLines(words, ground, checks)', () => {
  test('has each thing to tell once, with all checks that wait for it', () => {
    const waiting = bare.checks.filter(({ level }) => level === null);
    expect(unknownLines(english, unlaid, waiting)).toEqual([
      { says: 'Tell the loads of your own weeks to see it.', names: ['Load against your own weeks'] },
      {
        says: 'Lay the sessions on days to see it.',
        names: [
          ...['Monotony against your own weeks', 'Strain against your own weeks', 'Days of rest'],
          ...['From one hard run to the next', 'From strength to the next hard run'],
        ],
      },
      { says: 'Tell the hours of your weeks so far to see it.', names: ['Hours against the weeks before'] },
      { says: 'Tell your longest run of the last 30 days to see it.', names: ['Longest run against the last 30 days'] },
      { says: 'Plan a season to see it.', names: ['Steepest week of the season', 'Longest runs of the season'] },
    ]);
  });

  test('is empty where all is known', () => {
    expect(unknownLines(english, laid, [])).toEqual([]);
  });

  test('shows that a value is beyond an edge where both look the same', () => {
    // 4 h after 3.333: 20.01 % more, where 20 % are in line.
    const just = checkOf(checkedPlan({ hours: 4, checks: { hoursBefore: 3.333 } }), 'hours-rise');
    expect(just && [just.level, plain(checkLines(english, unlaid, just).says)]).toEqual([
      ...['look', '4 h after 3 h 20 min a week: just above 20% more.'],
    ]);
    const at = checkOf(checkedPlan({ hours: 4, checks: { hoursBefore: 4 / 1.2 } }), 'hours-rise');
    expect(at && [at.level, plain(checkLines(english, unlaid, at).says)]).toEqual([
      ...['in-line', '4 h after 3 h 20 min a week: 20% more.'],
    ]);
  });

  test.each([
    ['hours-rise', { hoursBefore: 3.333 }, '1 min less for now.'],
    // 1,100 against 859: the edge is 1,099.52.
    ['load', { weeks: [[859]] }, '1 less.'],
  ] as const)('never says that a change of nothing helps: %s', (id, checks, change) => {
    const check = checkOf(checkedPlan({ hours: 4, checks }), id);
    expect(check && plain(checkLines(english, unlaid, check).change ?? '')).toBe(change);
  });

  test('does not ask for days that were told, where they were all alike', () => {
    const told = checkedPlan({ hours: 4, week: { days }, checks: { weeks: [Array(7).fill(250)] } });
    const monotony = checkOf(told, 'monotony');
    expect(monotony && checkLines(english, { method, load: told.load }, monotony).says).toBe(
      'All days of your own weeks are alike, so there is no number to compare with.',
    );
  });
});
