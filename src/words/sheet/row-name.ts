import type { SheetRow } from '../../plan/scenarios/rows.js';
import type { Method } from '../../training/method/document.js';
import { categoryTitle } from '../category-name.js';
import { quantityMeaning } from '../quantity-meaning.js';
import { quantityName } from '../quantity-names.js';
import type { Words } from '../words.js';

const ofKind: ReadonlySet<string> = new Set(['share', 'minutes', 'rounded']);

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
      return meaning.of === 'category' && ofKind.has(meaning.measure)
        ? categoryTitle(words, method, meaning.category)
        : words.capital(quantityName(words, method, row.quantity));
    }
  }
}
