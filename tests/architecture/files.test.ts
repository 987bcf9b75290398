import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { covers, floors } from './floors.mjs';
import { readSource, sourceFiles } from './imports.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

const isWritten = (file: string): boolean => !readSource(file).startsWith('// Written by `npm run ');
const countLines = (file: string): number => readSource(file).trimEnd().split('\n').length;

describe('sizes of the source files that people write', () => {
  const written = sourceFiles.filter(isWritten);

  test('no file is longer than 300 lines', () => {
    expect(written.filter((file) => countLines(file) > 300)).toEqual([]);
  });

  test('nine in ten have at most 170 lines', () => {
    const long = written.filter((file) => countLines(file) > 170);
    expect(long.length, long.join('\n')).toBeLessThanOrEqual(written.length / 10);
  });
});

describe('pure floors', () => {
  const pure = floors.filter(({ isPure }) => isPure).flatMap(({ files }) => files);
  // What is written by `npm run compile` is data: titles of papers among it.
  const files = sourceFiles.filter((file) => isWritten(file) && pure.some((path) => covers(path, file)));

  test.each([
    ['a clock', /\bDate\.now\b|\bnew Date\(\)|\bperformance\b/],
    ['randomness', /\bMath\.random\b|\bcrypto\b/],
    ['code from text', /\beval\(|\bnew Function\b/],
  ])('have %s nowhere', (_, pattern) => {
    expect(files.filter((file) => pattern.test(readSource(file)))).toEqual([]);
  });
});

describe('tracked files', () => {
  const list = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], { cwd: root });
  const isText = /(\.(m?[jt]s|json|md|html|css|svg|npmrc)|\/run)$/;
  const tracked = list
    .toString()
    .split('\0')
    .filter((file) => isText.test(file));
  const filesWith = (pattern: RegExp): string[] =>
    tracked.filter((file) => pattern.test(readFileSync(root + file, 'utf8')));

  test('name no package registry', () => {
    expect(filesWith(/\bregistry\.\w+\.\w+/)).toEqual([]);
    expect(filesWith(/^ +"resolved": *"https?:/m)).toEqual([]);
  });

  test('name no path of one machine', () => {
    expect(filesWith(/(^|["'`( =])\/(home|root|tmp|Users|work)\/\w/m)).toEqual([]);
  });
});
