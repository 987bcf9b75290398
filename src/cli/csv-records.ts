import { csvParseRows } from 'd3-dsv';

/** A record of a CSV text, and the line on which it begins, counted from 1. */
export interface CsvRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

export interface CsvReading {
  readonly records: readonly CsvRecord[];
  /** The line of the first record whose quotation marks do not match; nothing from there on can be trusted. */
  readonly brokenLine: number | null;
}

/** Reads CSV by RFC 4180, whichever line ends it has. Blank lines count and are passed over. */
export function readCsvRecords(text: string): CsvReading {
  const broken = brokenRecord(text);
  const sound = broken === null ? text : text.slice(0, broken);
  let line = 1;
  const records = csvParseRows(sound).map((cells): CsvRecord => {
    const record = { line, cells };
    line += 1 + cells.reduce((sum, cell) => sum + lineEnds(cell), 0);
    return record;
  });
  return {
    records: records.filter(({ cells }) => cells.length > 1 || cells[0]?.trim() !== ''),
    brokenLine: broken === null ? null : lineEnds(sound) + 1,
  };
}

const lineEnds = (text: string): number => text.match(/\r\n|\n|\r/g)?.length ?? 0;

// A field, quoted whole or not at all, and what ends it. d3-dsv lets misplaced quotation marks pass.
const field = /(?:"[^"]*(?:""[^"]*)*"|[^",\r\n]*)(,|\r\n|\n|\r|$)/y;

/** Where the first record begins that RFC 4180 does not allow, or null. */
function brokenRecord(text: string): number | null {
  let record = 0;
  for (field.lastIndex = 0; field.lastIndex < text.length;) {
    const end = field.exec(text)?.[1];
    if (end === undefined) return record;
    if (end !== ',') record = field.lastIndex;
  }
  return null;
}
