import type { Problem } from '../problem.js';
import { readCsvRecords, type CsvRecord } from './csv-records.js';
import { daysAs, daysIn } from './days.js';
import { numberOrText } from './number-or-text.js';
import { columnFields, rosterColumns } from './roster-fields.js';
import type { Roster, RosterEntry, RosterFault } from './roster.js';

/** A roster with a header line; an empty cell is a field left out. Nothing is planned by a faulty header. */
export function readCsvRoster(text: string): Roster {
  const { records, brokenLine } = readCsvRecords(text);
  const [header, ...lines] = records;
  const broken = brokenLine === null ? [] : [{ line: brokenLine, name: '', key: 'roster.quotes', values: {} }];
  if (!header) return { entries: [], faults: broken.length > 0 ? broken : [emptyRoster()] };
  const columns = header.cells.map((cell) => cell.trim());
  const headerFaults = columnProblems(columns).map((problem) => ({ line: header.line, name: '', problem }));
  if (headerFaults.length > 0) return { entries: [], faults: headerFaults };
  const isWhole = ({ cells }: CsvRecord): boolean => cells.length === columns.length;
  return {
    entries: lines.filter(isWhole).map((record) => entryOf(record, columns)),
    faults: [...lines.filter((record) => !isWhole(record)).map((record) => lengthFault(record, columns)), ...broken],
  };
}

/** A field of a request by the name of its column. */
function asMet(problem: Problem): Problem {
  const column = Object.entries(columnFields).find(([, field]) => field === problem.path)?.[0];
  return { ...problem, path: column ?? daysAs('days', problem.path) };
}

function emptyRoster(): RosterFault {
  return { line: 1, name: '', key: 'roster.empty', values: { columns: rosterColumns.join(',') } };
}

function columnProblems(columns: readonly string[]): Problem[] {
  return columns.flatMap((column, index): Problem[] => {
    const path = column === '' ? `column ${index + 1}` : column;
    if (!rosterColumns.includes(column))
      return [{ path, value: column, code: 'unknown-field', allowed: { fields: rosterColumns } }];
    return columns.indexOf(column) < index ? [{ path, value: column, code: 'duplicate', allowed: {} }] : [];
  });
}

function lengthFault({ line, cells }: CsvRecord, columns: readonly string[]): RosterFault {
  const name = cells[columns.indexOf('name')]?.trim() ?? '';
  return { line, name, key: 'roster.fields', values: { given: cells.length, expected: columns.length } };
}

function entryOf({ line, cells }: CsvRecord, columns: readonly string[]): RosterEntry {
  const cell = (column: string): string => cells[columns.indexOf(column)]?.trim() ?? '';
  const fields = Object.entries(columnFields).filter(([column]) => cell(column) !== '');
  const value = (column: string): number | string => (isNumeric(column) ? numberOrText(cell(column)) : cell(column));
  const request = Object.fromEntries(fields.map(([column, field]) => [field, value(column)] as const));
  const week = cell('days') === '' ? {} : { week: daysIn(cell('days'), /\s+/) };
  return { line, name: cell('name'), request: { ...request, ...week }, asMet };
}

const isNumeric = (column: string): boolean => column === 'hours' || column === 'strength_cap';
