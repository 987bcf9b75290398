import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clashesOf } from '../../../src/training/week/clashes.js';
import { canLay, lay } from '../../../src/training/week/lay.js';
import { WeekSearch } from '../../../src/training/week/search.js';
import { patience, runs } from '../runs.js';
import { defaultRules } from './default-rules.js';
import { ownRules } from './random-rules.js';
import { randomWeeks, weeksBy } from './random-weeks.js';
import { costOf, faultsOf } from './week-check.js';

describe('any week', () => {
  it.each([
    { title: 'by the default rules', weeks: weeksBy(fc.constant(defaultRules)), usual: 4500 },
    { title: "by a coach's own rules", weeks: weeksBy(ownRules), usual: 500 },
  ])(
    '$title breaks no rule and costs what its clashes say; where none is laid, none can be',
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

  it(
    'is laid the same way each time, and leaves the question as it was',
    () => {
      fc.assert(
        fc.property(randomWeeks, (problem) => {
          const asked = structuredClone(problem);
          const laid = lay(problem);
          expect(problem).toEqual(asked);
          expect(lay(asked)).toEqual(laid);
        }),
        runs(200, 5000),
      );
    },
    patience,
  );

  it(
    'is found the same way at once and in parts',
    () => {
      fc.assert(
        fc.property(randomWeeks, fc.constantFrom(1, 2, 7, 100), (problem, nodes) => {
          const [whole, parts] = [new WeekSearch(problem), new WeekSearch(problem)];
          expect(whole.run()).toBe(true);
          while (!parts.run(nodes));
          expect(parts.best).toEqual(whole.best);
        }),
        runs(200, 5000),
      );
    },
    patience,
  );
});
