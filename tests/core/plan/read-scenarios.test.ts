import { describe, expect, test } from 'vitest';
import { readScenarios } from '../../../src/plan/scenarios/read-scenarios.js';
import type { Problem } from '../../../src/problem.js';
import { quantityIds } from '../../../src/sheet/sheet.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { expandMethod } from '../../../src/training/method/expand.js';
import { eventIds, levelIds, phaseIds } from '../../../src/training/method/ids.js';
import { inShort } from '../in-short.js';
import { valueOf } from '../training/method/documents.js';
import { documentWith, problemsOf, wholeDocument } from './sheet-documents.js';

const model = expandMethod(builtInMethod);
const rules = builtInMethod.rules.map(({ id }) => id);
const ofWeek = [
  ...['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'].map((day) => `${day}_minutes`),
  'week_cost',
];
const quantities = [...quantityIds(model), ...ofWeek, 'own_ratio'];
const withFormula = model.formulas.map(({ id }) => id);

type Path = readonly (string | number)[];
type Row = readonly [where: Path, given: unknown, path: string, value: unknown, ...Fault];
type Fault = readonly [code: Problem['code'], allowed: Problem['allowed']];

const first = (...path: Path): Path => ['scenarios', 0, ...path];
const missing: Fault = ['missing', {}];
const unknownField: Fault = ['unknown-field', {}];
const duplicate: Fault = ['duplicate', {}];
const expected = (kind: string): Fault => ['wrong-type', { expected: kind }];
const oneOf = (choices: readonly string[]): Fault => ['not-one-of', { choices }];
const named = (names: readonly string[]): Fault => ['unknown-name', { names }];
const name = String(/^[a-z][a-z0-9_]{0,39}$/);
const id = String(/^[A-Za-z0-9_-]{1,40}$/);
const noDate: Fault = ['no-date', { least: '1900-01-01', most: '2199-12-31' }];
const tooManyHours: Fault = ['out-of-range', { least: 0, most: 20 }];
const row = { id: 'own_more', name: '', formula: '1' };
const records: readonly [Path, string][] = [
  [['formulas'], 'formulas'],
  [first('overrides'), 'scenarios[0].overrides'],
];

