import { describe, expect, test } from 'vitest';
import type { Problem } from '../../../../src/problem.js';
import { statusIds } from '../../../../src/training/method/ids.js';
import { bandIds, runningIds } from '../../../../src/training/method/running-rules.js';
import { inShort } from '../../in-short.js';
import { defaultDocument, documentWith, objectOf, plannerOf, problemsOf } from './documents.js';

type Row = readonly [
  path: string,
  value: unknown,
  code: Problem['code'],
  allowed?: Problem['allowed'],
  given?: unknown,
];

const number = { expected: 'number' };
const list = { expected: 'list' };
const object = { expected: 'object' };
const idPattern = '/^[a-z][a-z0-9-]{0,39}$/';
const order = { before: 'least', after: 'most' };
/** The values of a list in the section. */
function listOf(...keys: readonly string[]): unknown[] {
  const found = keys.reduce<unknown>((within, key) => objectOf(within)[key], defaultDocument()['running']);
  if (!Array.isArray(found)) throw new Error(`no list: ${keys.join('.')}`);
  return found.map((each: unknown) => each);
}
const estimate = (id: string) => ({ id, from: 210, slope: 0.7 });
/** Both ends of a range of a number, and just beyond them. */
const beyond = (path: string, [least, most]: readonly [number, number], by = 0.01): readonly Row[] => [
  [path, least - by, 'out-of-range', { least }],
  [path, most + by, 'out-of-range', { most }],
];

