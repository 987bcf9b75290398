import { describe, expect, test } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import { Planner } from '../../../../src/plan/planner.js';
import type { Problem } from '../../../../src/problem.js';
import { createSheet } from '../../../../src/sheet/sheet.js';
import { builtInFormulas } from '../../../../src/training/method/built-in-formulas.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { expandMethod } from '../../../../src/training/method/expand.js';
import { inShort } from '../../in-short.js';

const planner = builtInPlanner();
/** Requests from outside, which no compiler has seen. */
const ask = (running: unknown) => planner.plan({ hours: 4, running });
const problemsOf = (running: unknown): readonly Problem[] => {
  const outcome = ask(running);
  return outcome.ok ? [] : outcome.problems;
};

type Fault = readonly [code: Problem['code'], allowed?: Problem['allowed'], given?: unknown];
type Row = readonly [running: unknown, path: string, value: unknown, ...Fault];

const range = (least: number, most: number): Fault => ['out-of-range', { least, most }];
const type = (expected: string, given?: unknown): Fault => ['wrong-type', { expected }, given];
const dates = { least: '1900-01-01', most: '2199-12-31' };
/** Twenty minutes over five kilometres, but for what differs. */
const race = (changes: object) => ({ race: { metres: 5000, seconds: 1200, ...changes } });

const rows: Readonly<Record<string, readonly Row[]>> = {
  'what is no request': [
    [5, '', 5, ...type('object')],
    ['race', '', 'race', ...type('object')],
    [true, '', true, ...type('object')],
    [[], '', [], ...type('object', 'list of 0')],
    [{ colour: 'red' }, 'colour', 'red', 'unknown-field'],
    [{ pace: 240 }, 'pace', 240, 'unknown-field'],
    [{ ['x'.repeat(80)]: 1 }, 'x'.repeat(60), 1, 'unknown-field'],
    [{ unit: 'miles' }, 'unit', 'miles', 'not-one-of', { choices: ['km', 'mile'] }],
    [{ unit: null }, 'unit', null, 'not-one-of', { choices: ['km', 'mile'] }],
  ],
  'a race': [
    [{ race: 1200 }, 'race', 1200, ...type('object')],
    [{ race: [5000, 1200] }, 'race', [], ...type('object', 'list of 2')],
    [{ race: { metres: 5000 } }, 'race.seconds', undefined, 'missing'],
    [{ race: { seconds: 1200 } }, 'race.metres', undefined, 'missing'],
    [race({ minutes: 20 }), 'race.minutes', 20, 'unknown-field'],
    [race({ metres: '5000' }), 'race.metres', '5000', ...type('number')],
    [race({ metres: null }), 'race.metres', null, ...type('number')],
    [race({ metres: NaN }), 'race.metres', NaN, ...type('number')],
    [race({ metres: 799.99 }), 'race.metres', 799.99, ...range(800, 100_000)],
    [race({ metres: 100_001 }), 'race.metres', 100_001, ...range(800, 100_000)],
    [race({ metres: Infinity }), 'race.metres', Infinity, ...range(800, 100_000)],
    [race({ seconds: '20:00' }), 'race.seconds', '20:00', ...type('number')],
  ],
  // From 60 to 480 metres a minute: 5000 m take 625 to 5000 seconds.
  'a time that nobody takes': [
    [race({ seconds: 624 }), 'race.seconds', 624, ...range(625, 5000)],
    [race({ seconds: 5001 }), 'race.seconds', 5001, ...range(625, 5000)],
    [race({ seconds: -1 }), 'race.seconds', -1, ...range(625, 5000)],
    [race({ seconds: 172_801 }), 'race.seconds', 172_801, ...range(625, 5000)],
    [race({ metres: 800, seconds: 99 }), 'race.seconds', 99, ...range(100, 800)],
    [race({ metres: 800, seconds: 801 }), 'race.seconds', 801, ...range(100, 800)],
    [race({ metres: 100_000 }), 'race.seconds', 1200, ...range(12_500, 100_000)],
    [race({ metres: 800, seconds: 60 }), 'race.seconds', 60, ...range(100, 800)],
    [race({ metres: 100_000, seconds: 172_800 }), 'race.seconds', 172_800, ...range(12_500, 100_000)],
    // 42,195 / 480 × 60 = 5274.4 seconds.
    [race({ metres: 42_195, seconds: 5274 }), 'race.seconds', 5274, ...range(5275, 42_195)],
  ],
  dates: [
    [race({ date: '2027-02-29' }), 'race.date', '2027-02-29', 'no-date', dates],
    [race({ date: '11.4.2027' }), 'race.date', '11.4.2027', 'no-date', dates],
    [race({ date: '' }), 'race.date', '', 'no-date', dates],
    [race({ date: '1899-12-31' }), 'race.date', '1899-12-31', 'no-date', dates],
    [race({ date: 20270411 }), 'race.date', 20270411, ...type('text')],
    [{ today: '2027-13-01' }, 'today', '2027-13-01', 'no-date', dates],
    [{ today: '2200-01-01' }, 'today', '2200-01-01', 'no-date', dates],
    [{ today: 0 }, 'today', 0, ...type('text')],
    [
      { ...race({ date: '2027-04-12' }), today: '2027-04-11' },
      ...(['race.date', '2027-04-12', 'out-of-range', { most: '2027-04-11' }] as const),
    ],
    // What is no date is neither before nor after another.
    [{ ...race({ date: '2027-04-11' }), today: '1.5.2027' }, 'today', '1.5.2027', 'no-date', dates],
    [{ ...race({ date: '31.12.2026' }), today: '2027-01-01' }, 'race.date', '31.12.2026', 'no-date', dates],
  ],
  'pace, age and weight': [
    [{ thresholdPace: 149 }, 'thresholdPace', 149, ...range(150, 720)],
    [{ thresholdPace: 720.5 }, 'thresholdPace', 720.5, ...range(150, 720)],
    [{ thresholdPace: '4:00' }, 'thresholdPace', '4:00', ...type('number')],
    [{ age: 4.99 }, 'age', 4.99, ...range(5, 110)],
    [{ age: 111 }, 'age', 111, ...range(5, 110)],
    [{ age: '40' }, 'age', '40', ...type('number')],
    [{ weight: 19 }, 'weight', 19, ...range(20, 300)],
    [{ weight: 301 }, 'weight', 301, ...range(20, 300)],
    [{ weight: {} }, 'weight', {}, ...type('number', 'object')],
  ],
  'heart rates': [
    [{ highestHeart: 99 }, 'highestHeart', 99, ...range(100, 240)],
    [{ highestHeart: 241 }, 'highestHeart', 241, ...range(100, 240)],
    [{ highestHeart: false }, 'highestHeart', false, ...type('number')],
    [{ restingHeart: 24 }, 'restingHeart', 24, ...range(25, 120)],
    [{ restingHeart: 121 }, 'restingHeart', 121, ...range(25, 120)],
    [{ restingHeart: '50' }, 'restingHeart', '50', ...type('number')],
    [
      { highestHeart: 110, restingHeart: 110 },
      ...(['restingHeart', 110, 'out-of-range', { least: 25, most: 109 }] as const),
    ],
    [
      { highestHeart: 110, restingHeart: 120 },
      ...(['restingHeart', 120, 'out-of-range', { least: 25, most: 109 }] as const),
    ],
  ],
};

