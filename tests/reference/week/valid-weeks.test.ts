import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clashesOf } from '../../../src/training/week/clashes.js';
import { canLay, lay } from '../../../src/training/week/lay.js';
import { patience, runs } from '../runs.js';
import { defaultRules } from './default-rules.js';
import { ownRules } from './random-rules.js';
import { weeksBy } from './random-weeks.js';
import { costOf, faultsOf } from './week-check.js';

describe('any week', () => {
  it.each([
    { title: 'the default rules', weeks: weeksBy(fc.constant(defaultRules)), usual: 4500 },
    { title: 'own rules', weeks: weeksBy(ownRules), usual: 500 },
  ])(
    'by $title breaks no rule and costs what its clashes say; where none is laid, none can be',
    ({ weeks, usual }) => {
      fc.assert(
        fc.property(weeks, (problem) => {
          const laid = lay(problem);
          expect(canLay(problem)).toBe(laid !== null);
          if (!laid) return;
          expect(faultsOf(problem, laid)).toEqual([]);
          const clashes = clashesOf(problem, laid);
          expect(clashes.reduce((sum, { cost }) => sum + cost, 0)).toBe(costOf(problem, laid));
        }),
        runs(usual, 10 * usual),
      );
    },
    2 * patience,
  );
});