// The default method with one fault each in how it makes running concrete: the kinds are slow, tempo, intervals. The
// problem is at the path and has the value, unless the row gives the value as it is shown.
const rows: Readonly<Record<string, readonly Row[]>> = {
  'the section': [
    ['running', null, 'wrong-type', object],
    ['running', 'usual', 'wrong-type', object],
    ['running.colour', 'red', 'unknown-field'],
    ['running.kinds', undefined, 'missing'],
    ['running.equal_times', undefined, 'missing'],
    ['running.threshold', undefined, 'missing'],
    ['running.heart', 1, 'wrong-type', object],
    ['running.energy', undefined, 'missing'],
  ],
  kinds: [
    ['running.kinds', {}, 'wrong-type', list, 'object'],
    ['running.kinds', listOf('kinds').slice(1), 'wrong-count', { expected: 3, count: 2 }, 'list of 2'],
    ['running.kinds', [...listOf('kinds'), listOf('kinds')[0]], 'wrong-count', { expected: 3, count: 4 }, 'list of 4'],
    ['running.kinds[0].id', 'tempo', 'duplicate', {}, 'tempo'],
    ['running.kinds[2].id', 'strength', 'not-one-of', { choices: [...runningIds] }],
    ['running.kinds[0].pace', 300, 'unknown-field'],
    ['running.kinds[0].uptake', undefined, 'missing'],
    ['running.kinds[0].uptake.least', '0.6', 'wrong-type', number],
    ['running.kinds[0].status', 'known', 'not-one-of', { choices: [...statusIds] }],
    ['running.kinds[0].reason', undefined, 'missing'],
    ['running.kinds[0].uptake.least', 0.29, 'out-of-range', { least: 0.3 }],
    ['running.kinds[2].uptake.most', 1.31, 'out-of-range', { most: 1.3 }],
    ['running.kinds[0].uptake.most', 0.59, 'wrong-order', order],
    ['running.kinds[0].effort.least', -1, 'out-of-range', { least: 0 }],
    ['running.kinds[2].effort.most', 11, 'out-of-range', { most: 10 }],
    ['running.kinds[2].effort.most', 6.9, 'wrong-order', order],
  ],
  'warm-up and cool-down': (['warm_up', 'cool_down'] as const).flatMap((part): readonly Row[] => [
    ...beyond(`running.kinds[1].${part}.minutes`, [0, 60], 1),
    ...beyond(`running.kinds[1].${part}.most_share`, [0, 0.4]),
    [`running.kinds[1].${part}.minutes`, 7.5, 'not-a-step', { step: 1 }],
    [`running.kinds[1].${part}.minutes`, undefined, 'missing'],
    [`running.kinds[1].${part}.most_share`, undefined, 'missing'],
    [`running.kinds[1].${part}.pace`, 1, 'unknown-field'],
    [`running.kinds[1].${part}`, 15, 'wrong-type', object],
  ]),
  bouts: [
    // Rests of up to twice the work.
    ['running.kinds[2].bouts.rest', 6.01, 'out-of-range', { least: 0, most: 6 }],
    ['running.kinds[2].bouts.work', 0.99, 'out-of-range', { least: 0, most: 1.98 }, 2],
    ...beyond('running.kinds[1].bouts.work', [0.5, 60]),
    ...beyond('running.kinds[1].bouts.rest', [0, 30]),
    ['running.kinds[2].bouts.times', 5, 'unknown-field'],
    ['running.kinds[2].bouts.rest', undefined, 'missing'],
    ['running.kinds[2].bouts', null, 'wrong-type', object],
  ],
  'equal times': [
    ['running.equal_times.distances', [], 'missing', {}, 'list of 0'],
    [
      'running.equal_times.distances',
      Array.from({ length: 21 }, (_, index) => 1000 * (index + 1)),
      ...(['too-long', { most: 20 }, 'list of 21'] as const),
    ],
    ['running.equal_times.distances', 5000, 'wrong-type', list],
    ['running.equal_times.distances[0]', '1500', 'wrong-type', number],
    ['running.equal_times.distances[0]', 399, 'out-of-range', { least: 400 }],
    ['running.equal_times.distances[7]', 500_001, 'out-of-range', { most: 500_000 }],
    ['running.equal_times.distances[3]', 2999, 'wrong-order', { before: '[2]', after: '[3]' }],
    ['running.equal_times.distances[3]', 3000, 'wrong-order', { before: '[2]', after: '[3]' }],
    ...beyond('running.equal_times.least_seconds', [0, 3600]),
    ...beyond('running.equal_times.most_seconds', [3600, 360_000]),
    ...beyond('running.equal_times.marathon_minutes', [0, 120]),
    ...beyond('running.equal_times.outside_share', [0, 1]),
    ...beyond('running.equal_times.old_days', [1, 3650], 1),
    ['running.equal_times.old_days', 180.5, 'not-a-step', { step: 1 }],
    ['running.equal_times.step', 5, 'unknown-field'],
  ],
  'threshold and energy': [
    ...beyond('running.threshold.minutes', [10, 120]),
    ['running.threshold.minutes', undefined, 'missing'],
    ['running.energy.cross.least', 0.99, 'out-of-range', { least: 1 }],
    ['running.energy.strength.most', 25.01, 'out-of-range', { most: 25 }],
    ['running.energy.cross.most', 4.99, 'wrong-order', order],
    ['running.energy.strength.most', 3, 'wrong-order', order],
    ['running.energy.running', { least: 1, most: 2 }, 'unknown-field', {}, 'object'],
  ],
  'estimates of the highest heart rate': [
    ['running.heart.estimates', [], 'missing', {}, 'list of 0'],
    [
      'running.heart.estimates',
      ['a', 'b', 'c', 'd', 'e', 'f'].map(estimate),
      ...(['too-long', { most: 5 }, 'list of 6'] as const),
    ],
    ['running.heart.estimates[1].id', 'tanaka', 'duplicate'],
    ['running.heart.estimates[0].id', 'By age', 'wrong-pattern', { pattern: idPattern }],
    ...beyond('running.heart.estimates[0].from', [150, 250], 1),
    ...beyond('running.heart.estimates[0].slope', [0, 1]),
    ['running.heart.spread.least', -1, 'out-of-range', { least: 0 }],
    ['running.heart.spread.most', 51, 'out-of-range', { most: 50 }],
    ['running.heart.spread.most', 6, 'wrong-order', order],
  ],
  'bands of intensity': [
    ['running.heart.bands', listOf('heart', 'bands').slice(1), 'wrong-count', { expected: 5, count: 4 }, 'list of 4'],
    ['running.heart.bands[0].id', 'easy', 'not-one-of', { choices: [...bandIds] }],
    ['running.heart.bands[2].id', 'light', 'duplicate'],
    ['running.heart.bands[0].uptake', -0.01, 'out-of-range', { least: 0 }],
    ['running.heart.bands[4].highest', 1.01, 'out-of-range', { most: 1 }],
    ['running.heart.bands[1].reserve', undefined, 'missing'],
    ...(['uptake', 'reserve', 'highest'] as const).flatMap((edge): readonly Row[] => {
      const place = { before: `[0].${edge}`, after: `[1].${edge}` };
      return [[`running.heart.bands[1].${edge}`, 0, 'wrong-order', place]];
    }),
    [
      'running.heart.bands[3].uptake',
      ...([0.45, 'wrong-order', { before: '[2].uptake', after: '[3].uptake' }] as const),
    ],
  ],
};