describe('a sheet document with one fault has one problem:', () => {
  const rows: readonly Row[] = [
    [['format'], undefined, 'format', undefined, ...missing],
    [['format'], 'weekwright-plan', 'format', 'weekwright-plan', ...oneOf(['weekwright-sheet'])],
    [['version'], undefined, 'version', undefined, ...missing],
    [['version'], 0, 'version', 0, ...oneOf(['1'])],
    [['version'], 1.5, 'version', 1.5, ...oneOf(['1'])],
    [['version'], '1', 'version', '1', ...oneOf(['1'])],
    [['version'], 2, 'version', 2, 'newer-version', { most: 1 }],
    [['method'], undefined, 'method', undefined, ...missing],
    [['method'], 1, 'method', 1, ...expected('text')],
    [['method'], 'thursday', 'method', 'thursday', 'other-method', { method: 'weekwright' }],
    [['method'], 'x'.repeat(41), 'method', 'x'.repeat(41), 'too-long', { most: 40 }],
    [['colour'], 'red', 'colour', 'red', ...unknownField],
    [['__proto__'], { hours: 5 }, '__proto__', 'object', ...unknownField],
    [['constructor'], 1, 'constructor', 1, ...unknownField],
    [['toString'], 1, 'toString', 1, ...unknownField],

    [['formulas'], [], 'formulas', 'list of 0', ...expected('object')],
    [['formulas'], null, 'formulas', null, ...expected('object')],
    [['formulas', 'slow_minutes'], 90, 'formulas.slow_minutes', 90, ...expected('text')],
    [['formulas', 'slow_minuts'], '90', 'formulas.slow_minuts', 'slow_minuts', ...named(withFormula)],
    [['formulas', 'weekly_hours'], '5', 'formulas.weekly_hours', 'weekly_hours', ...named(withFormula)],
    [['formulas', 'slow_rounded'], '5', 'formulas.slow_rounded', 'slow_rounded', ...named(withFormula)],
    [['formulas', 'slow_typical'], '5', 'formulas.slow_typical', 'slow_typical', ...named(withFormula)],
    [['formulas', 'own_ratio'], '5', 'formulas.own_ratio', 'own_ratio', ...named(withFormula)],

    [['rows'], {}, 'rows', 'object', ...expected('list')],
    [['rows', 1], 'x', 'rows[1]', 'x', ...expected('object')],
    [['rows', 1], [], 'rows[1]', 'list of 0', ...expected('object')],
    [['rows', 1], { id: 'own_more' }, 'rows[1].formula', undefined, ...missing],
    [['rows', 1], { formula: '1' }, 'rows[1].id', undefined, ...missing],
    [['rows', 1], { ...row, note: 1 }, 'rows[1].note', 1, ...unknownField],
    [['rows', 1], { ...row, name: 1 }, 'rows[1].name', 1, ...expected('text')],
    [['rows', 1], { ...row, formula: 1 }, 'rows[1].formula', 1, ...expected('text')],
    [['rows', 1], { ...row, id: 'Own' }, 'rows[1].id', 'Own', 'wrong-pattern', { pattern: name }],
    [['rows', 1], { ...row, id: 'value' }, 'rows[1].id', 'value', ...duplicate],
    [['rows', 1], { ...row, id: 'min' }, 'rows[1].id', 'min', ...duplicate],
    [['rows', 1], { ...row, id: 'own_ratio' }, 'rows[1].id', 'own_ratio', ...duplicate],
    [['rows', 1], { ...row, id: 'slow_minutes' }, 'rows[1].id', 'slow_minutes', ...duplicate],
    [
      ['rows'],
      [
        { ...row, id: 'slow_minutes' },
        { ...row, id: 'own_ratio' },
      ],
      'rows[0].id',
      'slow_minutes',
      ...duplicate,
    ],
    [['rows', 1], { ...row, id: 'weekly_hours' }, 'rows[1].id', 'weekly_hours', ...duplicate],
    [['rows', 1], { ...row, id: 'slow_rounded' }, 'rows[1].id', 'slow_rounded', ...duplicate],
    [['rows', 1], { ...row, id: 'phase_base' }, 'rows[1].id', 'phase_base', ...duplicate],
    ...ofWeek.map((taken): Row => [['rows', 1], { ...row, id: taken }, 'rows[1].id', taken, ...duplicate]),
    [['rows', 1], { ...row, id: 'constructor' }, 'rows[1].id', 'constructor', ...duplicate],

    [['rulesOff'], 'few-hours', 'rulesOff', 'few-hours', ...expected('list')],
    [['rulesOff', 0], null, 'rulesOff[0]', null, ...expected('text')],
    [['rulesOff', 0], 'no-rule', 'rulesOff[0]', 'no-rule', ...named(rules)],
    [['rulesOff', 1], 'few-hours', 'rulesOff[1]', 'few-hours', ...duplicate],

    [['scenarios'], undefined, 'scenarios', undefined, ...missing],
    [['scenarios'], {}, 'scenarios', 'object', ...expected('list')],
    [['scenarios'], [], 'scenarios', 'list of 0', ...missing],
    [first(), 'a', 'scenarios[0]', 'a', ...expected('object')],
    [first(), [], 'scenarios[0]', 'list of 0', ...expected('object')],
    [first('note'), 1, 'scenarios[0].note', 1, ...unknownField],
    [first('__proto__'), { id: 'c' }, 'scenarios[0].__proto__', 'object', ...unknownField],
    [first('id'), '', 'scenarios[0].id', '', 'wrong-pattern', { pattern: id }],
    [first('id'), 'a b', 'scenarios[0].id', 'a b', 'wrong-pattern', { pattern: id }],
    [first('id'), 1, 'scenarios[0].id', 1, ...expected('text')],
    [first('id'), 'b', 'scenarios[1].id', 'b', ...duplicate],
    [first('name'), null, 'scenarios[0].name', null, ...expected('text')],

    [first('inputs'), [], 'scenarios[0].inputs', 'list of 0', ...expected('object')],
    [first('inputs', 'weeks'), 3, 'scenarios[0].inputs.weeks', 3, ...unknownField],
    [first('inputs', 'sessions'), {}, 'scenarios[0].inputs.sessions', 'object', ...unknownField],
    [first('inputs', 'hours'), '5', 'scenarios[0].inputs.hours', '5', ...expected('number')],
    [first('inputs', 'hours'), null, 'scenarios[0].inputs.hours', null, ...expected('number')],
    [first('inputs', 'hours'), 0.49, 'scenarios[0].inputs.hours', 0.49, 'out-of-range', { least: 0.5, most: 20 }],
    [first('inputs', 'hours'), 20.01, 'scenarios[0].inputs.hours', 20.01, 'out-of-range', { least: 0.5, most: 20 }],
    [
      first('inputs', 'strengthCap'),
      89,
      'scenarios[0].inputs.strengthCap',
      89,
      'out-of-range',
      { least: 90, most: 120 },
    ],
    [first('inputs', 'phase'), 'summer', 'scenarios[0].inputs.phase', 'summer', ...oneOf(phaseIds)],
    [first('inputs', 'level'), 'fast', 'scenarios[0].inputs.level', 'fast', ...oneOf(levelIds)],
    [first('inputs', 'event'), null, 'scenarios[0].inputs.event', null, ...oneOf(eventIds)],

    [first('sessions'), [], 'scenarios[0].sessions', 'list of 0', ...expected('object')],
    [first('sessions', 'yoga'), [30], 'scenarios[0].sessions.yoga', 'list of 1', ...unknownField],
    [first('sessions', 'slow'), 30, 'scenarios[0].sessions.slow', 30, ...expected('list')],
    [first('sessions', 'slow'), ['30'], 'scenarios[0].sessions.slow[0]', '30', ...expected('number')],
    [first('sessions', 'slow'), [30, 0], 'scenarios[0].sessions.slow[1]', 0, 'out-of-range', { least: 1 }],
    [first('sessions', 'slow'), [1441], 'scenarios[0].sessions.slow[0]', 1441, 'out-of-range', { most: 1440 }],
    [first('sessions', 'slow'), [30.5], 'scenarios[0].sessions.slow[0]', 30.5, 'not-a-step', { step: 1 }],

    [first('week'), [], 'scenarios[0].week', 'list of 0', ...expected('object')],
    [first('week'), 60, 'scenarios[0].week', 60, ...expected('object')],
    [first('week', 'days'), undefined, 'scenarios[0].week.days', undefined, ...missing],
    [first('week', 'days', 1), 1441, 'scenarios[0].week.days[1]', 1441, 'out-of-range', { most: 1440 }],
    [first('week', 'days', 1), '60', 'scenarios[0].week.days[1]', '60', ...expected('number')],
    [first('week', 'colour'), 'red', 'scenarios[0].week.colour', 'red', ...unknownField],
    [first('week', '__proto__'), { free: [] }, 'scenarios[0].week.__proto__', 'object', ...unknownField],
    [first('week', 'free', 1), 4, 'scenarios[0].week.free[1]', 4, ...duplicate],
    [first('week', 'done', 0, 'minutes'), 32, 'scenarios[0].week.done[0].minutes', 32, 'not-a-step', { step: 5 }],
    [first('week', 'done', 0, 'minutes'), 0, 'scenarios[0].week.done[0].minutes', 0, 'out-of-range', { least: 1 }],
    [first('week', 'sessions', 'slow'), [33], 'scenarios[0].week.sessions.slow[0]', 33, 'not-a-step', { step: 5 }],

    [first('season'), [], 'scenarios[0].season', 'list of 0', ...expected('object')],
    [first('season'), 16, 'scenarios[0].season', 16, ...expected('object')],
    [first('season', 'date'), '2027-02-30', 'scenarios[0].season.date', '2027-02-30', ...noDate],
    [first('season', 'weeks'), 15, 'scenarios[0].season.weeks', 15, 'not-one-of', { choices: [16] }],
    [
      first('season', 'mostHours'),
      0.25,
      'scenarios[0].season.mostHours',
      0.25,
      'out-of-range',
      { least: 0.5, most: 20 },
    ],
    [first('season', 'colour'), 'red', 'scenarios[0].season.colour', 'red', ...unknownField],
    [first('season', '__proto__'), { rise: 1 }, 'scenarios[0].season.__proto__', 'object', ...unknownField],
    [first('season', 'events', 0, 'event'), 'mile', 'scenarios[0].season.events[0].event', 'mile', ...oneOf(eventIds)],
    [first('season', 'byHand', 0, 'hours'), 21, 'scenarios[0].season.byHand[0].hours', 21, ...tooManyHours],

    [first('overrides'), [], 'scenarios[0].overrides', 'list of 0', ...expected('object')],
    [first('overrides', 'slow_minutes'), 90, 'scenarios[0].overrides.slow_minutes', 90, ...expected('text')],
    [first('overrides', 'own_rati'), '1', 'scenarios[0].overrides.own_rati', 'own_rati', ...named(quantities)],
    [first('overrides', 'phase_base'), '1', 'scenarios[0].overrides.phase_base', 'phase_base', ...named(quantities)],
    [first('rulesOff', 1), 'no-rule', 'scenarios[0].rulesOff[1]', 'no-rule', ...named(rules)],
    [first('rulesOff', 1), 'strength-cap', 'scenarios[0].rulesOff[1]', 'strength-cap', ...duplicate],

    [['reference'], 'c', 'reference', 'c', ...named(['a', 'b'])],
    [['reference'], 'toString', 'reference', 'toString', ...named(['a', 'b'])],
    [['reference'], 1, 'reference', 1, ...expected('text')],

    ...records.flatMap(([where, path]): Row[] => [
      [[...where, '__proto__'], '1', `${path}.__proto__`, '1', ...unknownField],
      [[...where, 'constructor'], '1', `${path}.constructor`, '1', ...unknownField],
      [[...where, 'prototype'], '1', `${path}.prototype`, '1', ...unknownField],
      [[...where, 'toString'], '1', `${path}.toString`, 'toString', 'wrong-pattern', { pattern: name }],
      [[...where, 'A1'], '1', `${path}.A1`, 'A1', 'wrong-pattern', { pattern: name }],
      [[...where, 'value'], '1', `${path}.value`, 'value', ...duplicate],
      [
        [...where, 'X'.repeat(99)],
        '1',
        `${path}.${'X'.repeat(60)}…`,
        'X'.repeat(99),
        'wrong-pattern',
        { pattern: name },
      ],
    ]),
  ];
  const titled = rows.map((each) => [`${each[0].join('.')} = ${inShort(each[1])}`, ...each] as const);
  test.each(titled)('%s', (_, where, given, path, value, code, allowed) => {
    expect(problemsOf(documentWith(where, given))).toEqual([{ path, value, code, allowed }]);
  });

  test.each([[null], [undefined], ['sheet'], [4], [true], [[]]])('%j', (document) => {
    expect(problemsOf(document)).toMatchObject([{ path: '', code: 'wrong-type', allowed: { expected: 'object' } }]);
  });
});

