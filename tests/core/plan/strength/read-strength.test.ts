import { describe, expect, test } from 'vitest';
import type { Problem } from '../../../../src/problem.js';
import { builtInStrength } from '../../../../src/training/method/built-in-strength.js';
import { equipmentIds, patternIds } from '../../../../src/training/method/strength-rules.js';
import { builtInMovements } from '../../../../src/training/strength/built-in-movements.js';
import { askStrength, strengthOf } from '../../../reference/strength/strength-door.js';
import { inShort } from '../../in-short.js';

const problemsOf = (given: unknown): readonly Problem[] => {
  const outcome = askStrength(given, { strength: [40] });
  return outcome.ok ? [] : outcome.problems;
};

type Fault = readonly [code: Problem['code'], allowed?: Problem['allowed'], given?: unknown];
type Row = readonly [given: unknown, path: string, value: unknown, ...Fault];

const range = (least: number, most: number): Fault => ['out-of-range', { least, most }];
const type = (expected: string, given?: unknown): Fault => ['wrong-type', { expected }, given];
const whole: Fault = ['not-a-step', { step: 1 }];
const choices = (list: readonly string[]): Fault => ['not-one-of', { choices: list }];
const set = (changes: object) => ({
  lifted: [{ movement: 'goblet-squat', kilograms: 20, repetitions: 8, ...changes }],
});
const many = (count: number) =>
  Array.from({ length: count }, () => ({ movement: 'goblet-squat', kilograms: 20, repetitions: 8 }));

const hinges = ['bridge', 'single-leg-bridge', 'dumbbell-hinge', 'barbell-deadlift'];
const loaded = [
  ...['goblet-squat', 'barbell-squat', 'dumbbell-hinge', 'barbell-deadlift', 'dumbbell-split-squat'],
  ...['raised-split-squat', 'dumbbell-calf-raise', 'dumbbell-press', 'dumbbell-row'],
];

const rows: Readonly<Record<string, readonly Row[]>> = {
  'the request': [
    ['yes', '', 'yes', ...type('object')],
    [[], '', 'list of 0', ...type('object')],
    [{ colour: 'red' }, '.colour', 'red', 'unknown-field', {}],
  ],
  equipment: [
    [{ equipment: 'band' }, '.equipment', 'band', ...type('list')],
    [{ equipment: null }, '.equipment', null, ...type('list')],
    [{ equipment: ['rope'] }, '.equipment[0]', 'rope', ...choices(equipmentIds)],
    [{ equipment: ['band', 'band'] }, '.equipment[1]', 'band', 'duplicate', {}],
    [{ equipment: ['band', 'band', 'band', 'band'] }, '.equipment', 'list of 4', 'too-long', { most: 3 }],
  ],
  minutes: [
    [{ minutes: 4 }, '.minutes', 4, ...range(5, 180)],
    [{ minutes: 181 }, '.minutes', 181, ...range(5, 180)],
    [{ minutes: 20.5 }, '.minutes', 20.5, ...whole],
    [{ minutes: '20' }, '.minutes', '20', ...type('number')],
    [{ minutes: NaN }, '.minutes', NaN, ...type('number')],
  ],
  age: [
    [{ age: 4 }, '.age', 4, ...range(5, 110)],
    [{ age: 111 }, '.age', 111, ...range(5, 110)],
    [{ age: 40.5 }, '.age', 40.5, ...whole],
  ],
  forms: [
    [{ forms: ['bridge'] }, '.forms', 'list of 1', ...type('object')],
    [{ forms: { curl: 'bridge' } }, '.forms.curl', 'bridge', 'unknown-field', {}],
    [{ forms: { hinge: 'squat' } }, '.forms.hinge', 'squat', ...choices(hinges)],
    [{ forms: { hinge: 'curl' } }, '.forms.hinge', 'curl', ...choices(hinges)],
    [{ forms: { hinge: null } }, '.forms.hinge', null, ...choices(hinges)],
  ],
  'sets that were lifted': [
    [{ lifted: {} }, '.lifted', 'object', ...type('list')],
    [{ lifted: [5] }, '.lifted[0]', 5, ...type('object')],
    [{ lifted: many(builtInMovements.length + 1) }, '.lifted', 'list of 36', 'too-long', { most: 35 }],
    [set({ movement: 'curl' }), '.lifted[0].movement', 'curl', ...choices(loaded)],
    // No weight is put on a plank.
    [set({ movement: 'plank' }), '.lifted[0].movement', 'plank', ...choices(loaded)],
    [set({ movement: undefined }), '.lifted[0].movement', undefined, 'missing', {}],
    [set({ kilograms: 0.9 }), '.lifted[0].kilograms', 0.9, ...range(1, 500)],
    [set({ kilograms: 500.5 }), '.lifted[0].kilograms', 500.5, ...range(1, 500)],
    [set({ kilograms: undefined }), '.lifted[0].kilograms', undefined, 'missing', {}],
    [set({ repetitions: 0 }), '.lifted[0].repetitions', 0, ...range(1, 10)],
    [set({ repetitions: 11 }), '.lifted[0].repetitions', 11, ...range(1, 10)],
    [set({ repetitions: 5.5 }), '.lifted[0].repetitions', 5.5, ...whole],
    [set({ rest: 90 }), '.lifted[0].rest', 90, 'unknown-field', {}],
    [{ lifted: many(2) }, '.lifted[1].movement', 'goblet-squat', 'duplicate', {}],
  ],
};

describe.each(Object.entries(rows))('%s', (_, faults) => {
  test.each(faults.map((row) => [inShort(row[0]), ...row] as const))('%s', (__, given, path, value, code, allowed) => {
    expect(problemsOf(given)).toEqual([{ path: `strength${path}`, value, code, allowed }]);
  });
});

describe('what a request leaves out', () => {
  test('is as the method has it, and nothing that nobody told', () => {
    expect(strengthOf({}, {}).wishes).toEqual({
      ...{ equipment: builtInStrength.equipment, minutes: null, forms: {}, lifted: [], age: null },
    });
    expect(builtInStrength.equipment).toEqual(['band', 'dumbbells']);
  });

  test('may be told to be unknown', () => {
    expect(strengthOf({ minutes: null, age: null }, {}).wishes).toMatchObject({ minutes: null, age: null });
  });
});

describe('what is at the limits', () => {
  test.each([
    { minutes: 5 },
    { minutes: 180 },
    { age: 5 },
    { age: 110 },
    { equipment: [] },
    { equipment: ['barbell', 'band', 'dumbbells'] },
    set({ kilograms: 1, repetitions: 1 }),
    set({ kilograms: 500, repetitions: 10 }),
    {
      forms: Object.fromEntries(
        patternIds.map((id) => [id, builtInMovements.find(({ pattern }) => pattern === id)?.id]),
      ),
    },
  ])('%j is fine', (given) => {
    expect(problemsOf(given)).toEqual([]);
    expect(strengthOf(given, {}).wishes).toMatchObject(given);
  });
});

test('every fault of a request is told at once', () => {
  const paths = problemsOf({ minutes: 4, age: 'old', lifted: [{}] }).map(({ path }) => path);
  expect(paths).toEqual([
    ...['strength.minutes', 'strength.lifted[0].movement', 'strength.lifted[0].kilograms'],
    ...['strength.lifted[0].repetitions', 'strength.age'],
  ]);
});
