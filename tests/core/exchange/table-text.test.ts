import { csvParseRows, tsvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import published from '../../../shared/checks/csv.json' with { type: 'json' };
import { tableCsv, tableHtml, tableText, type TableBlock } from '../../../src/exchange/table-text.js';
import { runs } from '../../reference/runs.js';

const german = (value: number): string => String(value).replace('.', ',');
const one = (cell: string | number | null): TableBlock => ({
  caption: 'Week',
  head: ['', 'A'],
  rows: [{ head: 'x', cells: [cell] }],
});

/** What d3's reader finds in the one cell. */
const readBack = (cell: string | number | null): string | undefined =>
  tsvParseRows(tableText(one(cell), german))[1]?.[1];

describe('tableText(block, format)', () => {
  test('is a line for the heads and one for every row', () => {
    const block: TableBlock = {
      caption: 'The week',
      head: ['Kind', 'Exact', 'Planned', 'Sessions'],
      rows: [
        { head: 'strength', cells: [72.5, 75, '30 + 45'] },
        { head: 'intervals', cells: [0, null, ''] },
      ],
    };
    expect(tableText(block, german)).toBe(
      'Kind\tExact\tPlanned\tSessions\r\nstrength\t72,5\t75\t30 + 45\r\nintervals\t0\t\t\r\n',
    );
  });

  test.each([
    ['a\tb', '"a\tb"'],
    ['a"b', '"a""b"'],
    ['a\nb', '"a\nb"'],
    ['a\r\nb', '"a\r\nb"'],
    ['a, b; c', 'a, b; c'],
  ])('%j is written as %j', (cell, written) => {
    expect(tableText(one(cell), german)).toBe(`\tA\r\nx\t${written}\r\n`);
    expect(readBack(cell)).toBe(cell);
  });

  // OWASP, "CSV Injection".
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', '＝1', '＋1', '－1', '＠1', '=HYPERLINK("x")'])(
    'the text %j gets an apostrophe, wherever it stands',
    (text) => {
      const block: TableBlock = { caption: text, head: ['', text], rows: [{ head: text, cells: [text] }] };
      expect(tsvParseRows(tableText(block, german))).toEqual([
        ['', `'${text}`],
        [`'${text}`, `'${text}`],
      ]);
    },
  );

  test.each([
    [-5, '-5'],
    [-0.5, '-0,5'],
    [1e21, '1e+21'],
    ["'x", "'x"],
    ["'=1", "''=1"], // else it would be read as a guarded =1
    [' =1', ' =1'],
    ['1-2', '1-2'],
    ['− 5', '− 5'],
    [null, ''],
  ])('%j stays as it is', (cell, text) => {
    expect(readBack(cell)).toBe(text);
  });

  test('reads back as what was put in, whatever it is', () => {
    const texts = fc.oneof(
      fc.string({ unit: fc.constantFrom('a', '"', '\t', '\r', '\n', ',', ' ', '=', '-', 'é') }),
      fc.string({ unit: 'binary' }),
    );
    const cells = fc.oneof(texts, fc.double({ noNaN: true }), fc.constant(null));
    const width = fc.integer({ min: 1, max: 4 });
    const blocks = width.chain((count) =>
      fc.record({
        caption: texts,
        head: fc.array(texts, { minLength: count + 1, maxLength: count + 1 }),
        rows: fc.array(fc.record({ head: texts, cells: fc.array(cells, { minLength: count, maxLength: count }) }), {
          maxLength: 4,
        }),
      }),
    );
    const bare = (text: string): string => (/^'*[=+\-@\t\r\n\0＝＋－＠]/.test(text) ? `'${text}` : text);
    const shown = (cell: string | number | null): string =>
      typeof cell === 'number' ? german(cell) : bare(cell ?? '');
    fc.assert(
      fc.property(blocks, (block) => {
        const lines = [block.head.map(bare), ...block.rows.map((row) => [bare(row.head), ...row.cells.map(shown)])];
        expect(tsvParseRows(tableText(block, german))).toEqual(lines);
      }),
      runs(500, 50_000),
    );
  });
});

describe('tableCsv(block)', () => {
  test('is a line for the heads and one for every row, numbers with a point, nothing for null', () => {
    const block: TableBlock = {
      caption: 'The week',
      head: ['Kind', 'Exact', 'Planned, about', 'Sessions'],
      rows: [
        { head: 'strength', cells: [72.5, -75, '30 + 45'] },
        { head: 'a "b"', cells: [0, null, 'c\nd'] },
      ],
    };
    expect(tableCsv(block)).toBe(
      'Kind,Exact,"Planned, about",Sessions\r\nstrength,72.5,-75,30 + 45\r\n"a ""b""",0,,"c\nd"\r\n',
    );
  });

  test.each([
    ['a,b', '"a,b"'],
    ['a"b', '"a""b"'],
    ['a\r\nb', '"a\r\nb"'],
    ['a\rb', '"a\rb"'],
    ['a;b', '"a;b"'], // no rule of RFC 4180, but a reader that guesses takes it for a comma
    ['a\tb', '"a\tb"'],
    ['a b', 'a b'],
    ['', ''],
  ])('%j is written as %j', (cell, written) => {
    expect(tableCsv(one(cell))).toBe(`,A\r\nx,${written}\r\n`);
    expect(csvParseRows(tableCsv(one(cell)))[1]?.[1]).toBe(cell);
  });

  test.each(published.formulas.cases)(
    'guards what begins with $in.name (OWASP), wherever it stands',
    ({ in: given }) => {
      const text = `${given.begins}1`;
      const block: TableBlock = { caption: text, head: ['', text], rows: [{ head: text, cells: [text] }] };
      expect(csvParseRows(tableCsv(block))).toEqual([
        ['', `'${text}`],
        [`'${text}`, `'${text}`],
      ]);
      expect(tableText(block, german).split(`'${given.begins}`)).toHaveLength(4);
    },
  );

  test('reads back as what was put in, whatever it is', () => {
    const texts = fc.string({ unit: fc.constantFrom('a', '"', '\t', '\r', '\n', ',', ';', ' ', 'é', '\ud800') });
    const cells = fc.oneof(
      texts.map((text) => `a${text}`),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.constant(null),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cells, { minLength: 2, maxLength: 2 }), { maxLength: 4 }), (rows) => {
        const block = { caption: '', head: ['x', 'y', 'z'], rows: rows.map((row) => ({ head: 'h', cells: row })) };
        const [, ...read] = csvParseRows(tableCsv(block));
        const back = read.map((line, at) =>
          line.slice(1).map((cell, column) => (typeof rows[at]?.[column] === 'number' ? Number(cell) : cell)),
        );
        expect(back).toEqual(
          rows.map((row) => row.map((cell) => (typeof cell === 'number' ? cell + 0 : (cell ?? '')))),
        );
      }),
      runs(500, 50_000),
    );
  });
});

describe('tableHtml(block, format)', () => {
  test('is a table with a caption, heads of columns and of rows, and values', () => {
    const block: TableBlock = { caption: 'Week', head: ['Kind', 'Exact'], rows: [{ head: 'slow', cells: [72.5] }] };
    expect(tableHtml(block, german)).toBe(
      '<table><caption>Week</caption><thead><tr><th scope="col">Kind</th><th scope="col">Exact</th></tr></thead>' +
        '<tbody><tr><th scope="row">slow</th><td>72,5</td></tr></tbody></table>',
    );
  });

  test('escapes every text', () => {
    const text = `<b title="x">&'`;
    const escaped = '&lt;b title=&quot;x&quot;&gt;&amp;&#39;';
    const block: TableBlock = { caption: text, head: [text], rows: [{ head: text, cells: [text] }] };
    const html = tableHtml(block, () => text);
    expect(html.split(escaped)).toHaveLength(5);
    expect(html).not.toContain('<b');
  });

  test('guards against formulas too', () => {
    expect(tableHtml(one('=1+1'), german)).toContain('<td>&#39;=1+1</td>');
    expect(tableHtml(one(-1), german)).toContain('<td>-1</td>');
  });
});
