import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lay } from '../../../src/training/week/lay.js';
import { WeekSearch } from '../../../src/training/week/search.js';
import { patience, runs } from '../runs.js';
import { randomWeeks } from './random-weeks.js';

describe('any week', () => {
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
