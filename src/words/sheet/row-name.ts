import type { SheetRow } from '../../plan/scenarios/rows.js';
import type { Method } from '../../training/method/document.js';
import { categoryTitle } from '../category-name.js';
import { quantityMeaning } from '../quantity-meaning.js';
import { quantityName } from '../quantity-names.js';
import type { Words } from '../words.js';

/** What of a kind of training has a group of its own. */
export const ofGroups: ReadonlySet<string> = new Set(['share', 'minutes', 'rounded']);

/** Rows with a name of their own: sums, of which their group says the rest, and what has no unit in its name. */
const named: ReadonlySet<string> = new Set([
  'total_rounded',
  'planned_minutes',
  'running_minutes',
  'running_share',
  'strength_cap',
]);

/** The head of a row inside its group: the kind of training alone where the group says the rest. */
export function rowName(words: Words, method: Method, row: SheetRow): string {
  switch (row.kind) {
    case 'sessions':
      return categoryTitle(words, method, row.category);
    case 'rule': {
      const rule = method.rules.find(({ id }) => id === row.rule);
      return rule ? words.capital(words.text(rule.name)) : row.rule;
    }
    case 'quantity': {
      const meaning = quantityMeaning(method, row.quantity);
      if (meaning.of === 'category' && ofGroups.has(meaning.measure))
        return categoryTitle(words, method, meaning.category);
      const name = named.has(row.quantity)
        ? words.say(`sheet.row.${row.quantity}`)
        : quantityName(words, method, row.quantity);
      return words.capital(name);
    }
  }
}
