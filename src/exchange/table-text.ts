import { csvLine } from './csv-line.js';
import { guarded } from './formula-guard.js';

/** A block of a table, as it can be pasted elsewhere. */
export interface TableBlock {
  readonly caption: string;
  /** A title for every column, that of the row heads first. */
  readonly head: readonly string[];
  /** A cell without a value is null. */
  readonly rows: readonly { readonly head: string; readonly cells: readonly (string | number | null)[] }[];
}

/** How a number is written in the language of the page: `12,5` in German. */
export type NumberFormat = (value: number) => string;

/**
 * A block as tab-separated lines without its caption, quoted as RFC 4180 quotes: where a cell has a tab, a quotation mark
 * or a line break. Texts that a spreadsheet would take for a formula get an apostrophe in front.
 */
export function tableText(block: TableBlock, format: NumberFormat): string {
  return tableLines(block, format)
    .map((line) => `${line.map(quoted).join('\t')}\r\n`)
    .join('');
}

/**
 * A block as CSV of RFC 4180 without its caption: commas, CRLF, numbers as machines write them (`12.5`), nothing where a
 * cell is null. Texts are guarded as in `tableText`. Who saves it as a file puts a byte order mark in front.
 */
export function tableCsv(block: TableBlock): string {
  return tableLines(block, String).map(csvLine).join('');
}

/** A block as an HTML table, every text of it escaped; formulas are guarded here too, as spreadsheets paste this first. */
export function tableHtml(block: TableBlock, format: NumberFormat): string {
  const [head = [], ...rows] = tableLines(block, format);
  const titles = head.map((title) => `<th scope="col">${escaped(title)}</th>`).join('');
  const body = rows.map(([title = '', ...cells]) => {
    const values = cells.map((cell) => `<td>${escaped(cell)}</td>`).join('');
    return `<tr><th scope="row">${escaped(title)}</th>${values}</tr>`;
  });
  const caption = `<caption>${escaped(guarded(block.caption))}</caption>`;
  return `<table>${caption}<thead><tr>${titles}</tr></thead><tbody>${body.join('')}</tbody></table>`;
}

function tableLines({ head, rows }: TableBlock, format: NumberFormat): string[][] {
  const shown = (cell: string | number | null): string =>
    typeof cell === 'number' ? format(cell) : guarded(cell ?? '');
  return [head.map(guarded), ...rows.map((row) => [guarded(row.head), ...row.cells.map(shown)])];
}

const quoted = (cell: string): string => (/["\t\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
  '\r': '&#13;', // a parser makes a line feed of a bare one
};

const escaped = (text: string): string => text.replace(/[&<>"'\r]/g, (character) => entities[character] ?? '');
