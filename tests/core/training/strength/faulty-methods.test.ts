import { describe, expect, test } from 'vitest';
import type { Problem } from '../../../../src/problem.js';
import { readMethod } from '../../../../src/training/method/read-method.js';
import { levelIds, phaseIds } from '../../../../src/training/method/ids.js';
import { equipmentIds, patternIds, roleIds } from '../../../../src/training/method/strength-rules.js';
import { inShort } from '../../in-short.js';
import { documentWith, valueOf } from '../method/documents.js';
import { movementOf } from './movements.js';

type Row = readonly [
  path: string,
  value: unknown,
  code: Problem['code'],
  allowed?: Problem['allowed'],
  given?: unknown,
];

const problemsOf = (document: unknown): readonly Problem[] => {
  const outcome = readMethod(document);
  return outcome.ok ? [] : outcome.problems;
};
const at = (path: string, value: unknown) => problemsOf(documentWith(`strength.${path}`, value));

const idPattern = '/^[a-z][a-z0-9-]{0,39}$/';
const number = { expected: 'number' };
const span = (least: number, most: number) => ({ least, most });
const founded = { status: 'assumption', reason: 'a test' };
const rows12 = [{ repetitions: 1, share: 1 }];
const own = (given: object) => [{ ...movementOf('own', 'squat'), ...given }];
const roles = [...roleIds];

// The default method with one fault each in how it fills strength sessions; its stages are first steps, heavier, explosive,
// upkeep and general.
const rows: Readonly<Record<string, readonly Row[]>> = {
  fields: [
    ['equipment', 'band', 'wrong-type', { expected: 'list' }],
    ['equipment', undefined, 'missing'],
    ['equipment[0]', 'sandbag', 'not-one-of', { choices: [...equipmentIds] }],
    ['equipment', [...equipmentIds, 'band'], 'too-long', { most: 3 }, 'list of 4'],
    ['colour', 'red', 'unknown-field'],
    ['time.colour', 'red', 'unknown-field'],
    ['dose.status', 'proven', 'not-one-of', { choices: ['published', 'common practice', 'assumption'] }],
    ['progress.reason', undefined, 'missing'],
  ],
  stages: [
    ['stages', [], 'missing', {}, 'list of 0'],
    ['stages[1].id', 'first-steps', 'duplicate'],
    ['stages[1].id', 'First steps', 'wrong-pattern', { pattern: idPattern }],
    ['stages[1].phases[0]', 'summer', 'not-one-of', { choices: [...phaseIds] }],
    ['stages[1].phases', [], 'missing', {}, 'list of 0'],
    ['stages[0].levels[0]', 'old', 'not-one-of', { choices: [...levelIds] }],
    // Without phases and levels none after it would ever be used; the last is for everybody else.
    ['stages[1].phases', undefined, 'missing', {}, null],
    ['stages[4].phases', ['base'], 'unknown-field', {}, 'phases'],
    ['stages[4].levels', ['elite'], 'unknown-field', {}, 'levels'],
    ['stages[1].grade', 0, 'out-of-range', { least: 1 }],
    ['stages[1].grade', 6, 'out-of-range', { most: 5 }],
    ['stages[1].grade', 2.5, 'not-a-step', { step: 1 }],
    ['stages[1].pairs', 'yes', 'wrong-type', { expected: 'true or false' }],
  ],
  doses: [
    ['stages[1].doses.main', undefined, 'missing'],
    ['stages[1].doses.arms', null, 'unknown-field'],
    ['stages[1].doses.main.sets', span(3, 2), 'wrong-order', { before: 'least', after: 'most' }, 2],
    ['stages[1].doses.main.sets.least', 0, 'out-of-range', { least: 1 }],
    ['stages[1].doses.main.sets.most', 11, 'out-of-range', { most: 10 }],
    ['stages[1].doses.main.repetitions', 0, 'out-of-range', { least: 1 }],
    ['stages[1].doses.main.repetitions', 51, 'out-of-range', { most: 50 }],
    ['stages[1].doses.main.in_hand', -1, 'out-of-range', { least: 0 }],
    ['stages[1].doses.main.in_hand', 11, 'out-of-range', { most: 10 }],
    ['stages[1].doses.main.seconds', 301, 'out-of-range', { most: 300 }],
    ['stages[1].doses.main.rest', 601, 'out-of-range', { most: 600 }],
    ['stages[1].doses.main.rest', '90', 'wrong-type', number],
    ['stages[1].doses.main.effort', 10.1, 'out-of-range', { most: 10 }],
  ],
  'patterns and order': [
    ['patterns', [], 'wrong-count', { expected: 10, count: 0 }, 'list of 0'],
    ['patterns[1].id', 'squat', 'duplicate'],
    ['patterns[1].id', 'curl', 'not-one-of', { choices: [...patternIds] }],
    ['patterns[1].role', 'extra', 'not-one-of', { choices: [...roleIds] }],
    ['patterns[1].area', 'arms', 'not-one-of', { choices: ['legs', 'calves', 'hips', 'trunk', 'upper'] }],
    ['sessions', [], 'missing', {}, 'list of 0'],
    ['sessions[0]', [], 'missing', {}, 'list of 0'],
    ['sessions[0][1]', 'curl', 'not-one-of', { choices: [...patternIds] }],
    ['sessions[0][1]', 'squat', 'duplicate'],
    ['order', roles.slice(1), 'wrong-count', { expected: 4, count: 3 }, 'list of 3'],
    ['order[1]', 'jump', 'duplicate'],
  ],
  'time and loads': [
    ['time.warm_up.minutes', 61, 'out-of-range', { most: 60 }],
    ['time.warm_up.most_share', 0.41, 'out-of-range', { most: 0.4 }],
    ['time.cool_down.minutes', 2.5, 'not-a-step', { step: 1 }],
    ['time.seconds_a_repetition', 0.4, 'out-of-range', { least: 0.5 }],
    ['time.seconds_a_repetition', 31, 'out-of-range', { most: 30 }],
    ['time.change_over', -1, 'out-of-range', { least: 0 }],
    ['time.between', 601, 'out-of-range', { most: 600 }],
    ['spared.days_before', 4, 'out-of-range', { most: 3 }],
    ['maximum.most_repetitions', 0, 'out-of-range', { least: 1 }],
    ['maximum.most_repetitions', 21, 'out-of-range', { most: 20 }],
    ['maximum.table', [], 'missing', {}, 'list of 0'],
    ['maximum.table[1].share', 1.01, 'out-of-range', { most: 1 }],
    ['maximum.table[1].repetitions', 1, 'wrong-order', { before: '[0].repetitions', after: '[1].repetitions' }],
    // The second row may have as much as the first, and no more.
    ['maximum.table[2].share', 0.96, 'wrong-order', { before: '[2].share', after: '[1].share' }],
    ['maximum.step', 0, 'out-of-range', { least: 0.1 }],
    ['progress.least', 0.2, 'wrong-order', { before: 'least', after: 'most' }, 0.1],
    ['progress.most', 0.51, 'out-of-range', { most: 0.5 }],
    ['dose.sessions.usual', 4, 'wrong-order', { before: 'usual', after: 'most' }, 3],
    ['dose.main.least', 5, 'wrong-order', { before: 'least', after: 'most' }, 4],
    ['dose.landings', -1, 'out-of-range', { least: 0 }],
  ],
};