describe('a sheet document', () => {
  test('with several faults has a problem for each', () => {
    const document = documentWith(['scenarios', 1], { id: 'b', inputs: { hours: 99 }, overrides: { nowhere: '1' } });
    const paths = problemsOf({ ...document, reference: 'c', rulesOff: ['x'] }).map(({ path }) => path);
    const second = ['scenarios[1].inputs.hours', 'scenarios[1].overrides.nowhere'];
    expect([...paths].sort()).toEqual(['reference', 'rulesOff[0]', ...second]);
  });

  test('of a newer version or another method has no other problem', () => {
    expect(problemsOf({ ...wholeDocument(), version: 3, colour: 1, scenarios: 0 })).toHaveLength(1);
    expect(problemsOf({ ...wholeDocument(), method: 'x', reference: 'c' })).toHaveLength(1);
  });

  test('is read whole', () => {
    const { format: _, version: __, ...document } = wholeDocument();
    const inputs = { hours: 4, phase: 'build', level: 'developing', event: 'half-marathon', strengthCap: 120 };
    const second = { id: 'b', name: '', inputs, sessions: {}, week: null, season: null, overrides: {}, rulesOff: [] };
    expect(valueOf(readScenarios(wholeDocument(), builtInMethod))).toStrictEqual({
      ...document,
      method: builtInMethod,
      scenarios: [Reflect.get(Object(document['scenarios']), 0), second],
    });
  });

  test('is filled in where it leaves something out', () => {
    const least = { format: 'weekwright-sheet', version: 1, method: 'weekwright', scenarios: [{}, { name: 'B' }] };
    const sheet = valueOf(readScenarios(least, builtInMethod));
    expect(sheet).toMatchObject({ formulas: {}, rows: [], rulesOff: [], reference: 'scenario-1' });
    expect(sheet.scenarios.map(({ id }) => id)).toEqual(['scenario-1', 'scenario-2']);
  });

  test('is held against the ranges of the method in use', () => {
    const { inputs } = builtInMethod;
    const narrow = { ...builtInMethod, inputs: { ...inputs, weekly_hours: { ...inputs.weekly_hours, most: 4.5 } } };
    const outcome = readScenarios(wholeDocument(), narrow);
    expect(outcome).toMatchObject({ ok: false, problems: [{ path: 'scenarios[0].inputs.hours', value: 5 }] });
  });

  test('is not changed', () => {
    const document = wholeDocument();
    readScenarios(document, builtInMethod);
    expect(document).toStrictEqual(wholeDocument());
  });
});

