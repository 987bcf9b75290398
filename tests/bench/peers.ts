import type { FormulaBook } from '../../src/sheet/formula/compiled-formula.js';
import type { SheetModel } from '../../src/sheet/model.js';
import { createColumn, createSheet } from '../../src/sheet/sheet.js';
import { MathjsPeer } from './mathjs-peer.js';
import type { Runner } from './measure.js';
import { SpreadsheetPeer } from './spreadsheet-peer.js';

/** What happens to a sheet: one input is set, in every column to another value. */
export interface Work {
  readonly model: SheetModel;
  readonly book: FormulaBook;
  readonly input: string;
  /** The input's value in each column at each event. */
  readonly values: (event: number) => readonly number[];
  /** The quantities whose values are the result, of all columns; the first one is read after every event. */
  readonly watched: readonly string[];
}

/** A peer as the race needs it: sets the input, reads a quantity. */
interface Seat {
  readonly set: (values: readonly number[]) => void;
  readonly value: (id: string, column: number) => number;
}

/** The engine, mathjs's own evaluation and a general spreadsheet engine, at the same work. */
export function peersOf(work: Work): [engine: Runner, mathjs: Runner, spreadsheet: Runner] {
  return [
    runner("weekwright's engine", work, engineSeat(work)),
    runner('mathjs, its compiled nodes', work, mathjsSeat(work)),
    runner('a spreadsheet engine', work, spreadsheetSeat(work)),
  ];
}

function runner(name: string, { values, watched }: Work, { set, value }: Seat): Runner {
  const [first = ''] = watched;
  const run = (event: number): number => {
    set(values(event));
    return value(first, 0);
  };
  const result = (event: number): number[] => {
    run(event);
    return values(event).flatMap((_, column) => watched.map((id) => value(id, column)));
  };
  return { name, run, result };
}

function engineSeat({ model, book, input, values }: Work): Seat {
  const sheet = createSheet(model, book);
  const columns = values(0).map(() => createColumn(sheet));
  return {
    set: (wanted) => {
      columns.forEach((column, index) => column.set({ [input]: wanted[index] ?? NaN }));
    },
    value: (id, index) => columns[index]?.value(id) ?? NaN,
  };
}

function mathjsSeat({ model, input, values }: Work): Seat {
  const columns = values(0).map(() => new MathjsPeer(model));
  return {
    set: (wanted) => {
      columns.forEach((column, index) => {
        column.set(input, wanted[index] ?? NaN);
      });
    },
    value: (id, index) => columns[index]?.value(id) ?? NaN,
  };
}

function spreadsheetSeat({ model, input, values }: Work): Seat {
  const peer = new SpreadsheetPeer(model, values(0).length);
  return {
    set: (wanted) => {
      peer.set(input, wanted);
    },
    value: (id, column) => peer.value(id, column),
  };
}
