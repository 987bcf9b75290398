import { describe, expect, test } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import type { Problem } from '../../../../src/problem.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import { inShort } from '../../in-short.js';

const planner = builtInPlanner();
const days = [60, 0, 45, 60, 0, 90, 120];
const tempo = { category: 'tempo', minutes: 30, day: 2 };
const ask = (week: unknown) => planner.plan({ week });

type Fault = readonly [code: Problem['code'], allowed: Problem['allowed']];
/** Fields put into a week with the days above; the path within it, and the value where it is not shown whole. */
type Row = readonly [fields: object, path: string, value: unknown, ...Fault];

const list: Fault = ['wrong-type', { expected: 'list' }];
const number: Fault = ['wrong-type', { expected: 'number' }];
const object: Fault = ['wrong-type', { expected: 'object' }];
const missing: Fault = ['missing', {}];
const unknown: Fault = ['unknown-field', {}];
const duplicate: Fault = ['duplicate', {}];
const whole: Fault = ['not-a-step', { step: 1 }];
const onStep: Fault = ['not-a-step', { step: 5 }];
const least = (value: number): Fault => ['out-of-range', { least: value }];
const most = (value: number): Fault => ['out-of-range', { most: value }];
const tooLong = (value: number): Fault => ['too-long', { most: value }];
const seven = (count: number): Fault => ['wrong-count', { expected: 7, count }];
const kinds: Fault = ['not-one-of', { choices: [...categoryIds] }];

const placed = (name: 'pinned' | 'done'): Row[] => [
  [{ [name]: tempo }, name, 'object', ...list],
  [{ [name]: Array(36).fill(tempo) }, name, 'list of 36', ...tooLong(35)],
  [{ [name]: [30] }, `${name}[0]`, 30, ...object],
  [{ [name]: [{ ...tempo, day: 7 }] }, `${name}[0].day`, 7, ...most(6)],
  [{ [name]: [{ ...tempo, day: -1 }] }, `${name}[0].day`, -1, ...least(0)],
  [{ [name]: [{ ...tempo, day: 0.5 }] }, `${name}[0].day`, 0.5, ...whole],
  [{ [name]: [{ ...tempo, day: 'Monday' }] }, `${name}[0].day`, 'Monday', ...number],
  [{ [name]: [{ category: 'tempo', minutes: 30 }] }, `${name}[0].day`, undefined, ...missing],
  [{ [name]: [{ ...tempo, category: 'yoga' }] }, `${name}[0].category`, 'yoga', ...kinds],
  [{ [name]: [{ minutes: 30, day: 2 }] }, `${name}[0].category`, undefined, ...missing],
  [{ [name]: [{ ...tempo, minutes: 0 }] }, `${name}[0].minutes`, 0, ...least(1)],
  [{ [name]: [{ ...tempo, minutes: 1445 }] }, `${name}[0].minutes`, 1445, ...most(1440)],
  [{ [name]: [{ ...tempo, minutes: '30' }] }, `${name}[0].minutes`, '30', ...number],
  [{ [name]: [{ ...tempo, minutes: 32 }] }, `${name}[0].minutes`, 32, ...onStep],
  [{ [name]: [{ ...tempo, minutes: 30.5 }] }, `${name}[0].minutes`, 30.5, ...whole],
  [{ [name]: [{ ...tempo, note: 'club' }] }, `${name}[0].note`, 'club', ...unknown],
  [{ [name]: [tempo, { ...tempo, minutes: 40 }] }, `${name}[1].category`, 'tempo', ...duplicate],
];

