import type { Method } from './document.js';
import type { Status, Text } from './ids.js';
import { categoryQuantity, splitShareQuantity } from './names.js';

/** How well a number is founded; null and empty where it is mere arithmetic or a person's own entry. */
export interface Provenance {
  /** Null for mere arithmetic and for a person's own entry. */
  readonly status: Status | null;
  /** Ids of entries in shared/evidence. */
  readonly sources: readonly string[];
  /** Why it is so, for whoever asks. */
  readonly reason: Text | null;
}

const arithmetic: Provenance = { status: null, sources: [], reason: null };

/** Rounding is a published method: see `apportion`. */
const rounding: Provenance = { status: 'published', sources: ['sainte-lague'], reason: { key: 'reason.rounding' } };

/** Where the number of a quantity comes from, while the split `splitId` is in use. */
export function provenanceOf(method: Method, quantity: string, splitId: string): Provenance {
  return tableOf(method, splitId).get(quantity) ?? arithmetic;
}

const tables = new WeakMap<Method, Map<string, ReadonlyMap<string, Provenance>>>();

/** Looked up for every quantity of every plan, and the same for a method and a split: so it is worked out once. */
function tableOf(method: Method, splitId: string): ReadonlyMap<string, Provenance> {
  const known = tables.get(method)?.get(splitId);
  if (known) return known;
  const table = buildTable(method, splitId);
  tables.set(method, new Map(tables.get(method)).set(splitId, table));
  return table;
}

function buildTable({ categories, splits, quantities = [] }: Method, splitId: string): ReadonlyMap<string, Provenance> {
  const table = new Map<string, Provenance>();
  for (const { id, status, sources = [], reason } of splits)
    for (const { id: category } of categories) {
      const provenance = { status, sources, reason };
      table.set(splitShareQuantity(id, category), provenance);
      if (id === splitId) table.set(categoryQuantity(category, 'share'), provenance);
    }
  for (const { id, status } of categories) {
    for (const what of ['shortest', 'typical', 'longest'] as const)
      table.set(categoryQuantity(id, what), { status, sources: [], reason: null });
    table.set(categoryQuantity(id, 'rounded'), rounding);
  }
  table.set('total_rounded', rounding);
  for (const { id, status } of quantities) table.set(id, { status, sources: [], reason: null });
  return table;
}
