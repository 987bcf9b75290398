import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { format } from 'prettier';
import { describe, expect, test } from 'vitest';
import document from '../../shared/accessibility/criteria.json';
import { statementOf } from '../tools/accessibility-statement.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const { criteria } = document;

/** WCAG 2.2 without 4.1.1, which it removed: 31 criteria of level A and 24 of level AA. */
const levels = {
  A:
    '1.1.1 1.2.1 1.2.2 1.2.3 1.3.1 1.3.2 1.3.3 1.4.1 1.4.2 2.1.1 2.1.2 2.1.4 2.2.1 2.2.2 2.3.1 2.4.1 2.4.2 2.4.3 2.4.4 ' +
    '2.5.1 2.5.2 2.5.3 2.5.4 3.1.1 3.2.1 3.2.2 3.2.6 3.3.1 3.3.2 3.3.7 4.1.2',
  AA:
    '1.2.4 1.2.5 1.3.4 1.3.5 1.4.3 1.4.4 1.4.5 1.4.10 1.4.11 1.4.12 1.4.13 2.4.5 2.4.6 2.4.7 2.4.11 2.5.7 2.5.8 ' +
    '3.1.2 3.2.3 3.2.4 3.3.3 3.3.4 3.3.8 4.1.3',
};

describe('the criteria of WCAG 2.2', () => {
  test.each(Object.entries(levels))('of level %s are there, each once', (level, ids) => {
    const ours = criteria.filter((each) => each.level === level).map(({ id }) => id);
    expect(ours.toSorted()).toEqual(ids.split(' ').toSorted());
  });

  test('are 55, in the order of their numbers, each with a name of its own', () => {
    const byNumber = (one: string, other: string): number => one.localeCompare(other, 'en', { numeric: true });
    const ids = criteria.map(({ id }) => id);
    expect(ids).toHaveLength(55);
    expect(ids).toEqual(ids.toSorted(byNumber));
    expect(new Set(criteria.map(({ name }) => name)).size).toBe(55);
  });

  test('are met, partly met, or not applicable, and say how in calm words', () => {
    const states = new Set(criteria.map(({ status }) => status));
    expect([...states].filter((status) => !['met', 'partly', 'not applicable'].includes(status))).toEqual([]);
    expect(criteria.filter(({ how }) => !/^[^!]+[.]$/.test(how)).map(({ id }) => id)).toEqual([]);
  });

  test('name tests that there are, no test twice', () => {
    const named = criteria.flatMap(({ id, checks }) => checks.map((check) => ({ id, check })));
    expect(named.length).toBeGreaterThan(55);
    expect(named.filter(({ check }) => !/^tests\/.+\.test\.ts$/.test(check) || !existsSync(root + check))).toEqual([]);
    expect(criteria.filter(({ checks }) => new Set(checks).size < checks.length)).toEqual([]);
  });

  test('are not said to be met where nobody has looked', () => {
    const unseen = criteria.filter((each) => each.status === 'met' && each.checks.length === 0 && !each.byHand);
    expect(unseen.map(({ id }) => id)).toEqual([]);
  });
});

describe('the statement', () => {
  const text = readFileSync(`${root}shared/accessibility/statement.md`, 'utf8');

  test('is made from the criteria (else: npm run compile)', async () => {
    expect(text).toBe(await format(statementOf(document), { parser: 'markdown', printWidth: 120, singleQuote: true }));
  });

  test('has a line for each criterion, and says what was not tested', () => {
    const lines = text.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
    expect(lines.filter(([, id = '']) => /^\d/.test(id)).map((cells) => cells.slice(1, 5))).toEqual(
      criteria.map(({ id, name, level, status }) => [id, name, level, status]),
    );
    expect(text).toMatch(/no screen reader and no real phone/);
  });
});
