import fc from 'fast-check';
import { expect, test } from 'vitest';
import { guessMapping } from '../../../../src/exchange/record/guess-mapping.js';
import type { Mapping } from '../../../../src/exchange/record/mapping.js';
import { readSessions } from '../../../../src/exchange/record/read-sessions.js';
import { readTable } from '../../../../src/exchange/record/read-table.js';
import type { RawTable } from '../../../../src/exchange/record/raw-table.js';
import { writeSessions } from '../../../../src/exchange/record/write-sessions.js';
import { problemCodes } from '../../../../src/problem.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import type { DoneSession } from '../../../../src/training/record/done-session.js';
import { dayOf } from '../../../../src/training/season/iso-date.js';
import { patience, runs } from '../../../reference/runs.js';
import { doneSession } from './random-sessions.js';
import { head, kinds, vocabulary } from './sample.js';

type Mutation = (text: string) => string;

/** The place of a part of a text, for a number from 0 to 1. */
const placeIn = (length: number, at: number): number => Math.min(length - 1, Math.floor(length * at));
const fraction = fc.double({ min: 0, max: 1, noNaN: true });

const swapCells = (first: number, second: number): Mutation => {
  return (text) => {
    const parts = text.split(/([,;\t\r\n]+)/);
    const [left, right] = [first, second].map((at) => 2 * placeIn((parts.length + 1) / 2, at));
    if (left === undefined || right === undefined) return text;
    [parts[left], parts[right]] = [parts[right] ?? '', parts[left] ?? ''];
    return parts.join('');
  };
};

/** Puts something in the place of one of the matches. */
const replaceOne = (pattern: RegExp, at: number, put: (match: string) => string): Mutation => {
  return (text) => {
    const found = [...text.matchAll(pattern)];
    const match = found[placeIn(found.length, at)];
    if (!match) return text;
    return text.slice(0, match.index) + put(match[0]) + text.slice(match.index + match[0].length);
  };
};

const nasty = fc.oneof(
  fc.constantFrom(
    '"',
    '""',
    '"""',
    ',',
    ';',
    '\t',
    '\r',
    '\n',
    '\r\n',
    '\0',
    '\u0007',
    '\u001b[31m',
    '\u2028',
    '\uFEFF',
  ),
  fc.constantFrom('\ud800', '\udfff', '__proto__', 'constructor', 'hasOwnProperty', 'NaN', '-0', '1e999', '-1e999'),
  fc.constantFrom('9'.repeat(400), '0.'.repeat(30), '1:'.repeat(40), '1h'.repeat(30), ' '.repeat(200), "'".repeat(9)),
  fc.constantFrom(
    '99999-12-31',
    '2026-02-30',
    '00:00:00',
    '24:00:01',
    '=1+1',
    "'=x",
    '<b>',
    '٣',
    '1,5',
    '1.5',
    '45 min',
  ),
  fc.string({ unit: 'binary', maxLength: 5 }),
);

