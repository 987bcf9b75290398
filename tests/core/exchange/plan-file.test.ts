import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  planFileLimits,
  readPlanFileText,
  writePlanFileText,
  writePlanLinkText,
} from '../../../src/exchange/plan-file.js';
import { writeSheetText } from '../../../src/exchange/sheet-link.js';
import { writePlanFile } from '../../../src/plan/file/write-plan-file.js';
import type { Problem } from '../../../src/problem.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { patience, runs } from '../../reference/runs.js';
import { fileOf, smallestFile, wholeFile } from '../plan/file/file-documents.js';
import { anyFiles } from '../plan/file/random-files.js';
import { validator } from '../schema/published.js';
import { valueOf } from '../training/method/documents.js';
import { anySheets } from './random-sheets.js';

const isFile = validator('file');
const problemsOf = (text: string): readonly Problem[] => {
  const outcome = readPlanFileText(text, builtInMethod);
  return outcome.ok ? [] : outcome.problems;
};

describe('readPlanFileText(writePlanFileText(file), method)', { timeout: patience }, () => {
  test('is the file, for a link too, and what is written is a file by the published schema', () => {
    fc.assert(
      fc.property(anyFiles, (file) => {
        const before = structuredClone(file);
        const document = writePlanFile(file);
        expect([isFile(document), isFile.errors]).toEqual([true, null]);
        expect(JSON.parse(JSON.stringify(document))).toStrictEqual(document);
        const text = writePlanFileText(file);
        expect(valueOf(readPlanFileText(text, file.sheet.method))).toStrictEqual(file);
        expect(valueOf(readPlanFileText(writePlanLinkText(file), file.sheet.method))).toStrictEqual(file);
        expect(file).toStrictEqual(before);
      }),
      runs(150, 20_000),
    );
  });

  test('is the file of a sheet alone, as links of the first version have it', () => {
    fc.assert(
      fc.property(anySheets, (sheet) => {
        const file = valueOf(readPlanFileText(writeSheetText(sheet), sheet.method));
        expect(file).toStrictEqual({
          ...{ name: '', sheet, onShow: sheet.reference, running: null, strength: null, checks: null, record: [] },
          handout: { runner: '', contact: '', note: '' },
        });
      }),
      runs(50, 5000),
    );
  });
});

describe('the text of a file', () => {
  const file = fileOf(wholeFile());

  test('has a line for every field, and ends with a line', () => {
    const lines = writePlanFileText(file).split('\n');
    expect(lines.slice(0, 4)).toEqual([
      '{',
      '  "format": "weekwright-file",',
      '  "version": 1,',
      '  "name": "Spring",',
    ]);
    expect(lines.slice(-2)).toEqual(['}', '']);
  });

  test('is in a link on one line, and as short as it gets', () => {
    expect(writePlanLinkText(file)).toBe(JSON.stringify(JSON.parse(writePlanFileText(file))));
  });

  test('may begin with a byte order mark, and with one only', () => {
    const text = writePlanFileText(file);
    expect(valueOf(readPlanFileText(`\uFEFF${text}`, builtInMethod))).toStrictEqual(file);
    expect(problemsOf(`\uFEFF\uFEFF${text}`)).toMatchObject([{ path: '', code: 'not-json', allowed: { line: 1 } }]);
  });
});

describe('a text that is no file', () => {
  const { characters, depth } = { characters: 1_000_000, depth: 10 };
  const smallest = JSON.stringify(smallestFile());
  const nested = (levels: number): string => `${'['.repeat(levels)}${']'.repeat(levels)}`;

  test('has the limits that it is told to have', () => {
    expect(planFileLimits).toEqual({ characters, depth });
  });

  test.each<readonly [string, string, Problem['code'], Problem['allowed']]>([
    ['nothing', '', 'not-json', { line: 1 }],
    ['half of one', smallest.slice(0, -1), 'not-json', { line: 1 }],
    ['a fault on the third line', '{\n  "format": "weekwright-file",\n  version: 1\n}', 'not-json', { line: 3 }],
    ['a fault on the third line, after a mark', '\uFEFF{\n\n  version: 1\n}', 'not-json', { line: 3 }],
    ['too deep', nested(depth + 1), 'too-deep', { most: depth }],
    ['as deep as may be, and no object', nested(depth), 'wrong-type', { expected: 'object' }],
    ['too long', smallest.padEnd(characters + 1), 'too-long', { most: characters }],
    ['long, and a string that does not end', `"${'x'.repeat(characters - 1)}`, 'not-json', { line: 1 }],
    ['long, and of one escape after the other', `"${'\\n'.repeat(characters / 2 - 1)}`, 'not-json', { line: 1 }],
    ['long, and of brackets', '['.repeat(characters), 'too-deep', { most: depth }],
    ['long, and of lines', '\n'.repeat(characters), 'not-json', { line: 1 }],
    ['null', 'null', 'wrong-type', { expected: 'object' }],
    ['a list', '[]', 'wrong-type', { expected: 'object' }],
    ['a number', '5', 'wrong-type', { expected: 'object' }],
  ])('%s', (_, text, code, allowed) => {
    expect(problemsOf(text)).toMatchObject([{ path: '', code, allowed }]);
  });

  test('is read up to the longest that there may be', () => {
    expect(problemsOf(smallest.padEnd(characters))).toEqual([]);
  });

  test('shows no more than its beginning', () => {
    expect(problemsOf(`  ${'x'.repeat(100)}`)).toMatchObject([{ value: 'x'.repeat(40) }]);
  });
});
