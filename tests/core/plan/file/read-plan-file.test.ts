import { describe, expect, test } from 'vitest';
import { readPlanFile } from '../../../../src/plan/file/read-plan-file.js';
import { writePlanFile } from '../../../../src/plan/file/write-plan-file.js';
import type { Problem } from '../../../../src/problem.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { inShort } from '../../in-short.js';
import { methods } from '../../exchange/random-sheets.js';
import { wholeDocument } from '../sheet-documents.js';
import { fileOf, problemsIn, smallestFile, wholeFile } from './file-documents.js';

const session = { date: '2026-11-23', category: 'slow', minutes: 45, effort: 3 };
const record = (changes: object): object => ({ record: [{ ...session, ...changes }] });
const dates = { least: '1900-01-01', most: '2199-12-31' };
const kinds = { choices: ['slow', 'tempo', 'intervals', 'cross', 'strength'] };

describe('a plan file', () => {
  test('may be of the sheet alone: what is not told is empty', () => {
    const { sheet, ...rest } = fileOf(smallestFile());
    expect(sheet.scenarios).toHaveLength(1);
    expect(rest).toStrictEqual({
      ...{ name: '', onShow: 'scenario-1', running: null, strength: null, checks: null, record: [] },
      handout: { runner: '', contact: '', note: '' },
    });
  });

  test('may say that nothing is told', () => {
    const nothing = { running: null, strength: null, checks: null, record: [], handout: {}, name: '' };
    expect(fileOf({ ...smallestFile(), ...nothing })).toStrictEqual(fileOf(smallestFile()));
  });

  test('may leave out how hard a session felt', () => {
    const { record: sessions } = fileOf({ ...smallestFile(), ...record({ effort: undefined }) });
    expect(sessions).toStrictEqual([{ ...session, effort: null }]);
  });

  test('has its record in the order of the dates, whatever order it came in', () => {
    const later = { ...session, date: '2026-11-25' };
    const other = { ...session, category: 'cross' };
    const { record: sessions } = fileOf({ ...smallestFile(), record: [later, session, other] });
    expect(sessions).toStrictEqual([session, other, later]);
  });

  test('shows the reference where it does not say what it shows', () => {
    const { onShow: _, ...file } = wholeFile();
    expect(fileOf(file).onShow).toBe('b');
    expect(fileOf(wholeFile()).onShow).toBe('a');
  });

  test('is the same when it is written and read again, as deep as it goes', () => {
    const file = fileOf(wholeFile());
    expect(fileOf(JSON.parse(JSON.stringify(writePlanFile(file))))).toStrictEqual(file);
  });
});

describe('a sheet alone, as links of the first version have it,', () => {
  test('is a file', () => {
    expect(fileOf(wholeDocument())).toStrictEqual(fileOf({ ...smallestFile(), sheet: wholeDocument() }));
    expect(fileOf(wholeDocument()).onShow).toBe('b');
  });

  test.each<readonly [object, string, Problem['code']]>([
    [{ reference: 'c' }, 'reference', 'unknown-name'],
    [{ scenarios: [{ id: 'b', inputs: { hours: 100 } }] }, 'scenarios[0].inputs.hours', 'out-of-range'],
    [{ colour: 'red' }, 'colour', 'unknown-field'],
    [{ method: 'other' }, 'method', 'other-method'],
    [{ version: 2, colour: 'red' }, 'version', 'newer-version'],
  ])('has its faults told where it has them: %j', (changes, path, code) => {
    expect(problemsIn({ ...wholeDocument(), ...changes })).toMatchObject([{ path, code }]);
  });
});

describe('a file of a later version', () => {
  test.each([2, 3, 1e9])('says that it is one, and nothing else: %d', (version) => {
    const problem = { path: 'version', value: version, code: 'newer-version', allowed: { most: 1 } };
    expect(problemsIn({ ...wholeFile(), version, colour: 'red', sheet: 5 })).toEqual([problem]);
    expect(problemsIn({ format: 'weekwright-file', version })).toEqual([problem]);
  });

  test('says so too of its sheet', () => {
    const sheet = { ...wholeDocument(), version: 2, colour: 'red' };
    expect(problemsIn({ ...wholeFile(), sheet })).toEqual([
      { path: 'sheet.version', value: 2, code: 'newer-version', allowed: { most: 1 } },
    ]);
  });

  test.each([0, -1, 1.5, '2', null, [2]])('is none whose version is no later number: %j', (version) => {
    const problems = problemsIn({ ...wholeFile(), version });
    expect(problems).toMatchObject([{ path: 'version' }]);
    expect(problems[0]?.code).not.toBe('newer-version');
  });
});

