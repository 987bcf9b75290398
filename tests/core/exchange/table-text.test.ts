import { tsvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tableHtml, tableText, type TableBlock } from '../../../src/exchange/table-text.js';
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
    const bare = (text: string): string => (/^[=+\-@\t\r\n＝＋－＠]/.test(text) ? `'${text}` : text);
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
