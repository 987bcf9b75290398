import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSheetText, writeSheetText } from '../../../src/exchange/sheet-link.js';
import { readScenarios } from '../../../src/plan/scenarios/read-scenarios.js';
import { problemCodes } from '../../../src/problem.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { patience, runs } from '../../reference/runs.js';
import { changed, changesOf } from '../schema/mutations.js';
import { globalsNow } from '../sheet/globals.js';
import { valueOf } from '../training/method/documents.js';
import { documentWith, wholeDocument } from './sheet-documents.js';

const hostile = fc.constantFrom('__proto__', 'constructor', 'prototype', 'hasOwnProperty', 'toJSON', 'valueOf', '0');
const holders = fc.constantFrom(
  [],
  ['formulas'],
  ['rows', 0],
  ['scenarios'],
  ['scenarios', 0],
  ['scenarios', 0, 'inputs'],
  ['scenarios', 0, 'sessions'],
  ['scenarios', 0, 'overrides'],
);
const values = fc.constantFrom<unknown>('1', 1, {}, { polluted: true }, ['1'], null);

/** A document with one to three changes, or with a hostile key somewhere. */
const documents = fc.oneof(
  { weight: 3, arbitrary: changesOf(wholeDocument()).map((changes) => changed(wholeDocument(), changes)) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(holders, hostile, values)
      .map(([path, key, value]): unknown => documentWith([...path, key], value)),
  },
);

describe('a sheet document changed at random', { timeout: patience }, () => {
  test('gives a sheet that can be written and read again, or typed problems, and leaves the language as it was', () => {
    const before = globalsNow();
    let [accepted, refused] = [0, 0];
    fc.assert(
      fc.property(documents, (document) => {
        const outcome = readScenarios(document, builtInMethod);
        if (outcome.ok) {
          accepted += 1;
          const again = readSheetText(writeSheetText(outcome.value), builtInMethod);
          expect(valueOf(again)).toStrictEqual(outcome.value);
        } else {
          refused += 1;
          expect(outcome.problems.length).toBeGreaterThan(0);
          for (const { path, code, allowed, value } of outcome.problems) {
            expect(path.length).toBeLessThan(200);
            expect(problemCodes).toContain(code);
            expect(() => JSON.stringify({ allowed, value })).not.toThrow();
          }
        }
      }),
      runs(5000, 100_000),
    );
    expect(globalsNow()).toStrictEqual(before);
    // Both ways are taken often: the changes are neither too wild nor too tame.
    expect(accepted).toBeGreaterThan(refused / 20);
    expect(refused).toBeGreaterThan(accepted / 20);
  });
});
