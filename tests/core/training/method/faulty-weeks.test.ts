import { describe, expect, test } from 'vitest';
import type { Problem } from '../../../../src/problem.js';
import { categoryIds, statusIds } from '../../../../src/training/method/ids.js';
import { inShort } from '../../in-short.js';
import { documentWith, plannerOf, problemsOf } from './documents.js';

type Row = readonly [
  path: string,
  value: unknown,
  code: Problem['code'],
  allowed?: Problem['allowed'],
  given?: unknown,
];

const idPattern = '/^[a-z][a-z0-9-]{0,39}$/';
const kinds = { choices: [...categoryIds] };
const members = { choices: [...categoryIds, 'long'] };
const number = { expected: 'number' };
const list = { expected: 'list' };
const minutes = [60, 60, 60, 60, 60, 60, 60];

// The default method with one fault each in its week: the first clashes are pairs, the sixth is the crowded day. The
// problem is at the path and has the value, unless the row gives the value as it is shown.
const rows: Readonly<Record<string, readonly Row[]>> = {
  'numbers of the week': [
    ['week', null, 'wrong-type', { expected: 'object' }],
    ['week.colour', 'red', 'unknown-field'],
    ['week.sessions_a_day', undefined, 'missing'],
    ['week.sessions_a_day', 0, 'out-of-range', { least: 1 }],
    ['week.sessions_a_day', 6, 'out-of-range', { most: 5 }],
    ['week.sessions_a_day', 1.5, 'not-a-step', { step: 1 }],
    ['week.rest_days', -1, 'out-of-range', { least: 0 }],
    ['week.rest_days', 8, 'out-of-range', { most: 7 }],
    ['week.rest_days', '1', 'wrong-type', number],
    ['week.hours_between', 25, 'out-of-range', { most: 24 }],
    ['week.hours_between', -1, 'out-of-range', { least: 0 }],
    ['week.order_reason', undefined, 'missing'],
  ],
  'kinds on one day': [
    ['week.one_a_day', 'tempo', 'wrong-type', list],
    ['week.one_a_day[0]', 'yoga', 'not-one-of', kinds],
    ['week.one_a_day[1]', 'tempo', 'duplicate'],
    [
      'week.order_in_day',
      ['slow', 'tempo', 'cross', 'strength'],
      'wrong-count',
      { expected: 5, count: 4 },
      'list of 4',
    ],
    ['week.order_in_day', [...categoryIds, 'slow'], 'wrong-count', { expected: 5, count: 6 }, 'list of 6'],
    ['week.order_in_day[1]', 'intervals', 'duplicate'],
    ['week.order_in_day[1]', 'long', 'not-one-of', kinds],
  ],
  'the cost of a clash': [
    ['week.clashes[0].cost', -1, 'out-of-range', { least: 0 }],
    ['week.clashes[0].cost', 1001, 'out-of-range', { most: 1000 }],
    ['week.clashes[0].cost', 0.5, 'not-a-step', { step: 1 }],
    ['week.clashes[0].cost', '8', 'wrong-type', number],
    ['week.clashes[5].cost', undefined, 'missing'],
    ['week.clashes[5].cost', -1, 'out-of-range', { least: 0 }],
  ],
  'what a clash is': [
    ['week.clashes', {}, 'wrong-type', list, 'object'],
    ['week.clashes[0].id', 'Two hard days', 'wrong-pattern', { pattern: idPattern }],
    ['week.clashes[1].id', 'quality-neighbours', 'duplicate'],
    ['week.clashes[5].id', 'quality-neighbours', 'duplicate'],
    ['week.clashes[0].kind', undefined, 'missing'],
    ['week.clashes[0].says', '', 'missing'],
    ['week.clashes[0].status', 'known', 'not-one-of', { choices: [...statusIds] }],
    ['week.clashes[0].note', 1, 'unknown-field'],
  ],
  'the sides of a pair': [
    ['week.clashes[0].first', [], 'missing', {}, 'list of 0'],
    ['week.clashes[0].first', undefined, 'missing'],
    ['week.clashes[0].first[0]', 'yoga', 'not-one-of', members],
    ['week.clashes[0].then[1]', 'short', 'not-one-of', members],
    ['week.clashes[0].then', 'tempo', 'wrong-type', list],
    ['week.clashes[0].days_apart', 4, 'out-of-range', { most: 3 }],
    ['week.clashes[0].days_apart', -1, 'out-of-range', { least: 0 }],
    ['week.clashes[0].days_apart', 0.5, 'not-a-step', { step: 1 }],
    ['week.clashes[0].days_apart', undefined, 'missing'],
    ['week.clashes[5].days_apart', 1, 'unknown-field'],
    ['week.clashes[5].first', ['slow'], 'unknown-field', {}, 'list of 1'],
    ['week.clashes[4].then[0]', 'strength', 'duplicate'],
  ],
  templates: [
    ['week.templates[0].minutes', minutes.slice(1), 'wrong-count', { expected: 7, count: 6 }, 'list of 6'],
    ['week.templates[0].minutes', [...minutes, 60], 'wrong-count', { expected: 7, count: 8 }, 'list of 8'],
    ['week.templates[0].minutes[3]', 1441, 'out-of-range', { most: 1440 }],
    ['week.templates[0].minutes[3]', -5, 'out-of-range', { least: 0 }],
    ['week.templates[0].minutes[3]', 45.5, 'not-a-step', { step: 1 }],
    ['week.templates[1].id', 'every-day', 'duplicate'],
    ['week.templates[1].id', 'Every day', 'wrong-pattern', { pattern: idPattern }],
    ['week.templates[1].name', undefined, 'missing'],
  ],
};

describe.each(Object.entries(rows))('%s', (_, faults) => {
  test.each(faults.map((row) => [`${row[0]} = ${inShort(row[1])}`, ...row] as const))(
    '%s',
    async (__, path, value, code, allowed = {}, given = value) => {
      expect(await problemsOf(documentWith(path, value))).toEqual([{ path, value: given, code, allowed }]);
    },
  );
});

describe('the two sides of a pair on one day', () => {
  test('differ, and the long run is a slow run', async () => {
    const pair = {
      kind: 'pair',
      id: 'own',
      cost: 1,
      days_apart: 0,
      name: 'x',
      says: 'x',
      reason: 'x',
      status: 'assumption',
    };
    const withSides = (first: readonly string[], then: readonly string[]) =>
      documentWith('week.clashes', [{ ...pair, first, then }]);
    const path = 'week.clashes[0].then[0]';
    for (const [first, then] of [
      ['slow', 'long'],
      ['long', 'slow'],
      ['tempo', 'tempo'],
    ] as const)
      expect(await problemsOf(withSides([first], [then]))).toEqual([
        { path, value: then, code: 'duplicate', allowed: {} },
      ]);
    expect((await plannerOf(withSides(['slow', 'tempo'], ['cross', 'strength']))).method.week?.clashes).toHaveLength(1);
  });

  test('may be the same on neighbouring days', async () => {
    for (const apart of [1, 2, 3])
      expect((await plannerOf(documentWith('week.clashes[1].days_apart', apart))).method.id).toBe('weekwright');
  });
});
