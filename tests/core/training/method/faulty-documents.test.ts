import { describe, expect, test } from 'vitest';
import { createPlanner } from '../../../../src/plan.js';
import { problemCodes, type Problem, type ProblemCode } from '../../../../src/problem.js';
import { categoryIds, phaseIds, statusIds } from '../../../../src/training/method/ids.js';
import { seasonPhaseIds } from '../../../../src/training/method/season-rules.js';
import { inShort } from '../../in-short.js';
import { documentWith, problemsOf } from './documents.js';

type Allowed = Problem['allowed'];
type Row = readonly [path: string, value: unknown, code: ProblemCode, allowed?: Allowed, given?: unknown];

const namePattern = '/^[a-z][a-z0-9_]{0,39}$/';
const idPattern = '/^[a-z][a-z0-9-]{0,39}$/';
const namesWith = (...names: string[]): Allowed => ({ names: expect.arrayContaining(names) as unknown });
const formula = (code: string, position: number, found: string): Allowed => ({
  error: { code, position, found, values: {} },
});
const quantity = (id: string, text: string) => ({ id, name: 'mine', formula: text, status: 'assumption' });
const copies = (...ids: string[]) => ids.map((id) => quantity(id, '1'));
const long = (length: number): string => 'x'.repeat(length);

// The default method with one fault each. The problem is at the path of the fault and has the value given (a list or an
// object by its kind), unless the row says otherwise behind `allowed`.
const rows: Readonly<Record<string, readonly Row[]>> = {
  'what the document is': [
    ['format', undefined, 'missing'],
    ['format', 'plan', 'not-one-of', { choices: ['weekwright-method'] }],
    ['version', 2, 'not-one-of', { choices: ['1'] }],
    ['id', 'Thursday group', 'wrong-pattern', { pattern: idPattern }],
    ['name', undefined, 'missing'],
    ['name', '', 'missing'],
    ['name', 5, 'wrong-type', { expected: 'text' }],
    ['name', long(501), 'too-long', { most: 500 }],
  ],
  'fields that are none': [
    ['colour', 'red', 'unknown-field'],
    ['splits[0].shares.yoga', 0.1, 'unknown-field'],
    ['rules[2].value', '0', 'unknown-field'],
    ['name', { key: 'method.weekwright', language: 'en' }, 'unknown-field', {}, 'en'],
    ['__proto__', { polluted: true }, 'unknown-field', {}, 'object'],
    ['inputs.__proto__', 1, 'unknown-field'],
    ['rules[0].constructor', 1, 'unknown-field'],
    ['categories[0].toString', 1, 'unknown-field'],
  ],
  inputs: [
    ['inputs', undefined, 'missing'],
    ['inputs', 'many', 'wrong-type', { expected: 'object' }],
    ['inputs.weekly_hours.most', '20', 'wrong-type', { expected: 'number' }],
    ['inputs.weekly_hours.most', 1000, 'out-of-range', { most: 40 }],
    ['inputs.weekly_hours.most', Infinity, 'out-of-range', { most: 40 }],
    ['inputs.weekly_hours.step', 0, 'out-of-range', { least: 0.05 }],
    ['inputs.weekly_hours.start', 21, 'out-of-range', { least: 0.5, most: 20 }],
    ['inputs.strength_cap.most', 80, 'wrong-order', { before: 'least', after: 'most' }],
    ['inputs.season_phase.start', 'summer', 'not-one-of', { choices: phaseIds }],
    ['inputs.target_event.start', undefined, 'missing'],
  ],
  categories: [
    ['categories', null, 'wrong-type', { expected: 'list' }],
    ['categories', [], 'wrong-count', { expected: 5, count: 0 }, 'list of 0'],
    ['categories[1].id', 'yoga', 'not-one-of', { choices: categoryIds }],
    ['categories[1].id', 'slow', 'duplicate'],
    ['categories[0].effort', 11, 'out-of-range', { most: 10 }],
    ['categories[0].effort', '3', 'wrong-type', { expected: 'number' }],
    ['categories[0].session.longest', 40, 'wrong-order', { before: 'typical', after: 'longest' }],
    ['categories[0].session.shortest', 22, 'not-a-step', { step: 5 }],
    ['categories[0].session.typical', 42.5, 'not-a-step', { step: 1 }],
    ['categories[0].session.longest', 2000, 'out-of-range', { most: 1440 }],
  ],
  splits: [
    ['splits', [], 'missing', {}, 'list of 0'],
    [
      'splits[0].shares',
      { slow: 0.5, tempo: 0.5, intervals: 0, cross: 0, strength: 0.25 },
      'wrong-sum',
      { sum: 1.25, expected: 1 },
      1.25,
    ],
    ['splits[0].shares.slow', -0.1, 'out-of-range', { least: 0 }],
    ['splits[0].shares.slow', 1.5, 'out-of-range', { most: 1 }],
    ['splits[0].shares.slow', NaN, 'wrong-type', { expected: 'number' }],
    ['splits[0].shares.slow', undefined, 'missing'],
    ['splits[1].id', 'off_season', 'duplicate'],
    ['splits[1].id', 'min', 'duplicate'],
    ['splits[1].id', 'Taper', 'wrong-pattern', { pattern: namePattern }],
    ['splits[1].status', 'guess', 'not-one-of', { choices: statusIds }],
    ['splits[1].sources', 'C11', 'wrong-type', { expected: 'list' }],
    ['splits[1].sources[0]', long(41), 'too-long', { most: 40 }],
    ['splits[1].reason', undefined, 'missing'],
    // Without a condition it would be used always, and those after it never; the last must be used where no other is.
    ['splits[1].when', undefined, 'missing', {}, null],
    ['splits[3].when', 'weekly_hours > 3', 'unknown-field'],
  ],
  rounding: [
    ['tie_order', ['slow'], 'wrong-count', { expected: 5, count: 1 }, 'list of 1'],
    ['tie_order[1]', 'strength', 'duplicate'],
    ['tie_order[1]', 'yoga', 'not-one-of', { choices: categoryIds }],
    ['rounding.step', 2.5, 'not-a-step', { step: 1 }],
    ['rounding.step', 0, 'out-of-range', { least: 1 }],
    ['rounding.tolerance_share', 2, 'out-of-range', { most: 1 }],
    ['rounding.tolerance_minutes', -1, 'out-of-range', { least: 0 }],
  ],
  rules: [
    ['rules', {}, 'wrong-type', { expected: 'list' }, 'object'],
    ['rules[0]', null, 'wrong-type', { expected: 'object' }],
    ['rules[0].kind', 'wish', 'not-one-of', { choices: ['change', 'notice'] }],
    ['rules[0].kind', undefined, 'missing'],
    ['rules[1].id', 'strength-cap', 'duplicate'],
    ['rules[0].id', 'strength_cap', 'wrong-pattern', { pattern: idPattern }],
    ['rules[0].enabled', 'no', 'wrong-type', { expected: 'true or false' }],
    ['rules[2].level', 'alarm', 'not-one-of', { choices: ['note', 'caution'] }],
    ['rules[0].value', undefined, 'missing'],
    ['rules[0].on', 'nowhere', 'unknown-name', namesWith('strength_minutes')],
    // People set inputs and constants, and rounding is one computation: no rule acts on them.
    ['rules[0].on', 'weekly_hours', 'unknown-name', namesWith('strength_minutes')],
    ['rules[0].to', 'in_season_slow_share', 'unknown-name', namesWith('slow_minutes')],
    ['rules[0].to', 'slow_rounded', 'unknown-name', namesWith('slow_minutes')],
    ['rules[0].to', 'strength_minutes', 'duplicate'],
  ],
  season: [
    ['season', 'yes', 'wrong-type', { expected: 'object' }],
    ['season.weeks', 0, 'out-of-range', { least: 1 }],
    ['season.weeks', 105, 'out-of-range', { most: 104 }],
    ['season.phases', [], 'missing', {}, 'list of 0'],
    ['season.phases[0].phase', 'taper', 'not-one-of', { choices: seasonPhaseIds }],
    ['season.phases[0].least', 1.5, 'not-a-step', { step: 1 }],
    ['season.rises[0]', 'taper', 'not-one-of', { choices: seasonPhaseIds }],
    ['season.rise.share', 1.1, 'out-of-range', { most: 1 }],
    ['season.rise.most', 0.9, 'out-of-range', { least: 1 }],
    ['season.rise.reason', undefined, 'missing'],
    ['season.easier.every_weeks', 9, 'out-of-range', { most: 8 }],
    ['season.easier.drop', 0.96, 'out-of-range', { most: 0.95 }],
    ['season.taper.weeks', 4, 'out-of-range', { most: 3 }],
    ['season.taper.colour', 'red', 'unknown-field'],
    ['season.taper.status', 'guess', 'not-one-of', { choices: statusIds }],
    ['season.upkeep.from', 'build', 'not-one-of', { choices: ['never', 'taper', 'peak'] }],
    ['season.upkeep.sessions', 0, 'out-of-range', { least: 1 }],
    ['season.recovery.weeks', 9, 'out-of-range', { most: 8 }],
    ['season.way_back.steps[0].shares', [], 'missing', {}, 'list of 0'],
    ['season.way_back.steps[0].weeks', 0, 'out-of-range', { least: 1 }],
    ['season.single_run.most', 3.1, 'out-of-range', { most: 3 }],
  ],
  'quantities of the coach': [
    ['quantities', copies('load', 'load'), 'duplicate', {}, 'load'],
    ['quantities', copies('value'), 'duplicate', {}, 'value'],
    ['quantities', copies('slow_minutes'), 'duplicate', {}, 'slow_minutes'],
    ['quantities', copies('weekly_hours'), 'duplicate', {}, 'weekly_hours'],
    ['quantities', copies('taper_slow_share'), 'duplicate', {}, 'taper_slow_share'],
    ['quantities', copies('slow_rounded'), 'duplicate', {}, 'slow_rounded'],
    ['quantities', copies('phase_base'), 'duplicate', {}, 'phase_base'],
    ['quantities', [quantity('Load', '1')], 'wrong-pattern', { pattern: namePattern }, 'Load'],
    ['quantities', [quantity('load', '1 +')], 'formula', formula('syntax', 3, ''), '1 +'],
  ],
  formulas: [
    ['splits[0].when', 5, 'wrong-type', { expected: 'text' }],
    ['splits[0].when', long(2001), 'too-long', { most: 2000 }],
    ['splits[0].when', 'weekly_hours >', 'formula', formula('syntax', 14, '')],
    ['splits[0].when', '', 'formula', formula('empty', 0, '')],
    ['splits[0].when', 'season_phase == phase_summer', 'formula', formula('unknown-name', 16, 'phase_summer')],
    ['splits[0].when', 'value > 1', 'formula', formula('unknown-name', 0, 'value')],
    ['rules[0].value', 'min(strenght_cap, value)', 'formula', formula('unknown-name', 4, 'strenght_cap')],
    ['rules[0].value', 'weekly_hours.constructor', 'formula', formula('not-allowed', 12, '.constructor')],
    ['rules[0].value', '__proto__', 'formula', formula('unknown-name', 0, '__proto__')],
    ['rules[0].value', 'constructor', 'formula', formula('unknown-name', 0, 'constructor')],
    ['rules[2].when', 'value > 1', 'formula', formula('unknown-name', 0, 'value')],
    ['rules[0].when', '(weekly_hours) > hours', 'formula', formula('unknown-name', 17, 'hours')],
  ],
};

