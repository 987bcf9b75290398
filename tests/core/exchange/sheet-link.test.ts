import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSheetText, sheetTextLimits, writeSheetText } from '../../../src/exchange/sheet-link.js';
import { mostScenarios } from '../../../src/plan/scenarios/document.js';
import { readScenarios } from '../../../src/plan/scenarios/read-scenarios.js';
import { writeScenarios } from '../../../src/plan/scenarios/write-scenarios.js';
import type { Problem } from '../../../src/problem.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { patience, runs } from '../../reference/runs.js';
import { inShort } from '../in-short.js';
import { valueOf } from '../training/method/documents.js';
import { anySheets } from './random-sheets.js';

const smallest = '{"format":"weekwright-sheet","version":1,"method":"weekwright","scenarios":[{}]}';
const read = (text: string) => readSheetText(text, builtInMethod);
const problemsOf = (text: string): readonly Problem[] => {
  const outcome = read(text);
  return outcome.ok ? [] : outcome.problems;
};

describe('readSheetText(writeSheetText(sheet), method)', { timeout: patience }, () => {
  test('is the sheet', () => {
    fc.assert(
      fc.property(anySheets, (sheet) => {
        const text = writeSheetText(sheet);
        // Six scenarios of long texts may be more than a link holds; the document is the same then, only not as a text.
        const long = text.length > sheetTextLimits.characters;
        const again = long ? readScenarios(JSON.parse(text), sheet.method) : readSheetText(text, sheet.method);
        expect(valueOf(again)).toStrictEqual(sheet);
        expect(writeSheetText(valueOf(again))).toBe(text);
      }),
      runs(300, 20_000),
    );
  });

  test('does not change the sheet, and is plain data', () => {
    fc.assert(
      fc.property(anySheets, (sheet) => {
        const before = structuredClone(sheet);
        const document = writeScenarios(sheet);
        expect(JSON.parse(JSON.stringify(document))).toStrictEqual(document);
        expect(sheet).toStrictEqual(before);
      }),
      runs(50, 5000),
    );
  });
});

describe('writeSheetText(sheet)', () => {
  test('leaves out what is empty', () => {
    const sheet = valueOf(read(smallest));
    const inputs = '{"hours":4,"phase":"build","level":"developing","event":"half-marathon","strengthCap":120}';
    expect(writeSheetText(sheet)).toBe(smallest.replace('{}', `{"id":"scenario-1","inputs":${inputs}}`));
  });
});

describe('a text that is no sheet', () => {
  const { characters, depth } = { characters: 64_000, depth: 8 };
  const nested = (levels: number): string => `${'['.repeat(levels)}${']'.repeat(levels)}`;
  const rows: readonly [text: string, code: Problem['code'], allowed: Problem['allowed']][] = [
    ['', 'not-json', { line: 1 }],
    ['{', 'not-json', { line: 1 }],
    ['"open', 'not-json', { line: 1 }],
    ['"open\\', 'not-json', { line: 1 }],
    ["{'format': 1}", 'not-json', { line: 1 }],
    [`${smallest}${smallest}`, 'not-json', { line: 1 }],
    [smallest.slice(0, -1), 'not-json', { line: 1 }],
    [`\u{feff}${smallest}`, 'not-json', { line: 1 }],
    ['null', 'wrong-type', { expected: 'object' }],
    ['[]', 'wrong-type', { expected: 'object' }],
    ['"weekwright-sheet"', 'wrong-type', { expected: 'object' }],
    [nested(depth), 'wrong-type', { expected: 'object' }],
    [nested(depth + 1), 'too-deep', { most: depth }],
    ['['.repeat(characters), 'too-deep', { most: depth }],
    ['{"a":'.repeat(9), 'too-deep', { most: depth }],
    [`"${'x'.repeat(characters - 1)}`, 'not-json', { line: 1 }],
    [`"${'\\'.repeat(characters - 1)}`, 'not-json', { line: 1 }],
    [`"${'x'.repeat(characters)}`, 'too-long', { most: characters }],
    ['['.repeat(characters + 1), 'too-long', { most: characters }],
  ];
  test.each(rows.map((row) => [inShort(row[0]), ...row] as const))('%s', (_, text, code, allowed) => {
    expect(problemsOf(text)).toMatchObject([{ path: '', code, allowed }]);
  });

  test('shows no more than its beginning', () => {
    expect(problemsOf(`  ${'x'.repeat(100)}`)).toMatchObject([{ value: 'x'.repeat(40) }]);
  });
});

describe('a text at the limits is read:', () => {
  const characters = 64_000;
  test.each([
    ['just under the longest', characters - 1],
    ['the longest', characters],
  ])('%s', (_, length) => {
    expect(read(smallest.padEnd(length)).ok).toBe(true);
    expect(read(smallest.padEnd(characters + 1)).ok).toBe(false);
  });

  test('brackets and quotation marks inside texts do not count as nesting', () => {
    const name = JSON.stringify(`\\"${'['.repeat(20)}{"\\`);
    const sheet = valueOf(read(smallest.replace('{}', `{"name":${name}}`)));
    expect(sheet.scenarios[0].name).toBe(JSON.parse(name));
  });

  test('as many scenarios as there may be', () => {
    const many = (count: number): string => smallest.replace('{}', Array(count).fill('{}').join(','));
    expect(valueOf(read(many(mostScenarios))).scenarios).toHaveLength(mostScenarios);
    expect(problemsOf(many(mostScenarios + 1))).toMatchObject([{ path: 'scenarios', code: 'too-long' }]);
  });
});
