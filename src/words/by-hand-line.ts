import type { ByHand, Derivation } from '../sheet/derivation.js';
import type { Method } from '../training/method/document.js';
import { formulaWords } from './formula-words.js';
import { quantityName } from './quantity-names.js';
import { quantityValue } from './quantity-value.js';
import type { Words } from './words.js';

/**
 * What a person's hand did to a quantity, in a sentence.
 *
 * @example '100 minutes instead of 72 minutes: 100'
 */
export function byHandLine(
  words: Words,
  method: Method,
  { quantity, value, byHand }: Pick<Derivation, 'quantity' | 'value'> & { readonly byHand: ByHand },
): string {
  const text = (amount: number | null): string => quantityValue(words, method, { id: quantity, value: amount });
  const { kind, formula, before, to } = byHand;
  return words.say(`derivation.by-hand.${kind}`, {
    before: text(before),
    after: text(value),
    formula: formula === null ? '' : formulaWords(words, { method, value: quantity }, formula),
    to: words.list(to.map((id) => quantityName(words, method, id))),
  });
}