describe('a method document with one fault has one problem:', () => {
  describe.each(Object.entries(rows))('%s', (_, faults) => {
    const named = faults.map((row) => [`${row[0]} = ${inShort(row[1])} is ${row[2]}`, row] as const);
    test.each(named)('%s', async (_title, [path, value, code, allowed = {}, given = value]) => {
      const [problem, ...others] = await problemsOf(documentWith(path, value));
      expect(others).toEqual([]);
      expect(problem).toEqual({ path: expect.stringContaining(path) as unknown, value: given, code, allowed });
    });
  });

  test('the path leads to the fault itself', () => {
    const paths = async (path: string, value: unknown) =>
      (await problemsOf(documentWith(path, value))).map((each) => each.path);
    return Promise.all([
      expect(paths('name', { key: 5 })).resolves.toEqual(['name.key']),
      expect(paths('name', {})).resolves.toEqual(['name.key']),
      expect(paths('name', { key: 'a', more: 1 })).resolves.toEqual(['name.more']),
      expect(paths('categories[1].id', 'slow')).resolves.toEqual(['categories[1].id']),
      expect(paths('splits[1].id', 'off_season')).resolves.toEqual(['splits[1].id']),
      expect(paths('tie_order[1]', 'strength')).resolves.toEqual(['tie_order[1]']),
      expect(paths('quantities', copies('load', 'load'))).resolves.toEqual(['quantities[1].id']),
      expect(paths('quantities', [quantity('load', '1 +')])).resolves.toEqual(['quantities[0].formula']),
    ]);
  });

  test('a list in the place of an object shows none of its own methods: every list has one that is called `every`', async () => {
    const values = (await problemsOf(documentWith('season.easier', [1, 2]))).map(({ value }) => typeof value);
    expect(values).not.toContain('function');
  });

  test('the table has every code that a document can have', () => {
    const elsewhere: readonly ProblemCode[] = [
      ...(['circle', 'no-value', 'not-json', 'unreachable', 'other-origin'] as const),
      ...(['newer-version', 'other-method', 'too-deep', 'damaged'] as const), // of sheets and links
      ...(['no-date', 'too-far-apart'] as const), // of seasons in requests: a method has no dates
      'no-plan', // of answers in requests
    ];
    const codes = new Set(Object.values(rows).flatMap((faults) => faults.map(([, , code]) => code)));
    expect(problemCodes.filter((code) => !codes.has(code) && !elsewhere.includes(code))).toEqual([]);
  });
});

