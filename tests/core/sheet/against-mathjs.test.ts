import fc from 'fast-check';
import { evaluate } from 'mathjs/number';
import { describe, expect, test } from 'vitest';
import { compileFormula } from '../../../src/sheet/formula/compile.js';
import { isNear } from '../../../src/sheet/numbers.js';
import { patience, runs } from '../../reference/runs.js';
import { anyNumber, formulaTexts } from './formula-texts.js';
import { mathjsValue } from './mathjs-value.js';
import { valueOf } from './sheet-of.js';

const names = ['a', 'b', 'c', 'd'];
const cases = fc.record({
  text: formulaTexts(names),
  scope: fc.record({ a: anyNumber, b: anyNumber, c: anyNumber, d: anyNumber }),
});

describe('formulas against mathjs', { timeout: patience }, () => {
  test('random formulas over random numbers have the value that mathjs gives them, but for the documented differences', () => {
    fc.assert(
      fc.property(cases, ({ text, scope }) => {
        const compiled = compileFormula(text);
        if (compiled.ok) {
          expect(valueOf(text, scope)).toBe(mathjsValue(text, scope) + 0);
        } else expect(['too-deep', 'too-long']).toContain(compiled.error.code);
      }),
      runs(10_000, 200_000),
    );
  });

  test('min and max have the value that mathjs gives them, to 1 in 10¹²', () => {
    fc.assert(
      fc.property(fc.array(anyNumber, { minLength: 1, maxLength: 5 }), (numbers) => {
        const scope = Object.fromEntries(numbers.map((number, index) => [`n${String(index)}`, number]));
        for (const name of ['min', 'max']) {
          const text = `${name}(${Object.keys(scope).join()})`;
          expect(isNear(valueOf(text, scope), Number(evaluate(text, { ...scope })))).toBe(true);
        }
      }),
      runs(500, 50_000),
    );
  });

  test('nearly all of them are formulas with a value', () => {
    const texts = fc.sample(cases, { numRuns: 500, seed: 1 });
    const withValue = texts.filter(({ text, scope }) => compileFormula(text).ok && !Number.isNaN(valueOf(text, scope)));
    expect(withValue.length).toBeGreaterThan(350);
  });
});

describe('the documented differences', () => {
  const scope = { a: 1, zero: 0, huge: 1e308 };

  test.each<[text: string, theirs: unknown]>([
    ['a / zero', Infinity],
    ['zero / zero', NaN],
    ['7 % zero', 7],
    ['zero ^ -1', Infinity],
    ['huge * 10', Infinity],
    ['huge * 10 > 5', true],
    ['a / (huge * 10)', 0],
    ['a / zero > 5 ? 1 : 2', 1],
    ['sqrt(-a) == sqrt(-a)', false],
    ['(zero / zero) ^ 0', 1],
  ])('%s is an error here, and %s for mathjs', (text, theirs) => {
    expect(evaluate(text, { ...scope })).toEqual(theirs);
    expect(valueOf(text, scope)).toBeNaN();
  });

  test('of numbers that count as equal, min and max give the least and the largest; mathjs gives the first', () => {
    const pair = { a: 0.3, b: 0.1 + 0.2 };
    expect(evaluate('max(a, b)', { ...pair })).toBe(pair.a);
    expect(valueOf('max(a, b)', pair)).toBe(pair.b);
    expect(evaluate('min(b, a)', { ...pair })).toBe(pair.b);
    expect(valueOf('min(b, a)', pair)).toBe(pair.a);
  });

  test('truth is the number 1 here', () => {
    expect(evaluate('2 > 1')).toBe(true);
    expect(valueOf('2 > 1')).toBe(1);
  });
});
