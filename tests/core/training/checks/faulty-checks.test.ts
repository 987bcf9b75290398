import { describe, expect, test } from 'vitest';
import type { Problem } from '../../../../src/problem.js';
import {
  checkGroupIds,
  edgeInputs,
  measureIds,
  type CheckLimits,
} from '../../../../src/training/method/check-rules.js';
import { categoryIds, levelIds, phaseIds, statusIds } from '../../../../src/training/method/ids.js';
import { inShort } from '../../in-short.js';
import { defaultDocument, documentWith, objectOf, plannerOf, problemsOf } from '../method/documents.js';

type Row = readonly [
  path: string,
  value: unknown,
  code: Problem['code'],
  allowed?: Problem['allowed'],
  given?: unknown,
  at?: string,
];

const number = { expected: 'number' };
const list = { expected: 'list' };
const object = { expected: 'object' };
const choices = (...ids: readonly string[]) => ({ choices: ids });
const idPattern = { pattern: '/^[a-z][a-z0-9-]{0,39}$/' };
const beyond = (path: string, [least, most]: readonly [number, number], by = 0.01): readonly Row[] => [
  [path, least - by, 'out-of-range', { least }],
  [path, most + by, 'out-of-range', { most }],
];
const entriesOf = (name: 'list' | 'differences'): unknown[] => {
  const entries = objectOf(defaultDocument()['checks'])[name];
  if (!Array.isArray(entries)) throw new Error(`no list: ${name}`);
  return entries.map((each: unknown) => each);
};
const first = 'checks.list[0]';
const limits = `${first}.limits[0]`;
const some: CheckLimits = {
  ...{ in_line: { least: 1 }, not_said: 'nothing', status: 'assumption', reason: 'our reading' },
};
const within = (more: Partial<CheckLimits>): CheckLimits => ({ ...some, ...more });
const wrongOrder = (
  more: Partial<CheckLimits>,
  path: string,
  value: number,
  [before, after]: [string, string],
): Row => [...([limits, within(more), 'wrong-order', { before, after }, value, `${limits}.${path}`] as const)];

// The default method with one fault each in its checks; the problem is at the path and has the value, unless given.
const rows: Readonly<Record<string, readonly Row[]>> = {
  'the section': [
    ['checks', null, 'wrong-type', object],
    ['checks.colour', 'red', 'unknown-field'],
    ...['activity', 'list', 'differences', 'screening'].map((part): Row => [`checks.${part}`, undefined, 'missing']),
  ],
  activity: [
    ...beyond('checks.activity.moderate', [1, 30]),
    ...beyond('checks.activity.vigorous', [1, 30]),
    ...beyond('checks.activity.vigorous_counts', [1, 10]),
    ...beyond('checks.activity.kinds[0].multiple', [0.5, 30]),
    ['checks.activity.kinds[0].id', 'yoga', 'not-one-of', choices(...categoryIds)],
    ['checks.activity.kinds[1].id', 'slow', 'duplicate'],
    ['checks.activity.kinds[0].multiple', '7.5', 'wrong-type', number],
    ['checks.activity.vigorous', 2.99, 'wrong-order', { before: 'moderate', after: 'vigorous' }],
    ['checks.activity.reason', undefined, 'missing'],
    ['checks.activity.kinds', {}, 'wrong-type', list, 'object'],
  ],
  'a check': [
    [`${first}.id`, 'A', 'wrong-pattern', idPattern],
    ['checks.list[1].id', 'activity', 'duplicate'],
    [`${first}.group`, 'fun', 'not-one-of', choices(...checkGroupIds)],
    [`${first}.measure`, 'mood', 'not-one-of', choices(...measureIds)],
    [`${first}.enabled`, 'no', 'wrong-type', { expected: 'true or false' }],
    ...['name', 'says', 'change'].map((part): Row => [`${first}.${part}`, undefined, 'missing']),
    [`${first}.limits`, [], 'missing', {}, 'list of 0'],
    [`${first}.limits`, Array.from({ length: 21 }, () => some), 'too-long', { most: 20 }, 'list of 21'],
    [`${first}.colour`, 'red', 'unknown-field'],
    [
      ...(['checks.list', Array.from({ length: 61 }, () => entriesOf('list')[0]), 'too-long'] as const),
      ...([{ most: 60 }, 'list of 61'] as const),
    ],
  ],
  limits: [
    [`${limits}.levels`, [], 'missing', {}, 'list of 0'],
    [`${limits}.levels`, ['expert'], 'not-one-of', choices(...levelIds), 'expert', `${limits}.levels[0]`],
    [`${limits}.phases`, ['summer'], 'not-one-of', choices(...phaseIds), 'summer', `${limits}.phases[0]`],
    [`${limits}.phases`, [...phaseIds, 'base'], 'too-long', { most: 6 }, 'list of 7'],
    [`${limits}.ages`, { least: -1 }, 'out-of-range', { least: 0 }, -1, `${limits}.ages.least`],
    [`${limits}.ages`, { most: 121 }, 'out-of-range', { most: 120 }, 121, `${limits}.ages.most`],
    [`${limits}.ages`, { most: 17.5 }, 'not-a-step', { step: 1 }, 17.5, `${limits}.ages.most`],
    [`${limits}.ages`, { from: 65 }, 'unknown-field', {}, 65, `${limits}.ages.from`],
    ...beyond(`${limits}.hours_above`, [0, 168]),
    [`${limits}.not_said`, undefined, 'missing'],
    [`${limits}.status`, 'known', 'not-one-of', choices(...statusIds)],
    [`${limits}.reason`, undefined, 'missing'],
    [`${limits}.in_line`, undefined, 'missing'],
    [`${limits}.in_line.least`, 100_000.5, 'out-of-range', { most: 100_000 }],
    [
      `${limits}.caution`,
      { below: -100_001 },
      'out-of-range',
      { least: -100_000 },
      -100_001,
      `${limits}.caution.below`,
    ],
    [`${limits}.caution`, { under: 5 }, 'unknown-field', {}, 5, `${limits}.caution.under`],
  ],
  'limits without an edge': [
    [limits, within({ in_line: {} }), 'missing', {}, null, `${limits}.in_line`],
    [limits, within({ in_line: {}, caution: { above: 3 } }), 'missing', {}, null, `${limits}.in_line`],
  ],
  'edges that do not rise': [
    wrongOrder({ in_line: { least: 2, most: 1 } }, 'in_line.most', 1, ['in_line.least', 'in_line.most']),
    wrongOrder({ caution: { below: 1.1 } }, 'in_line.least', 1, ['caution.below', 'in_line.least']),
    wrongOrder({ in_line: { most: 1 }, caution: { above: 0.9 } }, 'caution.above', 0.9, [
      ...(['in_line.most', 'caution.above'] as [string, string]),
    ]),
    wrongOrder({ in_line: { most: 1 }, caution: { below: 2 } }, 'in_line.most', 1, ['caution.below', 'in_line.most']),
    wrongOrder({ caution: { above: 0 } }, 'caution.above', 0, ['in_line.least', 'caution.above']),
    wrongOrder({ ages: { least: 18, most: 17 } }, 'ages.most', 17, ['ages.least', 'ages.most']),
  ],
  differences: [
    ['checks.differences[1].id', 'hard-share', 'duplicate'],
    ['checks.differences[0].id', 'Hard', 'wrong-pattern', idPattern],
    ['checks.differences[0].text', undefined, 'missing'],
    ['checks.differences[0].sources', undefined, 'missing'],
    ['checks.differences[0].status', 'assumption', 'unknown-field'],
  ],
};

