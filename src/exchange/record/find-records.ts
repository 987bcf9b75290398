/** A record of a table. */
export interface TableRecord {
  /** The line on which it begins, counted from 1. */
  readonly line: number;
  /** At least one; without the quotation marks around them. */
  readonly cells: readonly string[];
  /** Whether a quotation mark stands in a cell that does not begin with one, which RFC 4180 does not allow. */
  readonly hasStrayQuote: boolean;
}

export interface FoundRecords {
  readonly records: readonly TableRecord[];
  /** The line of the first record whose quotation marks do not match; nothing from there on can be trusted. */
  readonly damagedLine: number | null;
}

const byteOrderMark = '\uFEFF';
const isBreak = (character: string | undefined): boolean => character === '\n' || character === '\r';

/**
 * Finds the first `most` records by RFC 4180, whichever line breaks there are, in time linear in the length of the text.
 * Blank lines are passed over. As readers commonly do, a quotation mark inside a cell that does not begin with one stands
 * for itself, and spaces may follow a closing one.
 */
export function findRecords(text: string, delimiter: string, most = Infinity): FoundRecords {
  const records: TableRecord[] = [];
  let line = 1;
  for (let at = 0; at < text.length && records.length < most;) {
    // Files put end to end have a mark at the beginning of each.
    while (text[at] === byteOrderMark) at += 1;
    const found = endOfRecord(text, at, delimiter);
    if (!found) return { records, damagedLine: line };
    const whole = text.slice(at, found.end);
    const { cells, hasStrayQuote } = found;
    if (whole.trim() !== '') records.push({ line, cells, hasStrayQuote });
    // Only quoted cells have line breaks inside.
    line += whole.includes('"') ? linesOf(whole) : 1;
    at = found.end + (text[found.end] === '\r' && text[found.end + 1] === '\n' ? 2 : 1);
  }
  return { records, damagedLine: null };
}

const linesOf = (text: string): number => 1 + (text.match(/\r\n?|\n/g)?.length ?? 0);

interface Ended extends Omit<TableRecord, 'line'> {
  /** The place behind its last character: a line break or the end of the text. */
  readonly end: number;
}

/** What is in a record, and where it ends; null where its quotation marks do not match. */
function endOfRecord(text: string, start: number, delimiter: string): Ended | null {
  const cells: string[] = [];
  let [at, hasStrayQuote] = [start, false];
  for (;;) {
    const quoted = text[at] === '"' ? quotedCell(text, at) : null;
    const behind = quoted?.behind ?? at;
    for (at = behind; at < text.length && text[at] !== delimiter && !isBreak(text[at]); at += 1) {
      hasStrayQuote ||= text[at] === '"';
    }
    // A quoted cell ends where its quotation marks do; without a closing one, behind the end of the text.
    if (quoted && (at > behind || at > text.length)) return null;
    cells.push(quoted ? quoted.cell : text.slice(behind, at));
    if (text[at] !== delimiter) return { end: at, cells, hasStrayQuote };
    at += 1;
  }
}

/** What stands in quotation marks, and the place behind them and the spaces that follow; behind the text where they are open. */
function quotedCell(text: string, opening: number): { readonly cell: string; readonly behind: number } {
  let closing = text.indexOf('"', opening + 1);
  while (closing !== -1 && text[closing + 1] === '"') closing = text.indexOf('"', closing + 2);
  if (closing === -1) return { cell: '', behind: text.length + 1 };
  let behind = closing + 1;
  while (text[behind] === ' ') behind += 1;
  return { cell: text.slice(opening + 1, closing).replaceAll('""', '"'), behind };
}