const rows: readonly Row[] = [
  [{ days: undefined }, 'days', undefined, ...missing],
  [{ days: null }, 'days', null, ...list],
  [{ days: { monday: 60 } }, 'days', 'object', ...list],
  [{ days: '60,0,45,60,0,90,120' }, 'days', '60,0,45,60,0,90,120', ...list],
  [{ days: [] }, 'days', 'list of 0', ...seven(0)],
  [{ days: [60, 60, 60, 60, 60, 60] }, 'days', 'list of 6', ...seven(6)],
  [{ days: [60, 60, 60, 60, 60, 60, 60, 60] }, 'days', 'list of 8', ...seven(8)],
  [{ days: days.with(3, -5) }, 'days[3]', -5, ...least(0)],
  [{ days: days.with(6, 1441) }, 'days[6]', 1441, ...most(1440)],
  [{ days: days.with(0, 60.5) }, 'days[0]', 60.5, ...whole],
  [{ days: days.with(0, NaN) }, 'days[0]', NaN, ...number],
  [{ days: [...days.slice(0, 6), '120'] }, 'days[6]', '120', ...number],
  [{ days: [null, ...days.slice(1)] }, 'days[0]', null, ...number],

  [{ free: 4 }, 'free', 4, ...list],
  [{ free: null }, 'free', null, ...list],
  [{ free: [7] }, 'free[0]', 7, ...most(6)],
  [{ free: [-1] }, 'free[0]', -1, ...least(0)],
  [{ free: [1.5] }, 'free[0]', 1.5, ...whole],
  [{ free: ['Friday'] }, 'free[0]', 'Friday', ...number],
  [{ free: [4, 1, 4] }, 'free[2]', 4, ...duplicate],
  [{ free: [0, 1, 2, 3, 4, 5, 6, 0] }, 'free', 'list of 8', ...tooLong(7)],

  [{ longRun: 7 }, 'longRun', 7, ...most(6)],
  [{ longRun: -1 }, 'longRun', -1, ...least(0)],
  [{ longRun: 0.5 }, 'longRun', 0.5, ...whole],
  [{ longRun: 'Sunday' }, 'longRun', 'Sunday', ...number],
  [{ restDays: 8 }, 'restDays', 8, ...most(7)],
  [{ restDays: -1 }, 'restDays', -1, ...least(0)],
  [{ restDays: 1.5 }, 'restDays', 1.5, ...whole],
  [{ restDays: null }, 'restDays', null, ...number],
  [{ sessionsADay: 0 }, 'sessionsADay', 0, ...least(1)],
  [{ sessionsADay: 6 }, 'sessionsADay', 6, ...most(5)],
  [{ sessionsADay: 2.5 }, 'sessionsADay', 2.5, ...whole],
  [{ sessionsADay: '2' }, 'sessionsADay', '2', ...number],
  [{ passed: 8 }, 'passed', 8, ...most(7)],
  [{ passed: -1 }, 'passed', -1, ...least(0)],
  [{ passed: 0.5 }, 'passed', 0.5, ...whole],
  [{ passed: true }, 'passed', true, ...number],

  ...placed('pinned'),
  ...placed('done'),
  [{ pinned: [tempo], done: [{ ...tempo, minutes: 40 }] }, 'done[0].category', 'tempo', ...duplicate],

  [{ sessions: 30 }, 'sessions', 30, ...object],
  [{ sessions: { yoga: [30] } }, 'sessions.yoga', 'list of 1', ...unknown],
  [{ sessions: { slow: 30 } }, 'sessions.slow', 30, ...list],
  [{ sessions: { slow: null } }, 'sessions.slow', null, ...list],
  [{ sessions: { slow: [30, 0] } }, 'sessions.slow[1]', 0, ...least(1)],
  [{ sessions: { slow: [1445] } }, 'sessions.slow[0]', 1445, ...most(1440)],
  [{ sessions: { slow: [30, 33] } }, 'sessions.slow[1]', 33, ...onStep],
  [{ sessions: { slow: ['30'] } }, 'sessions.slow[0]', '30', ...number],
  [{ sessions: { slow: Array(8).fill(30) } }, 'sessions.slow', 'list of 8', ...tooLong(7)],

  [{ before: [] }, 'before', 'list of 0', ...seven(0)],
  [{ before: [60, [], [], [], [], [], []] }, 'before[0]', 60, ...list],
  [{ before: [[tempo], [], [], [], [], [], []] }, 'before[0][0].day', 2, ...unknown],
  [
    { before: [[{ category: 'yoga', minutes: 30 }], [], [], [], [], [], []] },
    'before[0][0].category',
    'yoga',
    ...kinds,
  ],
  [{ before: [[{ category: 'slow', minutes: 0 }], [], [], [], [], [], []] }, 'before[0][0].minutes', 0, ...least(1)],
  [
    { before: [Array(6).fill({ category: 'slow', minutes: 30 }), [], [], [], [], [], []] },
    'before[0]',
    'list of 6',
    ...tooLong(5),
  ],

  [{ colour: 'red' }, 'colour', 'red', ...unknown],
  [JSON.parse('{"__proto__": {"free": [1]}}') as object, '__proto__', 'object', ...unknown],
  [{ constructor: 1 }, 'constructor', 1, ...unknown],
];

describe('a week with one fault has one problem:', () => {
  test.each(rows.map((row) => [inShort(row[0]), ...row] as const))('%s', (_, fields, path, value, code, allowed) => {
    const week = Object.defineProperties({ days }, Object.getOwnPropertyDescriptors(fields));
    expect(ask(week)).toEqual({ ok: false, problems: [{ path: `week.${path}`, value, code, allowed }] });
  });

  test.each([['60,0,45'], [60], [true]])('a week that is %j', (week) => {
    expect(ask(week)).toEqual({
      ok: false,
      problems: [{ path: 'week', value: week, code: 'wrong-type', allowed: { expected: 'object' } }],
    });
  });

  test('several faults have a problem each, beside those of other fields', () => {
    const outcome = planner.plan({ hours: 99, week: { days: days.with(0, -1), free: [9], longRun: 8, more: 1 } });
    const paths = outcome.ok ? [] : outcome.problems.map(({ path }) => path);
    expect([...paths].sort()).toEqual(['hours', 'week.days[0]', 'week.free[0]', 'week.longRun', 'week.more']);
  });
});
