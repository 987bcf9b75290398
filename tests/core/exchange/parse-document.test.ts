import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDocument } from '../../../src/exchange/parse-document.js';
import type { Problem } from '../../../src/problem.js';
import { patience, runs } from '../../reference/runs.js';
import { valueOf } from '../training/method/documents.js';

const limits = { characters: 40, depth: 3 };
const problemsOf = (text: string): readonly Problem[] => {
  const outcome = parseDocument(text, limits);
  return outcome.ok ? [] : outcome.problems;
};

describe('JSON from outside', () => {
  test('is what the platform makes of it', { timeout: patience }, () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        const large = { characters: 1_000_000, depth: 1000 };
        expect(valueOf(parseDocument(text, large))).toStrictEqual(JSON.parse(text));
      }),
      runs(500, 20_000),
    );
  });

  test('is read up to its limits, and no further', () => {
    expect(valueOf(parseDocument('[[[]]]', limits))).toEqual([[[]]]);
    expect(valueOf(parseDocument('1'.padEnd(40), limits))).toBe(1);
    expect(problemsOf('[[[[]]]]')).toMatchObject([{ code: 'too-deep', allowed: { most: 3 } }]);
    expect(problemsOf('1'.padEnd(41))).toMatchObject([{ code: 'too-long', allowed: { most: 40 } }]);
  });

  test('has its length looked at before its depth, and its depth before its grammar', () => {
    expect(problemsOf('['.repeat(41))).toMatchObject([{ code: 'too-long' }]);
    expect(problemsOf('[[[[ oh')).toMatchObject([{ code: 'too-deep' }]);
  });

  test('that is none has the line of its fault told, and no more of it than its beginning', () => {
    expect(problemsOf('[1,\n2,\n]')).toEqual([
      { path: '', value: '[1,\n2,\n]', code: 'not-json', allowed: { line: 3 } },
    ]);
    const [problem] = problemsOf(`\n\n  ${'x'.repeat(36)}`);
    expect(problem).toMatchObject({ value: 'x'.repeat(36), allowed: { line: 3 } });
    expect(parseDocument('x'.repeat(100), { ...limits, characters: 100 })).toMatchObject({
      problems: [{ value: 'x'.repeat(40) }],
    });
  });

  test('may name anything, and changes nothing by it', () => {
    const value = valueOf(parseDocument('{"__proto__": {"polluted": 1}}', limits));
    expect(Object.hasOwn(Object(value) as object, '__proto__')).toBe(true);
    expect(Object.keys(Object.prototype)).toEqual([]);
  });
});