type Row = readonly [changes: object, path: string, value: unknown, code: Problem['code'], allowed?: object];

const type = (expected: string) => ['wrong-type', { expected }] as const;

const rows: Readonly<Record<string, readonly Row[]>> = {
  'the file': [
    [{ format: 'weekwright-plan' }, 'format', 'weekwright-plan', 'not-one-of', { choices: ['weekwright-file'] }],
    [{ format: undefined }, 'format', undefined, 'missing'],
    [{ version: undefined }, 'version', undefined, 'missing'],
    [{ version: 0 }, 'version', 0, 'out-of-range', { least: 1, most: 1 }],
    [{ version: '1' }, 'version', '1', ...type('number')],
    [{ sheet: undefined }, 'sheet', undefined, 'missing'],
    [{ name: 5 }, 'name', 5, ...type('text')],
    [{ name: null }, 'name', null, ...type('text')],
    [{ name: 'x'.repeat(61) }, 'name', 'x'.repeat(40), 'too-long', { most: 60 }],
    [{ onShow: 1 }, 'onShow', 1, ...type('text')],
    [{ onShow: 'c' }, 'onShow', 'c', 'not-one-of', { choices: ['a', 'b'] }],
    [{ colour: 'red' }, 'colour', 'red', 'unknown-field'],
  ],
  'the sheet': [
    [{ sheet: 5 }, 'sheet', 5, ...type('object')],
    [{ sheet: null }, 'sheet', null, ...type('object')],
    [{ sheet: [] }, 'sheet', 'list of 0', ...type('object')],
    [{ sheet: { ...wholeDocument(), colour: 'red' } }, 'sheet.colour', 'red', 'unknown-field'],
    [
      { sheet: { ...wholeDocument(), method: 'club' } },
      'sheet.method',
      'club',
      'other-method',
      { method: 'weekwright' },
    ],
  ],
  'what is told': [
    [{ running: 5 }, 'running', 5, ...type('object')],
    [{ running: [] }, 'running', 'list of 0', ...type('object')],
    [{ strength: 'much' }, 'strength', 'much', ...type('object')],
    [{ checks: true }, 'checks', true, ...type('object')],
    [{ running: { age: 4 } }, 'running.age', 4, 'out-of-range', { least: 5, most: 110 }],
    [{ strength: { minutes: 4 } }, 'strength.minutes', 4, 'out-of-range', { least: 5, most: 180 }],
    [{ checks: { weeks: [[1, 2]] } }, 'checks.weeks[0]', 2, 'wrong-count', { expected: 'days-or-week', count: 2 }],
  ],
  'the record': [
    [{ record: {} }, 'record', 'object', ...type('list')],
    [{ record: null }, 'record', null, ...type('list')],
    [{ record: Array(5001).fill(5) }, 'record', 'list of 5001', 'too-long', { most: 5000 }],
    [{ record: [5] }, 'record[0]', 5, ...type('object')],
    [record({ date: undefined }), 'record[0].date', undefined, 'missing'],
    [record({ date: 20261123 }), 'record[0].date', 20261123, ...type('text')],
    [record({ date: '2026-02-29' }), 'record[0].date', '2026-02-29', 'no-date', dates],
    [record({ date: '1899-12-31' }), 'record[0].date', '1899-12-31', 'no-date', dates],
    [{ record: [session, { ...session, date: '' }] }, 'record[1].date', '', 'no-date', dates],
    [{ record: [{ ...session, date: 'z' }, session] }, 'record[0].date', 'z', 'no-date', dates],
    [record({ category: 'walk' }), 'record[0].category', 'walk', 'not-one-of', kinds],
    [record({ minutes: 0 }), 'record[0].minutes', 0, 'out-of-range', { least: 1, most: 1440 }],
    [record({ minutes: 1441 }), 'record[0].minutes', 1441, 'out-of-range', { least: 1, most: 1440 }],
    [record({ minutes: 30.5 }), 'record[0].minutes', 30.5, 'not-a-step', { step: 1 }],
    [record({ effort: 11 }), 'record[0].effort', 11, 'out-of-range', { least: 0, most: 10 }],
    [record({ effort: -1 }), 'record[0].effort', -1, 'out-of-range', { least: 0, most: 10 }],
    [record({ effort: 'hard' }), 'record[0].effort', 'hard', ...type('number')],
    [record({ where: 'park' }), 'record[0].where', 'park', 'unknown-field'],
  ],
  'a handout': [
    [{ handout: null }, 'handout', null, ...type('object')],
    [{ handout: 'hello' }, 'handout', 'hello', ...type('object')],
    [{ handout: { runner: 'x'.repeat(61) } }, 'handout.runner', 'x'.repeat(40), 'too-long', { most: 60 }],
    [{ handout: { contact: 'x'.repeat(201) } }, 'handout.contact', 'x'.repeat(40), 'too-long', { most: 200 }],
    [{ handout: { note: 'x'.repeat(1001) } }, 'handout.note', 'x'.repeat(40), 'too-long', { most: 1000 }],
    [{ handout: { note: 5 } }, 'handout.note', 5, ...type('text')],
    [{ handout: { title: '' } }, 'handout.title', '', 'unknown-field'],
  ],
};

