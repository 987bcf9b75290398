import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readChecks } from '../../../../src/plan/checks/read-checks.js';
import { planWeek, builtInPlanner } from '../../../../src/plan.js';
import { problemCodes, type Problem } from '../../../../src/problem.js';
import { answerIds } from '../../../../src/training/checks/screening.js';
import { runs } from '../../../reference/runs.js';
import { inShort } from '../../in-short.js';

const problemsOf = (given: unknown): readonly Problem[] => {
  const outcome = readChecks(given);
  return outcome.ok ? [] : outcome.problems;
};

type Fault = readonly [code: Problem['code'], allowed?: Problem['allowed']];
type Row = readonly [given: unknown, path: string, value: unknown, ...Fault];

const range = (least: number, most: number): Fault => ['out-of-range', { least, most }];
const type = (expected: string): Fault => ['wrong-type', { expected }];
const whole: Fault = ['not-a-step', { step: 1 }];
const unknown: Fault = ['unknown-field', {}];
const daysOrWeek = (count: number): Fault => ['wrong-count', { expected: 'days-or-week', count }];
const week = (load: unknown = 100, length = 7): unknown[] => Array.from({ length }, () => load);
/** As JSON has it, where __proto__ is a field. */
const parsed = (text: string): unknown => JSON.parse(text);
const deep = (levels: number): unknown => (levels === 0 ? [] : [deep(levels - 1)]);

const rows: Readonly<Record<string, readonly Row[]>> = {
  'the request': [
    ['yes', '', 'yes', ...type('object')],
    [[], '', 'list of 0', ...type('object')],
    [null, '', null, ...type('object')],
    [7, '', 7, ...type('object')],
    [{ colour: 'red' }, '.colour', 'red', ...unknown],
    [parsed('{ "__proto__": { "age": 40 } }'), '.__proto__', 'object', ...unknown],
    [{ constructor: 1 }, '.constructor', 1, ...unknown],
    [{ toString: 'x' }, '.toString', 'x', ...unknown],
    [{ advice: 'go' }, '.advice', 'go', ...unknown],
    [{ ['x'.repeat(500)]: 1 }, `.${'x'.repeat(60)}`, 1, ...unknown],
  ],
  age: [
    [{ age: 4 }, '.age', 4, ...range(5, 110)],
    [{ age: 111 }, '.age', 111, ...range(5, 110)],
    [{ age: 40.5 }, '.age', 40.5, ...whole],
    [{ age: '40' }, '.age', '40', ...type('number')],
    [{ age: NaN }, '.age', NaN, ...type('number')],
    [{ age: Infinity }, '.age', Infinity, ...range(5, 110)],
    [{ age: [40] }, '.age', 'list of 1', ...type('number')],
    [{ age: true }, '.age', true, ...type('number')],
  ],
  'hours before': [
    [{ hoursBefore: 0.24 }, '.hoursBefore', 0.24, ...range(0.25, 60)],
    [{ hoursBefore: 0 }, '.hoursBefore', 0, ...range(0.25, 60)],
    [{ hoursBefore: -3 }, '.hoursBefore', -3, ...range(0.25, 60)],
    [{ hoursBefore: 60.01 }, '.hoursBefore', 60.01, ...range(0.25, 60)],
    [{ hoursBefore: '4' }, '.hoursBefore', '4', ...type('number')],
    [{ hoursBefore: {} }, '.hoursBefore', 'object', ...type('number')],
  ],
  'the longest run': [
    [{ longestRun: 4.99 }, '.longestRun', 4.99, ...range(5, 1440)],
    [{ longestRun: 1440.1 }, '.longestRun', 1440.1, ...range(5, 1440)],
    [{ longestRun: 'far' }, '.longestRun', 'far', ...type('number')],
    [{ longestRun: -Infinity }, '.longestRun', -Infinity, ...range(5, 1440)],
  ],
  'own weeks': [
    [{ weeks: 700 }, '.weeks', 700, ...type('list')],
    [{ weeks: null }, '.weeks', null, ...type('list')],
    [{ weeks: {} }, '.weeks', 'object', ...type('list')],
    [{ weeks: [700] }, '.weeks[0]', 700, ...type('list')],
    [{ weeks: [[]] }, '.weeks[0]', 0, ...daysOrWeek(0)],
    [{ weeks: [week(), week(1, 2)] }, '.weeks[1]', 2, ...daysOrWeek(2)],
    [{ weeks: [week(1, 6)] }, '.weeks[0]', 6, ...daysOrWeek(6)],
    [{ weeks: [week(1, 8)] }, '.weeks[0]', 'list of 8', 'too-long', { most: 7 }],
    [{ weeks: Array.from({ length: 13 }, () => week()) }, '.weeks', 'list of 13', 'too-long', { most: 12 }],
    [{ weeks: [[-1]] }, '.weeks[0][0]', -1, ...range(0, 20_000)],
    [{ weeks: [[20_000.1]] }, '.weeks[0][0]', 20_000.1, ...range(0, 20_000)],
    [{ weeks: [week(), ['100']] }, '.weeks[1][0]', '100', ...type('number')],
    [{ weeks: [[NaN]] }, '.weeks[0][0]', NaN, ...type('number')],
    [{ weeks: [[null]] }, '.weeks[0][0]', null, ...type('number')],
    [{ weeks: [[undefined]] }, '.weeks[0][0]', undefined, ...type('number')],
    [{ weeks: deep(100) }, '.weeks[0][0]', 'list of 1', ...type('number')],
  ],
  efforts: [
    [{ efforts: 5 }, '.efforts', 5, ...type('object')],
    [{ efforts: null }, '.efforts', null, ...type('object')],
    [{ efforts: [5] }, '.efforts', 'list of 1', ...type('object')],
    [{ efforts: { slow: -0.1 } }, '.efforts.slow', -0.1, ...range(0, 10)],
    [{ efforts: { strength: 10.1 } }, '.efforts.strength', 10.1, ...range(0, 10)],
    [{ efforts: { tempo: null } }, '.efforts.tempo', null, ...type('number')],
    [{ efforts: { running: 5 } }, '.efforts.running', 5, ...unknown],
    [{ efforts: parsed('{ "__proto__": 5 }') }, '.efforts.__proto__', 5, ...unknown],
  ],
  answers: [
    [{ answers: 'symptoms' }, '.answers', 'symptoms', ...type('list')],
    [{ answers: null }, '.answers', null, ...type('list')],
    [{ answers: { symptoms: true } }, '.answers', 'object', ...type('list')],
    [{ answers: ['tired'] }, '.answers[0]', 'tired', 'not-one-of', { choices: answerIds }],
    [{ answers: ['symptoms', null] }, '.answers[1]', null, 'not-one-of', { choices: answerIds }],
    [{ answers: [['symptoms']] }, '.answers[0]', 'list of 1', 'not-one-of', { choices: answerIds }],
    [{ answers: [...answerIds, 'pain'] }, '.answers', 'list of 10', 'too-long', { most: 9 }],
  ],
};

