import type { Derivation } from '../sheet/derivation.js';
import type { Method } from '../training/method/document.js';
import { categoryName } from './category-name.js';
import { quantityMeaning } from './quantity-meaning.js';
import { quantityName } from './quantity-names.js';
import { quantityValue } from './quantity-value.js';
import type { Words } from './words.js';

const titled: ReadonlySet<string> = new Set(['minutes', 'rounded', 'share']);

/** The question that a derivation answers: "Why 72 minutes of strength?" */
export function derivationTitle(
  words: Words,
  method: Method,
  derivation: Pick<Derivation, 'quantity' | 'value'>,
): string {
  const { quantity: id, value: amount } = derivation;
  const meaning = quantityMeaning(method, id);
  const value = quantityValue(words, method, { id, value: amount });
  if (meaning.of === 'category' && titled.has(meaning.measure) && amount !== null) {
    const kind = categoryName(words, method, meaning.category);
    return words.say(`derivation.title.${meaning.measure}`, { value, kind });
  }
  return words.say('derivation.title.other', { value, name: words.capital(quantityName(words, method, id)) });
}