/** Where the order of two fields is wrong, the later one is at fault. */
const faultyPath = (path: string): string =>
  ({
    'stages[1].doses.main.sets': 'stages[1].doses.main.sets.most',
    'progress.least': 'progress.most',
    'dose.sessions.usual': 'dose.sessions.most',
    'dose.main.least': 'dose.main.most',
  })[path] ?? path;

describe.each(Object.entries(rows))('%s', (_, faults) => {
  test.each(faults.map((row) => [`${row[0]} = ${inShort(row[1])}`, ...row] as const))(
    '%s',
    (__, path, value, code, allowed = {}, given = value) => {
      const place = code === 'wrong-order' ? faultyPath(path) : path;
      expect(at(path, value)).toEqual([{ path: `strength.${place}`, value: given, code, allowed }]);
    },
  );
});

describe('a coach’s own movements', () => {
  const wrongType = { code: 'wrong-type', allowed: { expected: 'true or false' } };
  test.each([
    { given: { id: 'Own movement' }, code: 'wrong-pattern', allowed: { pattern: idPattern } },
    { given: { pattern: 'curl' }, code: 'not-one-of', allowed: { choices: [...patternIds] } },
    { given: { grade: 6 }, code: 'out-of-range', allowed: { most: 5 } },
    { given: { held: 1 }, ...wrongType },
    { given: { each_side: null }, ...wrongType },
    { given: { colour: 'red' }, code: 'unknown-field', allowed: {} },
  ])('with $given are refused', ({ given, code, allowed }) => {
    const [[field, value] = ['']] = Object.entries<unknown>(given);
    expect(at('movements', own(given))).toEqual([{ path: `strength.movements[0].${field}`, value, code, allowed }]);
  });

  test('with equipment that is none are refused', () => {
    expect(at('movements', own({ equipment: ['rope'] }))).toEqual([
      {
        ...{ path: 'strength.movements[0].equipment[0]', value: 'rope' },
        ...{ code: 'not-one-of', allowed: { choices: [...equipmentIds] } },
      },
    ]);
  });

  test('with one id twice are refused', () => {
    expect(at('movements', [movementOf('own', 'squat'), movementOf('own', 'pull')])).toEqual([
      { path: 'strength.movements[1].id', value: 'own', code: 'duplicate', allowed: {} },
    ]);
  });

  test('with words of her own and cautions are fine', () => {
    expect(at('movements', own({ cautions: ['Mind the knee.', { key: 'movement-caution.no-pain' }] }))).toEqual([]);
  });
});

describe('what is at the limits', () => {
  test.each([
    ['stages[1].doses.main.sets', span(1, 10)],
    ['stages[1].doses.main.sets', span(10, 10)],
    ['stages[1].doses.jump', null],
    ['stages[1].doses.main.in_hand', null],
    ['time.warm_up', { minutes: 0, most_share: 0 }],
    ['time.warm_up', { minutes: 60, most_share: 0.4 }],
    ['maximum.table', rows12],
    ['maximum.table[2].share', 0.95],
    ['progress', { least: 0.1, most: 0.1, ...founded }],
    ['dose.sessions', { usual: 3, most: 3 }],
    ['spared', { days_before: 0, ...founded }],
    ['equipment', []],
    ['sessions', [['squat']]],
  ])('%s = %j is fine', (path, value) => {
    expect(at(path, value)).toEqual([]);
  });

  test('a single stage is for everybody', () => {
    const { strength } = valueOf(readMethod(documentWith('id', 'one-stage')));
    expect(at('stages', strength?.stages.slice(-1))).toEqual([]);
  });

  test('a method needs no strength of its own', () => {
    expect(valueOf(readMethod(documentWith('strength', undefined))).strength).toBeUndefined();
  });
});
