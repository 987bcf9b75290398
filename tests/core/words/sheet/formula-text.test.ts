import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compileTexts } from '../../../../src/sheet/formula/compile-texts.js';
import { formulaText, wantedAmount } from '../../../../src/words/sheet/formula-text.js';
import { runs } from '../../../reference/runs.js';
import { valueOf } from '../../sheet/sheet-of.js';

describe('formulaText(text)', () => {
  it.each([
    ['4,5', '4.5'],
    [' 4.5 ', '4.5'],
    ['90', '90'],
    ['-5', '-5'],
    ['- 4,5', '-4.5'],
    ['−5', '-5'],
    ['30 %', '0.3'],
    ['30%', '0.3'],
    ['12,5 %', '0.125'],
    ['-7,5%', '-0.075'],
    ['29 %', '0.29'],
    ['4:15', '4.25'],
    [',5', '0.5'],
    // Anything else stays as it is.
    ['value * 1,1', 'value * 1,1'],
    ['10 % 3', '10 % 3'],
    ['min(3, 5)', 'min(3, 5)'],
    ['slow_minutes %', 'slow_minutes %'],
    ['1,234.5', '1,234.5'],
    ['--5', '--5'],
    ['-', '-'],
    ['%', '%'],
    ['', ''],
    ['  ', ''],
  ])('"%s" is "%s"', (text, formula) => {
    expect(formulaText(text)).toBe(formula);
  });

  it('of a number as people write it has that number, and needs no parser', async () => {
    const numbers = fc.integer({ min: -100_000, max: 100_000 }).map((hundredths) => hundredths / 100);
    const space = fc.constantFrom('', ' ', '\t');
    await fc.assert(
      fc.asyncProperty(numbers, space, fc.boolean(), async (number, gap, isComma) => {
        const text = String(number);
        const formula = formulaText(`${gap}${isComma ? text.replace('.', ',') : text}${gap}`);
        expect(valueOf(formula)).toBe(number);
        const { book, errors } = await compileTexts([formula], {});
        expect([errors.size, Object.keys(book)]).toEqual([0, [formula]]);
        expect(valueOf(formulaText(`${text}${gap}%`))).toBeCloseTo(number / 100, 12);
      }),
      runs(200, 20_000),
    );
  });
});

describe('wantedAmount(text)', () => {
  it.each([
    ['90', 90],
    ['2 × 45', 90],
    ['2x45', 90],
    ['2 * 45', 90],
    ['3 X 25', 75],
    ['30 + 45', 75],
    ['2 × 30 + 45', 105],
    ['37,5 + 2 × 22.5', 82.5],
    ['30 %', 0.3],
    ['4,5', 4.5],
    ['-5', -5],
    ['0', 0],
  ])('"%s" is %d', (text, amount) => {
    expect(wantedAmount(text)).toBe(amount);
  });

  it.each(['', '  ', 'ninety', '2 ×', '× 45', '30 +', '+ 30', '2 × 3 × 4', '30 - 5', 'Infinity', 'NaN', '2 × -5'])(
    '"%s" is null',
    (text) => {
      expect(wantedAmount(text)).toBeNull();
    },
  );
});
