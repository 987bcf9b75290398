/** A cell with one of these is quoted: RFC 4180, section 2, items 6 and 7; semicolon and tab, for readers that guess. */
const isQuoted = /[",;\t\r\n]/;

const quoted = (cell: string): string => (isQuoted.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/** Cells as a line of RFC 4180, with its line break: `csvLine(['a', 'b,c'])` is 'a,"b,c"' and CRLF. */
export const csvLine = (cells: readonly string[]): string => `${cells.map(quoted).join(',')}\r\n`;
