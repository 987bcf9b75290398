import { reservedNames } from '../../sheet/formula/functions.js';
import { quantityIds } from '../../sheet/sheet.js';
import { expandMethod } from '../../training/method/expand.js';
import { weekQuantities } from '../../training/method/week-names.js';
import { unusableKeys, type ScenarioSheet } from './document.js';

/** Letters that a name in formulas takes from a row's title; with a number behind it, it is still short enough. */
const longest = 36;

/**
 * How formulas call a new row, from the name that a person gave it: small letters, digits and underscores, unlike every
 * name that the sheet has.
 *
 * @example newRowId(sheet, 'Hard minutes') // 'hard_minutes'
 */
export function newRowId({ method, rows }: ScenarioSheet, name: string): string {
  const plain = name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  const words = plain.replace(/[^a-z0-9]+/g, '_').replace(/^_+|_+$/g, '');
  const base = (/^[a-z]/.test(words) ? words : `row_${words}`).slice(0, longest).replace(/_+$/, '');
  const model = expandMethod(method);
  const taken = new Set([
    ...quantityIds(model),
    ...weekQuantities,
    ...Object.keys(model.names),
    ...rows.map(({ id }) => id),
    ...reservedNames,
    ...unusableKeys,
  ]);
  let id = base;
  for (let count = 2; taken.has(id); count += 1) id = `${base}_${count}`;
  return id;
}
