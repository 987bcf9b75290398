import { csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import papaparse from 'papaparse';
import { describe, expect, test } from 'vitest';
import published from '../../../../shared/checks/csv.json' with { type: 'json' };
import { csvLine } from '../../../../src/exchange/csv-line.js';
import { guessDelimiter } from '../../../../src/exchange/record/guess-delimiter.js';
import { findRecords } from '../../../../src/exchange/record/find-records.js';
import { readTable, tableLimits } from '../../../../src/exchange/record/read-table.js';
import { runs } from '../../../reference/runs.js';
import { tableOf } from './sample.js';

/** Every record of a text, the titles first. */
function recordsOf(text: string): readonly (readonly string[])[] {
  const { head, rows } = tableOf(text);
  const cells = rows.map((row) => row.cells);
  return head.some((title) => title !== '') ? [head, ...cells] : cells;
}

const problemOf = (text: string): unknown => {
  const outcome = readTable(text);
  return outcome.ok ? null : outcome.problems.map(({ path, code, allowed }) => ({ path, code, allowed }));
};

describe(`published examples: ${published.records.source.cite}`, () => {
  test.each(published.records.cases)('item $in.item', ({ in: { text }, out: { records } }) => {
    expect(recordsOf(text)).toEqual(records);
    expect(csvParseRows(text)).toEqual(records);
    expect(papaparse.parse(text, { delimiter: ',', skipEmptyLines: true }).data).toEqual(records);
  });
});

describe('readTable(text)', () => {
  test.each([
    ['comma', 'Date,Kind,Minutes\n2026-11-30,slow,45\n', ['2026-11-30', 'slow', '45']],
    ['semicolon', 'Datum;Dauer;Wie\n2026-11-30;45,5;3,5\n', ['2026-11-30', '45,5', '3,5']],
    ['tab', 'Datum\tArt, wie\tDauer\n2026-11-30\tslow, flat\t45,5', ['2026-11-30', 'slow, flat', '45,5']],
    ['semicolon between decimal commas', '30.11.2026;45,5\n1.12.2026;46,5', ['30.11.2026', '45,5']],
    ['semicolon beside a single decimal comma', '30.11.2026;45,5;7', ['30.11.2026', '45,5', '7']],
    ['comma around a semicolon', '2026-11-30,45,slow,a; b', ['2026-11-30', '45', 'slow', 'a; b']],
    ['comma around quoted semicolons', '"x;y;z",b\n"1;2;3",d', ['1;2;3', 'd']],
    ['semicolon around quoted commas', '"x,y,z";b\n"1,2,3";d', ['1,2,3', 'd']],
    ['comma below a title that has a semicolon', 'My log; 2026\nDate,Min\n2026-11-30,4', ['Date', 'Min']],
    ['comma below a record that no semicolon can make', 'a,b\n"x;y",d;e;f\n1,2', ['x;y', 'd;e;f']],
  ])('finds the %s', (_, text, cells) => {
    expect(tableOf(text).rows[0]?.cells).toEqual(cells);
  });

  test.each([
    ['LF', 'a,b\n1,2\n3,4\n'],
    ['CR', 'a,b\r1,2\r3,4\r'],
    ['CRLF', 'a,b\r\n1,2\r\n3,4\r\n'],
    ['mixed', 'a,b\r1,2\r\n3,4\n'],
    ['none at the end', 'a,b\n1,2\n3,4'],
  ])('takes %s line breaks', (_, text) => {
    expect(tableOf(text)).toEqual({
      head: ['a', 'b'],
      rows: [
        { line: 2, cells: ['1', '2'] },
        { line: 3, cells: ['3', '4'] },
      ],
    });
  });

  test('counts lines where records begin, line breaks in quotes and blank lines included', () => {
    const text = 'a,b\r\n\r\n"1\r\n\n\r",2\n  \n,\n3,"4\r5"\r\n6,7';
    expect(tableOf(text).rows).toEqual([
      { line: 3, cells: ['1\r\n\n\r', '2'] },
      { line: 9, cells: ['3', '4\r5'] },
      { line: 11, cells: ['6', '7'] },
    ]);
  });

  test.each([
    ['a byte order mark in front', '\uFEFF"a",b\n1,2'],
    ['one in front of each file put to the end of another', '\n\uFEFF"a",b\n\uFEFF1,2'],
    ['spaces behind a closing quotation mark', '"a"  ,b\n1,"2"  '],
  ])('passes over %s', (_, text) => {
    expect(recordsOf(text)).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
  });

  test('takes a quotation mark inside a cell that does not begin with one for itself', () => {
    expect(recordsOf('a,b\n5" pipe,x"y"')).toEqual([
      ['a', 'b'],
      ['5" pipe', 'x"y"'],
    ]);
  });

  test('keeps a row of which only a quotation mark is left', () => {
    expect(tableOf('a,b\n"""",\n"",""\n').rows).toEqual([{ line: 2, cells: ['"', ''] }]);
  });

  test.each([
    ['a date and a number', '2026-11-30,slow,45', 1],
    ['a date and a duration', '11/30/2026,slow,1:05:30', 1],
    ['a date alone', '2026-11-30,slow,easy', 0],
    ['a number alone', 'slow,45', 0],
  ])('a first row with %s', (_, first, rows) => {
    const table = tableOf(first);
    expect(table.rows).toHaveLength(rows);
    expect(table.head.every((title) => title === '')).toBe(rows === 1);
  });

  test('has a title for every column of the widest row', () => {
    expect(tableOf(' a \n1,2,3\n4').head).toEqual(['a', '', '']);
  });

  test.each([
    ["'=1+1", '=1+1'],
    ["''=1", "'=1"],
    ["'－1", '－1'],
    ["'x", "'x"],
    ["'", "'"],
    ['=1', '=1'],
  ])('the cell %j is read as %j', (cell, text) => {
    expect(tableOf(`${cell},b\nc,${cell}`)).toEqual({ head: [text, 'b'], rows: [{ line: 2, cells: ['c', text] }] });
  });

  test.each([
    ['', 'missing', {}],
    ['\uFEFF \r\n\t', 'missing', {}],
    [',,\n"",\n', 'missing', {}],
    ['a,b\n"1,2\n3,4\n', 'damaged', { line: 2 }],
    ['a,b\n1,2\n\n3,"4"5\n', 'damaged', { line: 4 }],
    ['a,b\n"1\n",2\n3,"', 'damaged', { line: 4 }],
    ['"', 'damaged', { line: 1 }],
    ['a,b\n1,"""', 'damaged', { line: 2 }],
  ])('%j is %s', (text, code, allowed) => {
    expect(problemOf(text)).toEqual([{ path: '', code, allowed }]);
  });

  test('takes as much as is allowed, and no more', () => {
    const { characters, rows, columns } = tableLimits;
    const problem = (path: string, most: number): unknown => [{ path, code: 'too-long', allowed: { most } }];
    expect(problemOf('a'.repeat(characters))).toBeNull();
    expect(problemOf('a'.repeat(characters + 1))).toEqual(problem('', characters));
    expect(problemOf('a\n'.repeat(rows + 1))).toBeNull();
    expect(problemOf('a\n'.repeat(rows + 2))).toEqual(problem('rows', rows));
    expect(problemOf('2026-11-30,1\n'.repeat(rows))).toBeNull();
    expect(problemOf('2026-11-30,1\n'.repeat(rows + 1))).toEqual(problem('rows', rows));
    expect(problemOf('a,b\n'.repeat(rows + 1) + '\n,\n'.repeat(rows))).toBeNull();
    expect(problemOf('a,b\n'.repeat(rows + 1) + ',\n'.repeat(9 * rows))).toEqual(problem('rows', rows));
    expect(problemOf(`a${',b'.repeat(columns - 1)}`)).toBeNull();
    expect(problemOf(`a${',b'.repeat(columns)}`)).toEqual(problem('columns', columns));
  });

  test('reads what is written as d3 does', () => {
    const cell = fc.oneof(
      fc.string({ unit: fc.constantFrom('a', '"', '\t', '\r', '\n', ',', ';', ' ', "'", '1', '\uFEFF') }),
      fc.string({ unit: 'binary', maxLength: 4 }),
    );
    // No row is blank, none looks like a session, none begins with a mark.
    const record = fc.array(cell, { minLength: 1, maxLength: 3 }).map((cells) => ['x', ...cells]);
    fc.assert(
      fc.property(fc.array(record, { minLength: 1, maxLength: 4 }), (records) => {
        const text = records.map(csvLine).join('');
        expect(csvParseRows(text)).toEqual(records);
        expect(papaparse.parse(text, { delimiter: ',', newline: '\r\n', skipEmptyLines: true }).data).toEqual(records);
        const bare = (each: string): string => (/^'+[=+\-@\t\r\n\0＝＋－＠]/.test(each) ? each.slice(1) : each);
        expect(tableOf(text).rows.map(({ cells }) => cells)).toEqual(records.slice(1).map((each) => each.map(bare)));
      }),
      runs(2000, 100_000),
    );
  });

  test('finds the records and cells that d3 finds, or says that quotation marks do not match', () => {
    // d3 takes any character behind a closing quotation mark for a comma; here each text is one that has no such place.
    const hostile = fc.string({ unit: fc.constantFrom('a', '"', '"', ',', '\r', '\n'), maxLength: 12 });
    let sound = 0;
    fc.assert(
      fc.property(hostile, (text) => {
        const { records, damagedLine } = findRecords(text, ',');
        if (damagedLine !== null) {
          expect(text).toContain('"');
          return;
        }
        sound += 1;
        const isBlank = (cells: readonly string[]): boolean => cells.length === 1 && cells[0] === '';
        const byD3 = csvParseRows(text);
        expect(records.map(({ cells }) => cells).filter((cells) => !isBlank(cells))).toEqual(
          byD3.filter((cells) => !isBlank(cells)),
        );
        if (byD3.length > 0 && guessDelimiter(text) === ',') {
          const { rows } = tableOf(`x,y\n${text}\nx,y\n`);
          const told = csvParseRows(text).filter((cells) => cells.some((cell) => cell.trim() !== ''));
          expect(rows.map(({ cells }) => cells)).toEqual([...told, ['x', 'y']]);
        }
      }),
      runs(5000, 200_000),
    );
    expect(sound).toBeGreaterThan(0);
  });
});
