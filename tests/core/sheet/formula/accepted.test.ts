import { describe, expect, test } from 'vitest';
import { formulaLimits, functionArity } from '../../../../src/sheet/formula/functions.js';
import { isOperation, operandCount, operationCode } from '../../../../src/sheet/formula/operations.js';
import { compiled, valueOf } from '../sheet-of.js';

const numbers = { a: 7, b: 2, c: 0 };

describe('a formula over a = 7, b = 2, c = 0 becomes plain data, operands before operations', () => {
  // Values worked by hand. Order of operations: mathjs 15.2 documentation, "Expression syntax", section "Operators".
  test.each<[text: string, code: (number | string)[], value: number]>([
    ['7', [7], 7],
    ['.5', [0.5], 0.5],
    ['5.', [5], 5],
    ['1e3', [1000], 1000],
    ['2.5E-1', [0.25], 0.25],
    ['a', ['a'], 7],
    ['(((a)))', ['a'], 7],
    ['true', [1], 1],
    ['false', [0], 0],
    ['a + b', ['a', 'b', '+'], 9],
    ['a - b - 1', ['a', 'b', '-', 1, '-'], 4],
    ['a * (b + 1)', ['a', 'b', 1, '+', '*'], 21],
    ['a / b / 2', ['a', 'b', '/', 2, '/'], 1.75],
    ['a % 4', ['a', 4, '%'], 3],
    ['a mod 4', ['a', 4, '%'], 3],
    ['a%-4', ['a', 4, 'neg()', '%'], -1],
    ['2 + a % 4 * 3', [2, 'a', 4, '%', 3, '*', '+'], 11],
    ['+a', ['a'], 7],
    ['- - a', ['a', 'neg()', 'neg()'], 7],
    ['-b ^ 2', ['b', 2, '^', 'neg()'], -4],
    ['2 ^ 3 ^ 2', [2, 3, 2, '^', '^'], 512],
    ['b ^ -1', ['b', 1, 'neg()', '^'], 0.5],
    ['a > 6', ['a', 6, '>'], 1],
    ['a >= 8', ['a', 8, '>='], 0],
    ['a < 7', ['a', 7, '<'], 0],
    ['a <= 7', ['a', 7, '<='], 1],
    ['a == 7', ['a', 7, '=='], 1],
    ['a != 7', ['a', 7, '!='], 0],
    ['1 < a < 10', [1, 'a', '<', 'a', 10, '<', 'and()'], 1],
    ['1 < a == 7 >= 7', [1, 'a', '<', 'a', 7, '==', 'and()', 7, 7, '>=', 'and()'], 1],
    ['not c', ['c', 'not()'], 1],
    ['not a > b', ['a', 'not()', 'b', '>'], 0],
    ['not (a > b)', ['a', 'b', '>', 'not()'], 0],
    ['a and c', ['a', 'c', 'and()'], 0],
    ['a or c', ['a', 'c', 'or()'], 1],
    ['c or a and b', ['c', 'a', 'b', 'and()', 'or()'], 1],
    ['c ? a : b', ['c', 'a', 'b', 'if()'], 2],
    ['a ? 1 : b ? 2 : 3', ['a', 1, 'b', 2, 3, 'if()', 'if()'], 1],
    ['a ? (b ? 1 : 2) : 3', ['a', 'b', 1, 2, 'if()', 3, 'if()'], 1],
    ['a > 6 ? min(a, 6) : a', ['a', 6, '>', 'a', 6, 'min()', 'a', 'if()'], 6],
    ['min(a)', ['a'], 7],
    ['max(a, b, c)', ['a', 'b', 'max()', 'c', 'max()'], 7],
    ['min (a, b)', ['a', 'b', 'min()'], 2],
    ['sum(a, b, 1)', ['a', 'b', '+', 1, '+'], 10],
    ['sum(a)', ['a'], 7],
    ['clamp(a, 1, 5)', ['a', 1, 'max()', 5, 'min()'], 5],
    ['clamp(a, 9, 5)', ['a', 9, 'max()', 5, 'min()'], 5],
    ['round(a / b)', ['a', 'b', '/', 'round()'], 4],
    ['round(-2.5)', [2.5, 'neg()', 'round()'], -3],
    ['floor(a / b)', ['a', 'b', '/', 'floor()'], 3],
    ['ceil(a / b)', ['a', 'b', '/', 'ceil()'], 4],
    ['abs(b - a)', ['b', 'a', '-', 'abs()'], 5],
    ['sqrt(a + b)', ['a', 'b', '+', 'sqrt()'], 3],
    ['a\n\t+\u00a0b', ['a', 'b', '+'], 9],
  ])('%j', (text, code, value) => {
    expect(compiled(text)).toEqual(code);
    expect(valueOf(text, numbers)).toBe(value);
  });
});

describe('limits are kept to the last step', () => {
  test.each([
    ['2,000 characters', `1${' '.repeat(formulaLimits.length - 1)}`],
    ['24 brackets inside each other', `${'('.repeat(formulaLimits.brackets)}1${')'.repeat(formulaLimits.brackets)}`],
    ['64 parts inside each other', `${'-'.repeat(formulaLimits.depth)}1`],
    ['a sum of 65', Array.from({ length: 65 }, () => '1').join(' + ')],
    ['100 values', `sum(${Array.from({ length: 100 }, () => '1').join()})`],
  ])('%s', (_, text) => {
    expect(valueOf(text)).not.toBeNaN();
  });

  // mathjs reads what follows a % twice, to tell it from a percentage: 2 ** 24 readings, if it were left to.
  test('24 remainders inside each other', () => {
    expect(valueOf(`${'2%(3+'.repeat(24)}1${')'.repeat(24)}`)).toBe(2);
  });
});

describe('every operation', () => {
  test.each(Object.entries(operationCode))('%s has a number of its own', (token, code) => {
    expect(Object.values(operationCode).filter((each) => each === code)).toEqual([code]);
    expect(isOperation(token)).toBe(true);
  });

  test('takes 3 values if it chooses or hands on, 1 if it changes one, else 2', () => {
    const taking = (count: number) =>
      Object.keys(operationCode).filter((token) => isOperation(token) && operandCount(token) === count);
    expect(taking(3)).toEqual(['if()', 'hand()']);
    expect(taking(1)).toEqual(['not()', 'neg()', 'round()', 'floor()', 'ceil()', 'abs()', 'sqrt()', 'spare()']);
  });

  test.each(['constructor', 'toString', '__proto__', 'min', 'hasOwnProperty'])('%s is none', (token) => {
    expect(isOperation(token)).toBe(false);
  });

  test('a function takes as many values as the table says, least and most', () => {
    for (const [name, [least, most]] of Object.entries(functionArity))
      for (const count of [least, most])
        expect(valueOf(`${name}(${Array.from({ length: count }, () => '4').join()})`), name).not.toBeNaN();
  });
});
