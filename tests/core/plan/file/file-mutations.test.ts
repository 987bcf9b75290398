import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPlanFileText, writePlanFileText } from '../../../../src/exchange/plan-file.js';
import { writePlanFile } from '../../../../src/plan/file/write-plan-file.js';
import { problemCodes, type Outcome, type Problem } from '../../../../src/problem.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { patience, runs } from '../../../reference/runs.js';
import { validator } from '../../schema/published.js';
import { globalsNow } from '../../sheet/globals.js';
import { valueOf } from '../../training/method/documents.js';
import { fileOf, wholeFile } from './file-documents.js';
import { mutated, slipped } from './file-mutations.js';
import { namesAPlace } from './path-in.js';
import { anyFiles } from './random-files.js';

const isFile = validator('file');
const isSheet = (document: unknown): boolean => isFile({ format: 'weekwright-file', version: 1, sheet: document });
const read = (text: string) => readPlanFileText(text, builtInMethod);

/** What goes across fields, or comes from the method: JSON Schema cannot say it, and only the reader sees it. */
const beyondShape: readonly RegExp[] = [
  /^sheet\.(formulas|scenarios\[\d\]\.overrides)\.\w+: unknown-name$/,
  /^sheet\.(reference|(scenarios\[\d\]\.)?rulesOff\[\d+\]): (unknown-name|duplicate)$/,
  /^sheet\.(rows|scenarios)\[\d\]\.id: duplicate$/,
  /^sheet\.method: other-method$/,
  /^sheet\.scenarios\[\d\]\.inputs\.(hours|strengthCap): out-of-range$/,
  /^sheet\.scenarios\[\d\]\.week\.(free\[\d\]|(pinned|done)\[\d+\]\.category): duplicate$/,
  /^sheet\.scenarios\[\d\]\.week\.((pinned|done)\[\d+\]\.minutes|sessions\.\w+\[\d\]): not-a-step$/,
  /^sheet\.scenarios\[\d\]\.season\.(hours|mostHours|byHand\[\d+\]\.hours): out-of-range$/,
  /^sheet\.scenarios\[\d\]\.season\.((events|byHand)\[\d+\]\.)?(start|date): (no-date|duplicate|missing|too-far-apart)$/,
  /^sheet\.scenarios\[\d\]\.season\.weeks: not-one-of$/,
  /^onShow: not-one-of$/,
  /^running\.(race\.(seconds|date)|restingHeart): out-of-range$/,
  /^(running\.(today|race\.date)|record\[\d+\]\.date): no-date$/,
  /^strength\.(equipment\[\d\]|lifted\[\d+\]\.movement): duplicate$/,
  /^strength\.(forms\.[\w-]+|lifted\[\d+\]\.movement): not-one-of$/,
  /^strength\.lifted\[\d+\]\.repetitions: out-of-range$/,
  /^strength\.lifted: too-long$/,
];

function expectProblems(problems: readonly Problem[]): void {
  expect(problems.length).toBeGreaterThan(0);
  for (const { path, code, value, allowed } of problems) {
    expect(problemCodes).toContain(code);
    expect(path.length).toBeLessThan(250);
    expect(() => JSON.stringify({ value, allowed })).not.toThrow();
    expect(typeof value === 'object' && value !== null).toBe(false);
  }
}

function expectSame(outcome: Outcome<ReturnType<typeof fileOf>>): void {
  const text = writePlanFileText(valueOf(outcome));
  expect(writePlanFileText(valueOf(read(text)))).toBe(text);
  expect([isFile(JSON.parse(text)), isFile.errors]).toEqual([true, null]);
}

describe('a plan file changed at random', { timeout: patience }, () => {
  test('is a file by the published schema too, or is refused with problems that name its fields', () => {
    const before = globalsNow();
    const counts = { read: 0, refused: 0, schema: 0 };
    fc.assert(
      fc.property(
        fc.oneof(
          mutated(wholeFile()),
          anyFiles.chain((file) => mutated(writePlanFile(file))),
        ),
        (document) => {
          const text = JSON.stringify(document);
          const parsed: unknown = JSON.parse(text);
          const outcome = read(text);
          expect(Object.keys(Object.prototype)).toEqual([]);
          const isPublished = isFile(parsed) || isSheet(parsed);
          if (isPublished) counts.schema += 1;
          counts[outcome.ok ? 'read' : 'refused'] += 1;
          if (outcome.ok) {
            expect([isPublished, isFile.errors]).toEqual([true, isFile.errors]);
            expectSame(outcome);
            return;
          }
          expectProblems(outcome.problems);
          for (const problem of outcome.problems)
            expect([problem, namesAPlace(problem, parsed)]).toEqual([problem, true]);
          const told = outcome.problems.map(({ path, code }) => `${path}: ${code}`);
          // Texts and numbers too large for any place are seen before the document is.
          if (isPublished)
            expect(told.filter((each) => !beyondShape.some((pattern) => pattern.test(each)))).toEqual([]);
        },
      ),
      runs(1000, 100_000),
    );
    expect(globalsNow()).toStrictEqual(before);
    // All ways are taken often: the changes are neither too wild nor too tame.
    expect(counts.read).toBeGreaterThan(counts.refused / 20);
    expect(counts.refused).toBeGreaterThan(counts.read / 20);
    expect(counts.schema).toBeGreaterThan(counts.read);
  });

  test('as a text with slips is a file, or is refused with a line that it has', () => {
    const before = globalsNow();
    const texts = [writePlanFileText(fileOf(wholeFile())), JSON.stringify(wholeFile())] as const;
    const counts = { read: 0, json: 0, document: 0 };
    fc.assert(
      fc.property(fc.oneof(slipped(texts[0]), slipped(texts[1])), (text) => {
        const outcome = read(text);
        expect(Object.keys(Object.prototype)).toEqual([]);
        if (outcome.ok) {
          counts.read += 1;
          expectSame(outcome);
          return;
        }
        expectProblems(outcome.problems);
        const [first] = outcome.problems;
        counts[first?.code === 'not-json' ? 'json' : 'document'] += 1;
        if (first?.code !== 'not-json') return;
        const line = Number(first.allowed['line']);
        expect([first.path, Number.isInteger(line)]).toEqual(['', true]);
        expect(line).toBeGreaterThanOrEqual(1);
        expect(line).toBeLessThanOrEqual(text.split(/\r\n|[\r\n]/).length);
      }),
      runs(500, 50_000),
    );
    expect(globalsNow()).toStrictEqual(before);
    expect(Math.min(counts.read, counts.json, counts.document)).toBeGreaterThan(10);
  });
});