describe('several faults', () => {
  test('of the shape are all told at once', async () => {
    const document = { ...documentWith('splits[0].shares.slow', 2), name: 5, version: 3 };
    expect((await problemsOf(document)).map(({ path }) => path)).toEqual(['version', 'name', 'splits[0].shares.slow']);
  });

  test('across fields are all told at once', async () => {
    const document = {
      ...documentWith('splits[0].shares.slow', 0.5),
      tie_order: Array.from({ length: 5 }, () => 'slow'),
    };
    const paths = (await problemsOf(document)).map(({ path }) => path);
    expect(paths).toEqual([1, 2, 3, 4].map((index) => `tie_order[${String(index)}]`).concat('splits[0].shares'));
  });

  test('of formulas are all told at once', async () => {
    const document = { ...documentWith('splits[0].when', '('), quantities: [quantity('load', ')')] };
    expect((await problemsOf(document)).map(({ path }) => path)).toEqual(['splits[0].when', 'quantities[0].formula']);
  });

  test('that are one circle are told once, by the quantities on it', async () => {
    const quantities = [quantity('a', 'b'), quantity('b', 'c + a'), quantity('c', 'a')];
    expect(await problemsOf(documentWith('quantities', quantities))).toEqual([
      { path: 'a', value: 'a', code: 'circle', allowed: { path: ['a', 'b', 'a'] } },
    ]);
    expect(await problemsOf(documentWith('rules[0].value', 'slow_rounded'))).toHaveLength(1);
    const [problem] = await problemsOf(documentWith('splits[0].when', 'slow_share > 0'));
    expect(problem?.allowed).toEqual({ path: ['split_off_season', 'slow_share', 'split_off_season'] });
  });
});