describe.each(Object.entries(rows))('%s', (_, faults) => {
  test.each(faults.map((row) => [inShort(row[0]), ...row] as const))(
    '%s',
    (__, running, path, value, code, allowed = {}, given = value) => {
      const whole = path === '' ? 'running' : `running.${path}`;
      expect(problemsOf(running)).toEqual([{ path: whole, value: given, code, allowed }]);
    },
  );
});

describe('a request', () => {
  test('has all of its faults told at once, those across fields only where no field has one', () => {
    const places = (running: unknown) => problemsOf(running).map(({ path, code }) => [path, code]);
    expect(places({ race: {}, age: 2, unit: 'm', colour: 1 })).toEqual([
      ['running.race.metres', 'missing'],
      ['running.race.seconds', 'missing'],
      ['running.unit', 'not-one-of'],
      ['running.age', 'out-of-range'],
      ['running.colour', 'unknown-field'],
    ]);
    expect(places({ ...race({ date: 'x', seconds: 1 }), today: 'y', weight: 1 })).toEqual([
      ['running.weight', 'out-of-range'],
    ]);
    expect(places({ ...race({ seconds: 100 }), today: 'y', highestHeart: 100, restingHeart: 100 })).toEqual([
      ['running.today', 'no-date'],
      ['running.race.seconds', 'out-of-range'],
      ['running.restingHeart', 'out-of-range'],
    ]);
  });

  test('has faults of the week and of running told together', () => {
    const outcome = planner.plan({ hours: -1, running: { age: 0 } });
    expect(outcome.ok ? [] : outcome.problems.map(({ path }) => path)).toEqual(['hours', 'running.age']);
  });

  test('may not speak of running where the planner knows nothing of it', () => {
    const sheet = createSheet(expandMethod(builtInMethod), builtInFormulas);
    const bare = new Planner({ method: builtInMethod, sheet });
    const outcome = bare.plan({ hours: 4, running: {} });
    expect(outcome.ok ? [] : outcome.problems.map(({ path, code }) => [path, code])).toEqual([
      ['running', 'unknown-field'],
    ]);
  });

  test.each([
    { thresholdPace: 150 },
    { thresholdPace: 720 },
    { age: 5 },
    { age: 110 },
    { highestHeart: 100 },
    { highestHeart: 240 },
    { restingHeart: 25 },
    { restingHeart: 120 },
    { highestHeart: 120, restingHeart: 119 },
    { weight: 20 },
    { weight: 300 },
    { today: '1900-01-01' },
    { today: '2199-12-31' },
    race({ metres: 800, seconds: 100 }),
    race({ metres: 800, seconds: 800 }),
    race({ metres: 100_000, seconds: 12_500 }),
    race({ metres: 100_000, seconds: 100_000 }),
    race({ seconds: 625 }),
    race({ seconds: 5000 }),
    race({ seconds: 1199.5 }),
    race({ date: null }),
    race({ date: undefined }),
    { ...race({ date: '2027-04-11' }), today: '2027-04-11' },
    { ...race({ date: '2027-04-11' }), today: null },
    { ...race({ date: '2027-04-11' }) },
    { race: null, thresholdPace: null, age: null, highestHeart: null, restingHeart: null, weight: null, today: null },
  ])('at its limits is read: %j', (running) => {
    expect(problemsOf(running)).toEqual([]);
  });

  // 60 and 480 metres a minute are allowed, so a thousand metres in 125 seconds are, and 965 metres in 965.
  test.each([
    [965, 965],
    [1018, 1018],
    [1923, 1923],
    [992, 124],
    [1000, 125],
    [2000, 250],
    [4000, 500],
  ])('of %d metres in %d seconds is at the limit of speed, and read', (metres, seconds) => {
    expect(problemsOf({ race: { metres, seconds } })).toEqual([]);
  });
});
