import type { TableBlock } from '../../exchange/table-text.js';
import { headed } from '../../words/joined.js';
import { rowName } from '../../words/sheet/row-name.js';
import { gridCell } from './grid-cell.js';
import type { GridShape } from './grid-moves.js';
import { nameOf } from './scenario-names.js';
import type { SheetView } from './sheet-view.js';

/** A block of the grid as a table to copy; rows that head a group are left out, their name goes in front of its rows. */
export function tableOf(view: SheetView, { rows, columns }: GridShape): TableBlock {
  const { words, bench } = view;
  const { store, groups } = bench;
  const planned = store.planned.filter(({ scenario }) => columns.includes(scenario.id));
  const reference = store.of(store.sheet.reference);
  const lines = groups.flatMap((group) =>
    group.rows
      .filter((row) => rows.includes(row.id))
      .map((row) => ({
        head: headed(words, words.say(`sheet.group.${group.id}`), rowName(words, bench.method, row)),
        cells: planned.map((each) => gridCell(view, row, { planned: each, reference: reference ?? each }).value),
      })),
  );
  return {
    caption: words.say('sheet.quantities'),
    head: [words.say('sheet.quantity'), ...planned.map(({ scenario }) => nameOf(view, scenario))],
    rows: lines,
  };
}