describe('a document that is none', () => {
  test.each<[document: unknown, code: ProblemCode, allowed: Allowed]>([
    [undefined, 'missing', {}],
    [null, 'wrong-type', { expected: 'object' }],
    ['{}', 'wrong-type', { expected: 'object' }],
    [5, 'wrong-type', { expected: 'object' }],
    [true, 'wrong-type', { expected: 'object' }],
  ])('%j is %s', async (document, code, allowed) => {
    expect(await problemsOf(document)).toEqual([{ path: '', value: document, code, allowed }]);
  });

  test.each([[{}], [[]]])('%j lacks every field', async (document) => {
    const problems = await problemsOf(document);
    expect(new Set(problems.map(({ code }) => code))).toEqual(new Set(['missing']));
    expect(problems.map(({ path }) => path)).toContain('splits');
  });
});

describe('a switched-off rule', () => {
  test.each([0, 1])('still needs sound formulas: it may be switched on again (rule %i)', async (index) => {
    const document = documentWith(`rules[${String(index)}].enabled`, false);
    expect((await createPlanner(document)).ok).toBe(true);
    const rules = Array.isArray(document['rules']) ? document['rules'] : [];
    Object.assign(rules[index] as object, { when: 'weekly_hours >' });
    expect(await problemsOf(document)).toEqual([
      {
        path: `rules[${String(index)}].when`,
        value: 'weekly_hours >',
        code: 'formula',
        allowed: formula('syntax', 14, ''),
      },
    ]);
  });
});

describe('a method that would make too long a formula', () => {
  test('of the longest names that a split may have says so', async () => {
    const { splits } = documentWith('id', 'long');
    if (!Array.isArray(splits)) throw new Error('no splits');
    const last: unknown = splits.at(-1);
    const many = Array.from({ length: 19 }, (_, index) => ({
      ...(splits[0] as object),
      id: `${'x'.repeat(38)}${String(10 + index)}`,
    }));
    const problems = await problemsOf(documentWith('splits', [...many, last]));
    expect(problems.map(({ path, code }) => [path, code])).toEqual([['splits', 'formula']]);
    expect(problems[0]?.allowed).toMatchObject({ error: { code: 'too-long', values: { most: 2000 } } });
  });
});
