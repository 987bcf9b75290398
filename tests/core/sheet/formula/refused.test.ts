import { describe, expect, test } from 'vitest';
import { compileFormula } from '../../../../src/sheet/formula/compile.js';
import { formulaErrorCodes, type FormulaErrorCode } from '../../../../src/sheet/formula/formula-error.js';
import { inShort } from '../../in-short.js';

type Values = Readonly<Record<string, number>>;
type Refusal = readonly [text: string, code: FormulaErrorCode, position: number, found: string, values?: Values];

const nest = (open: string, count: number, close = ''): string => `${open.repeat(count)}1${close.repeat(count)}`;
const list = (count: number): string => Array.from({ length: count }, () => '1').join();

// The signs that mathjs 15.2 knows (documentation, "Expression syntax") and formulas do not have, one by one.
const refusals: Readonly<Record<string, readonly Refusal[]>> = {
  nothing: [
    ['', 'empty', 0, ''],
    [' \n ', 'empty', 0, ''],
  ],
  text: [
    ['"a"', 'not-allowed', 0, '"'],
    ["1 + 'a'", 'not-allowed', 4, "'"],
    ['“a”', 'not-allowed', 0, '“'],
    ['a + ä', 'not-allowed', 4, 'ä'],
    ['🏃 + 1', 'not-allowed', 0, '🏃'],
    ['$a', 'not-allowed', 0, '$'],
    ['# a', 'not-allowed', 0, '#'],
  ],
  'lists, tables and objects': [
    ['[1, 2]', 'not-allowed', 0, '['],
    ['a[1]', 'not-allowed', 1, '['],
    ['{a: 1}', 'not-allowed', 0, '{'],
    ["a'", 'not-allowed', 1, "'"],
  ],
  ranges: [
    ['1:10', 'not-allowed', 1, ':'],
    ['sum(1:1e7)', 'not-allowed', 5, ':'],
    ['1:', 'not-allowed', 1, ':'],
    ['a ? b : c : d', 'not-allowed', 10, ':'],
    ['a ? b : (c : d)', 'not-allowed', 11, ':'],
    ['a ? (b : c) : d', 'not-allowed', 7, ':'],
    ['a ? b ? 1 : 2 : 3', 'not-allowed', 14, ':'],
  ],
  properties: [
    ['a.b', 'not-allowed', 1, '.b'],
    ['a.constructor("x")', 'not-allowed', 1, '.constructor'],
    ['a["b"]', 'not-allowed', 1, '['],
    ['(a).b', 'not-allowed', 3, '.b'],
  ],
  'assignments and definitions': [
    ['a = 1', 'not-allowed', 2, '='],
    ['f(x) = x', 'not-allowed', 5, '='],
    ['a === b', 'not-allowed', 4, '='],
    ['a => b', 'not-allowed', 2, '='],
  ],
  'several formulas': [
    ['a; b', 'not-allowed', 1, ';'],
    ['a, b', 'syntax', 1, ','],
    ['a\nb', 'not-allowed', 2, 'implicit multiplication'],
  ],
  'multiplication without a sign': [
    ['2 a', 'not-allowed', 2, 'implicit multiplication'],
    ['2a', 'not-allowed', 0, '2a'],
    ['a 2', 'not-allowed', 2, 'implicit multiplication'],
    ['2 (a)', 'not-allowed', 3, 'implicit multiplication'],
    ['(a)(b)', 'not-allowed', 4, 'implicit multiplication'],
    ['min(1)(2)', 'not-allowed', 7, 'implicit multiplication'],
    ['5 cm', 'not-allowed', 2, 'implicit multiplication'],
  ],
  percentages: [
    ['5%', 'not-allowed', 1, '%'],
    ['a + 5 %', 'not-allowed', 6, '%'],
    ['(a) % * 2', 'not-allowed', 4, '%'],
    ['min(5%, 2)', 'not-allowed', 5, '%'],
    ['5 % % 2', 'not-allowed', 2, '%'],
    ['a % and b', 'not-allowed', 2, '%'],
  ],
  'numbers of other kinds': [
    ['0x1F', 'not-allowed', 0, '0x1F'],
    ['1 + 0b11', 'not-allowed', 4, '0b11'],
    ['1.2.3', 'not-allowed', 0, '1.2.3'],
    ['1e', 'not-allowed', 0, '1e'],
    ['1..2', 'not-allowed', 0, '1..2'],
    ['null', 'not-allowed', 0, 'null'],
    ['1 + undefined', 'not-allowed', 4, 'undefined'],
  ],
  'signs of other trades': [
    ['5!', 'not-allowed', 1, '!'],
    ['!a', 'not-allowed', 0, '!'],
    ['a && b', 'not-allowed', 2, '&'],
    ['a | b', 'not-allowed', 2, '|'],
    ['~a', 'not-allowed', 0, '~'],
    ['a << 2', 'not-allowed', 2, '<<'],
    ['a >> 2', 'not-allowed', 2, '>>'],
    ['a >>> 2', 'not-allowed', 2, '>>>'],
    ['a .* b', 'not-allowed', 2, '.'],
    ['a .^ b', 'not-allowed', 2, '.'],
    ['3.^2', 'not-allowed', 0, '3.'],
    ['1 + 3./a', 'not-allowed', 4, '3.'],
    ['a @ b', 'not-allowed', 2, '@'],
    ['5 to a', 'not-allowed', 2, 'to'],
    ['5 in a', 'not-allowed', 2, 'in'],
    ['a xor b', 'not-allowed', 2, 'xor'],
  ],
  'numbers without end': [
    ['1e400', 'not-finite', 0, '1e400'],
    ['2 * Infinity', 'not-finite', 4, 'Infinity'],
    ['NaN', 'not-finite', 0, 'NaN'],
  ],
  'functions that are none, or are used as none': [
    ['foo(1)', 'unknown-function', 0, 'foo'],
    ['1 + log(a)', 'unknown-function', 4, 'log'],
    ['toString()', 'unknown-function', 0, 'toString'],
    ['constructor(1)', 'unknown-function', 0, 'constructor'],
    ['a + __proto__(1)', 'unknown-function', 4, '__proto__'],
    ['min', 'syntax', 0, 'min'],
    ['1 + max', 'syntax', 4, 'max'],
    ['min()', 'wrong-arguments', 0, 'min', { least: 1, most: 100, given: 0 }],
    ['round(1, 2)', 'wrong-arguments', 0, 'round', { least: 1, most: 1, given: 2 }],
    ['1 + clamp(1, 2)', 'wrong-arguments', 4, 'clamp', { least: 3, most: 3, given: 2 }],
    [`sum(${list(101)})`, 'wrong-arguments', 0, 'sum', { least: 1, most: 100, given: 101 }],
  ],
  'words that are signs': [
    ['and', 'syntax', 0, 'and'],
    ['1 + mod', 'syntax', 4, 'mod'],
    ['mod(a, 3)', 'syntax', 0, 'mod'],
    ['min(or)', 'syntax', 4, 'or'],
    ['a and and b', 'syntax', 6, 'and'],
    ['a not b', 'syntax', 2, 'not'],
    ['% (a)', 'syntax', 0, '%'],
    ['a or % (a)', 'syntax', 5, '%'],
  ],
  'formulas that are not well formed': [
    ['a +', 'syntax', 3, ''],
    ['* a', 'syntax', 0, '*'],
    ['a + * b', 'syntax', 4, '*'],
    ['(a', 'syntax', 2, ''],
    ['a)', 'syntax', 1, ')'],
    ['()', 'syntax', 1, ')'],
    ['min(a,)', 'syntax', 6, ')'],
    ['not', 'syntax', 3, ''],
    ['a ? b', 'syntax', 5, ''],
    ['? a : b', 'syntax', 0, '?'],
    ['a ? : b', 'syntax', 4, ':'],
    ['a <> b', 'syntax', 3, '>'],
    ['a % b c * )', 'syntax', 10, ')'],
    ['true()', 'syntax', 5, ')'],
  ],
  'too much': [
    [`1${' '.repeat(2000)}`, 'too-long', 2000, '', { most: 2000, given: 2001 }],
    [nest('(', 25, ')'), 'too-deep', 24, '(', { most: 24 }],
    [nest('min(', 25, ')'), 'too-deep', 99, '(', { most: 24 }],
    [nest('-', 65), 'too-deep', 65, '1', { most: 64 }],
    [nest('2 ^ ', 65), 'too-deep', 256, '2', { most: 64 }],
    [nest('-', 1999), 'too-deep', 1999, '1', { most: 64 }],
    // The middle of a chain stands twice in the compiled form: 6 × 2 ** n - 5 steps, so the tenth is the one too many.
    [nest('(1 < ', 14, ' < 3)'), 'too-long', 124, '3', { most: 4000 }],
  ],
};

const named = (rows: readonly Refusal[]) =>
  rows.map(
    ([text, code, position, found, values = {}]) => [inShort(text), { text, code, position, found, values }] as const,
  );

describe('refused, with what and where (characters from 0):', () => {
  describe.each(Object.entries(refusals))('%s', (_, rows) => {
    test.each(named(rows))('%s', (_title, { text, ...error }) => {
      expect(compileFormula(text)).toEqual({ ok: false, error });
    });
  });
});

describe('the table', () => {
  const rows = Object.values(refusals).flat();

  // A name is looked up when the sheet is linked: training/method/faulty-documents.test.ts.
  test.each(formulaErrorCodes.filter((code) => code !== 'unknown-name'))('has %s', (code) => {
    expect(rows.map(([, each]) => each)).toContain(code);
  });

  const pieces = rows.filter(([, , , found]) => found !== '' && found !== 'implicit multiplication');
  test.each(named(pieces))('%s: the position is that of what was found', (_, { text, position, found }) => {
    expect(text.slice(position, position + found.length)).toBe(found);
  });
});