describe.each(Object.entries(rows))('%s', (_, faults) => {
  test.each(faults.map((row) => [inShort(row[0]), ...row] as const))('%s', (__, given, path, value, code, allowed) => {
    expect(problemsOf(given)).toEqual([{ path: `checks${path}`, value, code, allowed }]);
  });
});

describe('what is at the limits', () => {
  test.each([
    { age: 5 },
    { age: 110 },
    { age: null },
    { hoursBefore: 0.25 },
    { hoursBefore: 60 },
    { hoursBefore: null },
    { longestRun: 5 },
    { longestRun: 1440 },
    { longestRun: null },
    { weeks: [] },
    { weeks: [[0]] },
    { weeks: [[20_000]] },
    { weeks: [week(0), week(20_000), [700]] },
    { weeks: Array.from({ length: 12 }, () => week()) },
    { efforts: {} },
    { efforts: { slow: 0, tempo: 10, intervals: 5.5, cross: 0, strength: 10 } },
  ])('%j is fine', (given) => {
    const outcome = readChecks(given);
    expect(outcome).toMatchObject({ ok: true, value: { wishes: given, answers: [] } });
  });

  test('are all answers, apart from what the plan is told', () => {
    const outcome = readChecks({ answers: answerIds });
    const wishes = { age: null, hoursBefore: null, longestRun: null, weeks: [], efforts: {} };
    expect(outcome).toEqual({ ok: true, value: { answers: answerIds, wishes } });
  });

  test('a field that is undefined is left out', () => {
    const given = { age: undefined, hoursBefore: undefined, weeks: undefined, efforts: { slow: undefined } };
    expect(readChecks(given)).toEqual(readChecks({}));
  });
});

test('every fault is told at once', () => {
  const paths = problemsOf({ age: 'old', weeks: [[-1]], answers: ['x'], hoursBefore: 0, more: 1 }).map(
    ({ path }) => path,
  );
  expect(paths).toEqual([
    ...['checks.age', 'checks.hoursBefore', 'checks.weeks[0][0]', 'checks.answers[0]', 'checks.more'],
  ]);
});

test('whatever is given, it is read or refused with problems that have a path', () => {
  const names = ['age', 'hoursBefore', 'longestRun', 'weeks', 'efforts', 'answers', '__proto__', 'toString'];
  const hostile = fc.oneof(
    fc.anything({ withNullPrototype: true, withSparseArray: true, withBigInt: true, withDate: true, withMap: true }),
    fc.dictionary(fc.constantFrom(...names), fc.anything()),
    fc.dictionary(fc.constantFrom(...names), fc.oneof(fc.double(), fc.array(fc.array(fc.double())))),
  );
  fc.assert(
    fc.property(hostile, (given) => {
      const outcome = readChecks(given);
      if (outcome.ok) return;
      expect(outcome.problems.length).toBeGreaterThan(0);
      for (const { path, code } of outcome.problems) {
        expect(path).toMatch(/^checks(?:\.|$)/);
        expect(problemCodes).toContain(code);
      }
    }),
    runs(1000, 100_000),
  );
});

describe('a week that has holes', () => {
  test('is no week of fewer days', () => {
    const holes: unknown[] = [];
    holes[6] = 700;
    expect(readChecks({ weeks: [holes] }).ok).toBe(false);
  });
});

describe('checks of a request', () => {
  test('are not made where nothing is told of them', () => {
    for (const checks of [undefined, null]) {
      const outcome = builtInPlanner().plan({ hours: 4, checks });
      expect(outcome).toMatchObject({ ok: true, value: { load: null, checks: [] } });
    }
  });

  test('are made where they are asked for, though nothing is told', () => {
    const outcome = planWeek({ hours: 4, checks: {} });
    expect(outcome.ok && outcome.value.checks.length).toBeGreaterThan(10);
  });

  test('that are faulty are no plan', () => {
    expect(planWeek({ hours: 4, checks: { age: 4 } })).toMatchObject({ ok: false, problems: [{ path: 'checks.age' }] });
  });
});