/** Where the problem is, if not where the value is: of a double at the second, of long rests at the rest. */
const places: Readonly<Record<string, string>> = {
  'running.kinds[0].id': 'running.kinds[1].id',
  'running.kinds[2].bouts.work': 'running.kinds[2].bouts.rest',
};

describe.each(Object.entries(rows))('%s', (_, faults) => {
  test.each(faults.map((row) => [`${row[0]} = ${inShort(row[1])}`, ...row] as const))(
    '%s',
    async (__, path, value, code, allowed = {}, given = value) => {
      const place = places[path] ?? path;
      expect(await problemsOf(documentWith(path, value))).toEqual([{ path: place, value: given, code, allowed }]);
    },
  );
});

describe('running at its limits is read:', () => {
  const ends = (path: string, ...values: readonly unknown[]) => values.map((value) => [path, value] as const);

  test.each([
    ...ends('running', undefined),
    ...ends('running.kinds', listOf('kinds').reverse()),
    ...ends('running.kinds[0].uptake', { least: 0.3, most: 1.3 }, { least: 0.7, most: 0.7 }),
    ...ends('running.kinds[0].effort', { least: 0, most: 10 }, { least: 5, most: 5 }),
    ...ends('running.kinds[1].warm_up', undefined, { minutes: 0, most_share: 0 }, { minutes: 60, most_share: 0.4 }),
    ...ends('running.kinds[1].cool_down', undefined, { minutes: 0, most_share: 0 }, { minutes: 60, most_share: 0.4 }),
    ...ends('running.kinds[1].bouts', undefined, { work: 0.5, rest: 1 }, { work: 60, rest: 30 }, { work: 9, rest: 0 }),
    ...ends('running.equal_times.distances', [400], [400, 500_000]),
    ...ends('running.equal_times.least_seconds', 0, 3600),
    ...ends('running.equal_times.most_seconds', 3600, 360_000),
    ...ends('running.equal_times.marathon_minutes', 0, 120),
    ...ends('running.equal_times.outside_share', 0, 1),
    ...ends('running.equal_times.old_days', 1, 3650),
    ...ends('running.threshold.minutes', 10, 120, 12.5),
    ...ends('running.heart.estimates', [estimate('own')], ['a', 'b', 'c', 'd', 'e'].map(estimate)),
    ...ends('running.heart.estimates[0].from', 150, 250),
    ...ends('running.heart.estimates[0].slope', 0, 1),
    ...ends('running.heart.spread', { least: 0, most: 50 }, { least: 9, most: 9 }),
    ...ends('running.energy.cross', { least: 1, most: 25 }),
    ...ends('running.kinds[0].sources', undefined, []),
  ])('%s = %j', async (path, value) => {
    expect((await plannerOf(documentWith(path, value))).method.format).toBe('weekwright-method');
  });
});