const mutation: fc.Arbitrary<Mutation> = fc.oneof(
  fc.tuple(fraction, fraction).map(([first, second]) => swapCells(first, second)),
  fraction.map((at) => replaceOne(/"/g, at, () => '')),
  fraction.map((at) => replaceOne(/[,;\t]/g, at, (delimiter) => delimiter + delimiter)),
  fraction.map((at) => replaceOne(/[,;\t\r\n]+/g, at, () => '')),
  fc.tuple(fraction, nasty).map(([at, text]) => replaceOne(/[^,;\t\r\n]+/g, at, () => text)),
  fc.tuple(fraction, nasty).map(([at, text]) => replaceOne(/./gsu, at, (character) => character + text)),
  fc.constantFrom(';', '\t', '|').map((delimiter) => (text: string) => text.replaceAll(',', delimiter)),
  fc.constantFrom('\r', '\n', '\n\n').map((end) => (text: string) => text.replaceAll('\r\n', end)),
  fc.constant((text: string) => text.replace(/^[^\r\n]*[\r\n]+/, '')),
  fraction.map((at) => (text: string) => text.slice(0, placeIn(text.length, at))),
  fraction.map((at) => replaceOne(/\d{4}-\d\d-\d\d/g, at, (date) => date.split('-').reverse().join('.'))),
);

const text: fc.Arbitrary<string> = fc
  .tuple(
    fc.array(doneSession, { minLength: 1, maxLength: 6 }),
    fc.constantFrom(kinds, { ...kinds, slow: 'a "b", c', cross: '__proto__' }),
    fc.array(mutation, { minLength: 1, maxLength: 8 }),
  )
  .map(([sessions, names, mutations]) => {
    return mutations.reduce((so, mutate) => mutate(so), writeSessions(sessions, head, names));
  });

const column = fc.option(fc.constantFrom(0, 1, 2, 3, 4, 99, -1, 0.5, NaN), { nil: null });
const mapping: fc.Arbitrary<Mapping> = fc.record({
  columns: fc.record({ date: column, category: column, minutes: column, effort: column }),
  dates: fc.constantFrom('ymd', 'dmy', 'mdy'),
  times: fc.constantFrom('minutes', 'hours', 'hms', 'ms'),
  kinds: fc.dictionary(
    fc.constantFrom('slow running', '__proto__', 'constructor', 'strength', ''),
    fc.option(fc.constantFrom(...categoryIds), { nil: null }),
  ),
});

const isWithin = (value: number, { least, most }: { least: number; most: number }): boolean =>
  value >= least && value <= most;

function isFine({ date, category, minutes, effort }: DoneSession): boolean {
  const isLength = Number.isInteger(minutes) && isWithin(minutes, { least: 1, most: 1440 });
  const isEffort = effort === null || isWithin(effort, { least: 0, most: 10 });
  return dayOf(date) !== null && categoryIds.includes(category) && isLength && isEffort;
}

function expectAllTold(table: RawTable, meant: Mapping): void {
  const { read, unread, unusedColumns } = readSessions(table, meant);
  const lines = [...read, ...unread].map(({ line }) => line).sort((left, right) => left - right);
  expect(lines).toEqual(table.rows.map(({ line }) => line));
  expect(read.filter(({ session }) => !isFine(session))).toEqual([]);
  expect(unread.filter(({ problems }) => problems.length === 0)).toEqual([]);
  const problems = unread.flatMap((each) => each.problems);
  expect(problems.filter(({ code, path }) => !problemCodes.includes(code) || path === '')).toEqual([]);
  expect(unusedColumns.length).toBeLessThanOrEqual(table.head.length);
  const sessions = read.map(({ session }) => session);
  const again = readTable(writeSessions(sessions, head, kinds));
  if (!again.ok) throw new Error('what is written is no table');
  expect(readSessions(again.value, guessMapping(again.value, vocabulary)).read.map((each) => each.session)).toEqual(
    sessions,
  );
}

test(
  'a table is refused with a reason, or each of its rows is read within the limits or told as unread',
  () => {
    let [tries, tables, rows, told] = [0, 0, 0, 0];
    fc.assert(
      fc.property(text, mapping, (given, meant) => {
        const outcome = readTable(given);
        tries += 1;
        if (!outcome.ok) {
          expect(outcome.problems.map(({ code }) => code)).toHaveLength(1);
          expect(['damaged', 'missing', 'too-long']).toContain(outcome.problems[0]?.code);
          return;
        }
        const table = outcome.value;
        expect(table.rows.every(({ cells }) => cells.length <= table.head.length)).toBe(true);
        const guessed = guessMapping(table, vocabulary);
        tables += 1;
        rows += table.rows.length;
        told += readSessions(table, guessed).read.length;
        expectAllTold(table, guessed);
        expectAllTold(table, meant);
      }),
      runs(10_000, 200_000),
    );
    // The tables are not so broken that nothing is tried: most are tables, and a good part of their rows is read.
    expect(tables).toBeGreaterThan(tries / 2);
    expect(told).toBeGreaterThan(rows / 5);
  },
  patience,
);