describe.each(Object.entries(rows))('%s', (_, faults) => {
  test.each(faults.map((row) => [inShort(row[0]), ...row] as const))(
    '%s',
    (__, changes, path, value, code, allowed = {}) => {
      expect(problemsIn({ ...wholeFile(), ...changes })).toEqual([{ path, value, code, allowed }]);
    },
  );
});

describe('what is at the limits is read:', () => {
  test.each([
    { name: 'x'.repeat(60) },
    // Each of these is two units to JavaScript, and one character to a reader and to JSON Schema.
    { name: '🏃'.repeat(60) },
    { handout: { runner: '🏃'.repeat(60), contact: '🏃'.repeat(200), note: '🏃'.repeat(1000) } },
    { handout: { runner: 'x'.repeat(60), contact: 'x'.repeat(200), note: 'x'.repeat(1000) } },
    record({ minutes: 1, effort: 0 }),
    record({ minutes: 1440, effort: 10 }),
    record({ effort: 3.5 }),
    record({ effort: null }),
    record({ date: '1900-01-01' }),
    record({ date: '2199-12-31' }),
    { record: Array(5000).fill(session) },
  ])('%j', (changes) => {
    expect(problemsIn({ ...wholeFile(), ...changes })).toEqual([]);
  });
});

test('the faults of all parts are told at once, after those of the file itself', () => {
  const faulty = {
    ...{ sheet: { ...wholeDocument(), reference: 'c' }, running: { age: 4 }, strength: { age: 4 }, checks: { age: 4 } },
    record: [{ ...session, date: '' }],
  };
  const paths = (changes: object): string[] => problemsIn({ ...wholeFile(), ...changes }).map(({ path }) => path);
  expect(paths(faulty)).toEqual(['sheet.reference', 'running.age', 'strength.age', 'checks.age', 'record[0].date']);
  expect(paths({ ...faulty, colour: 'red', name: 5 })).toEqual(['name', 'colour']);
});

test('a file of another method is refused, whatever it tells', () => {
  const [, club] = methods;
  const outcome = readPlanFile(smallestFile(), club);
  expect(outcome).toMatchObject({ ok: false, problems: [{ path: 'sheet.method', code: 'other-method' }] });
  expect(
    readPlanFile({ ...smallestFile(), sheet: { ...wholeDocument(), method: club.id, rulesOff: [] } }, builtInMethod),
  ).toMatchObject({ ok: false });
});

describe('answers to the questions before the start', () => {
  test.each([[['symptoms']], [[]], [null], ['symptoms'], [{}]])('are never read, not even empty: %j', (answers) => {
    const problems = problemsIn({ ...wholeFile(), checks: { age: 41, answers } });
    expect(problems.map(({ path }) => path)).toContain('checks.answers');
    // Nor are they shown again.
    expect(JSON.stringify(problems.filter(({ code }) => code === 'unknown-field'))).not.toContain('symptoms');
  });

  test('are no field by any other way', () => {
    const hidden: unknown = JSON.parse('{ "age": 41, "__proto__": { "answers": ["symptoms"] } }');
    expect(problemsIn({ ...wholeFile(), checks: hidden })).toMatchObject([
      { path: 'checks.__proto__', code: 'unknown-field' },
    ]);
  });
});
