import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { compileFormula } from '../../../../src/sheet/formula/compile.js';
import { formulaErrorCodes } from '../../../../src/sheet/formula/formula-error.js';
import { formulaLimits } from '../../../../src/sheet/formula/functions.js';
import { patience, runs } from '../../../reference/runs.js';
import { formulaTexts } from '../formula-texts.js';
import { globalsNow } from '../globals.js';
import { valueOf } from '../sheet-of.js';

/** Pieces of which attacks on evaluators are made, and signs of mathjs that formulas do not have. */
const pieces = [
  ...['constructor', '__proto__', 'prototype', 'toString', 'valueOf', 'hasOwnProperty', '__defineGetter__', 'this'],
  ...[
    'import',
    'createUnit',
    'evaluate',
    'parse',
    'simplify',
    'config',
    'typed',
    'print',
    'end',
    'i',
    'pi',
    'Infinity',
  ],
  ...[
    '.',
    '..',
    '[',
    ']',
    '{',
    '}',
    ';',
    '\n',
    ',',
    ':',
    '?',
    '=',
    '==',
    '!',
    "'",
    '"',
    '`',
    '\\',
    '#',
    '@',
    '$',
    '%',
    '°',
  ],
  ...[
    '(',
    ')',
    '((',
    '))',
    '-',
    '--',
    '+',
    '^',
    '.^',
    '.*',
    '<<',
    '>>>',
    '|',
    '&',
    '~',
    ' to ',
    ' in ',
    ' mod ',
    ' and ',
  ],
  ...[
    '0x',
    '1e',
    '1e999',
    '1:1e9',
    '[1:9]',
    '2a',
    'f(x)=x',
    'a.b',
    'a["b"]',
    'a?.b',
    '()=>1',
    '/*',
    '\0',
    '\u2028',
    '\u202e',
  ],
  ...[
    'min(',
    'max',
    'sum(1:',
    'clamp(',
    'sqrt',
    'value',
    'other',
    'true',
    'null',
    'NaN',
    'undefined',
    'not ',
    '🏃',
    'é',
    'ａ',
  ],
];

type Mutation = (text: string) => string;
const place = fc.nat({ max: 200 });
const cut = (text: string, at: number): readonly [string, string] => {
  const index = at % (text.length + 1);
  return [text.slice(0, index), text.slice(index)];
};
const mutations: fc.Arbitrary<Mutation> = fc.oneof(
  fc.tuple(place, fc.constantFrom(...pieces)).map(
    ([at, piece]): Mutation =>
      (text) =>
        cut(text, at).join(piece),
  ),
  fc.tuple(place, place).map(
    ([at, length]): Mutation =>
      (text) =>
        cut(text, at)[0] + cut(text, at)[1].slice(length % 9),
  ),
  fc.tuple(place, place).map(
    ([at, length]): Mutation =>
      (text) =>
        cut(text, at).join(text.slice(0, length)),
  ),
  fc.tuple(fc.constantFrom('(', '-', 'not ', 'abs(', '1 < ', 'a % (', '1 ? ', '2 ^ '), fc.nat({ max: 90 })).map(
    ([opening, count]): Mutation =>
      (text) =>
        opening.repeat(count) + text + (opening.endsWith('(') ? ')'.repeat(count) : ''),
  ),
  fc.tuple(fc.constantFrom(' + ', ' and ', ', ', ' < ', ' % ', ' ^ '), fc.nat({ max: 100 })).map(
    ([sign, count]): Mutation =>
      (text) =>
        text + `${sign}${text}`.repeat(count),
  ),
);
const mutated = fc
  .tuple(formulaTexts(['a', 'b', 'value']), fc.array(mutations, { minLength: 1, maxLength: 4 }))
  .map(([text, changes]) => changes.reduce((changed, change) => change(changed).slice(0, 3000), text));
const hostile = fc.oneof(
  { weight: 6, arbitrary: mutated },
  {
    weight: 1,
    arbitrary: fc.array(fc.constantFrom(...pieces, 'a', '1', ' '), { maxLength: 40 }).map((all) => all.join('')),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'grapheme', maxLength: 60 }) },
);

describe('a hostile formula', { timeout: patience }, () => {
  let before: unknown;
  beforeAll(() => {
    compileFormula('1'); // what the parser sets up for itself is there
    before = globalsNow();
  });
  afterAll(() => {
    expect(globalsNow()).toStrictEqual(before);
  });

  test('is a formula of bounded size, or refused with a known code and a place in the text', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        const compiled = compileFormula(text);
        if (compiled.ok) {
          expect(compiled.formula.length).toBeLessThanOrEqual(formulaLimits.steps);
          expect(compiled.formula.every((token) => typeof token === 'string' || Number.isFinite(token))).toBe(true);
          // Names that are no numbers of the sheet give a value that failed, never more.
          expect(typeof valueOf(text, { a: 2, b: 3 })).toBe('number');
          return;
        }
        const { code, position, found, values } = compiled.error;
        expect(formulaErrorCodes).toContain(code);
        expect(position).toBeGreaterThanOrEqual(0);
        expect(position).toBeLessThanOrEqual(text.length);
        if (found !== 'implicit multiplication') expect(text.slice(position)).toContain(found);
        expect(Object.values(values).every(Number.isFinite)).toBe(true);
      }),
      runs(10_000, 100_000),
    );
  });

  test('is refused about as often as not: the texts are near to formulas', () => {
    const texts = fc.sample(hostile, { numRuns: 1000, seed: 1 });
    const refused = texts.filter((text) => !compileFormula(text).ok);
    expect(refused.length).toBeGreaterThan(400);
    expect(refused.length).toBeLessThan(950);
  });
});