describe.each(Object.entries(rows))('%s', (_, faults) => {
  test.each(faults.map((row) => [row[0], inShort(row[1]), row] as const))(
    '%s = %s',
    async (path, __, [, value, code, allowed = {}, given = value, at = path]) => {
      expect(await problemsOf(documentWith(path, value))).toMatchObject([{ path: at, value: given, code, allowed }]);
    },
  );
});

test('an edge that is an input has to be one that there is', async () => {
  const problems = await problemsOf(documentWith(`${limits}.in_line.least`, 'weekly_cap'));
  expect(problems.map(({ path }) => path)).toEqual([`${limits}.in_line.least`]);
  expect(edgeInputs).toEqual(['strength_cap']);
});

describe('checks at their limits are read:', () => {
  const ends = (path: string, ...values: readonly unknown[]) => values.map((value) => [path, value] as const);

  test.each([
    ...ends('checks', undefined),
    ...ends('checks.list', []),
    ...ends('checks.differences', []),
    ...ends('checks.activity.kinds', []),
    ...ends('checks.activity.vigorous', 3, 30),
    ...ends('checks.activity.vigorous_counts', 1, 10),
    ...ends(`${first}.enabled`, true, false),
    ...ends(
      limits,
      within({ in_line: { least: 1, most: 1 }, caution: { below: 1, above: 1 } }),
      within({ in_line: { most: 'strength_cap' }, caution: { above: 1 } }),
      within({ in_line: { least: 'strength_cap', most: 5 } }),
      within({ ages: { least: 18, most: 18 } }),
      within({ ages: { least: 0, most: 120 }, hours_above: 168, levels: levelIds, phases: phaseIds }),
      within({ in_line: { least: -100_000, most: 100_000 }, hours_above: 0 }),
    ),
  ])('%s = %j', async (path, value) => {
    expect((await plannerOf(documentWith(path, value))).method.format).toBe('weekwright-method');
  });

  test('a check that is switched off is not made', async () => {
    const planner = await plannerOf(documentWith(`${first}.enabled`, false));
    const outcome = planner.plan({ hours: 4, checks: {} });
    const ids = outcome.ok ? outcome.value.checks.map(({ id }) => id) : [];
    expect(ids).toContain('strength-days');
    expect(ids).not.toContain('activity');
  });
});