describe('what is as large as it may be is read, and refused when it is larger:', () => {
  const many = <T>(count: number, make: (index: number) => T): T[] =>
    Array.from({ length: count }, (_, at) => make(at));
  const ownRows = (count: number) => many(count, (index) => ({ ...row, id: `own_${index}` }));
  const { overrides, mostRows, longest, sessions } = { overrides: 200, mostRows: 50, longest: 60, sessions: 100 };
  // The built-in method has fewer than 200 quantities: the edge is seen by which problem comes.
  const overSome = (count: number) => Object.fromEntries(many(count, (index) => [`q${index}`, '1']));

  test.each<[string, Path, (size: number) => unknown, number]>([
    ['scenarios', ['scenarios'], (size) => many(size, (index) => ({ id: 'ba'.repeat(index + 1).slice(1) })), 6],
    ['own rows', ['rows'], (size) => [{ ...row, id: 'own_ratio' }, ...ownRows(size - 1)], mostRows],
    ['the name of a scenario', first('name'), (size) => 'x'.repeat(size), longest],
    ['the name of a row', ['rows', 0, 'name'], (size) => 'x'.repeat(size), longest],
    ['the formula of a row', ['rows', 0, 'formula'], (size) => '1'.repeat(size), 2000],
    ['an edited formula', ['formulas', 'slow_minutes'], (size) => '1'.repeat(size), 2000],
    ['an override', first('overrides', 'slow_minutes'), (size) => '1'.repeat(size), 2000],
    ['the sessions of a category', first('sessions', 'slow'), (size) => many(size, () => 30), sessions],
  ])('%s', (_, where, make, most) => {
    const document = (size: number) => ({ ...documentWith(where, make(size)), reference: undefined });
    for (const size of [most - 1, most]) expect(problemsOf(document(size))).toEqual([]);
    expect(problemsOf(document(most + 1))).toMatchObject([{ code: 'too-long', allowed: { most } }]);
  });

  test.each(records)('formulas at %j', (where, path) => {
    const codes = (count: number) => new Set(problemsOf(documentWith(where, overSome(count))).map(({ code }) => code));
    for (const size of [overrides - 1, overrides]) expect([...codes(size)]).toEqual(['unknown-name']);
    const problems = problemsOf(documentWith(where, overSome(overrides + 1)));
    expect(problems).toEqual([{ path, value: 'object', code: 'too-long', allowed: { most: overrides } }]);
  });
});
