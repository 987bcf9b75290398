import { cellAt, type RawTable } from './raw-table.js';

/** The text under which `kinds` of a mapping has a cell: `kindKey(' Easy ')` is 'easy'. */
export const kindKey = (cell: string): string => cell.trim().toLowerCase().normalize('NFC');

/** The texts of a column that differ by `kindKey`, each as it is first met, without the space around it; no empty one. */
export function kindsIn(table: RawTable, column: number): readonly string[] {
  const kinds = new Map<string, string>();
  for (const row of table.rows) {
    const text = cellAt(row, column);
    const key = kindKey(text);
    if (text !== '' && !kinds.has(key)) kinds.set(key, text);
  }
  return [...kinds.values()];
}
