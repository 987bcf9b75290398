import type { Derivation } from '../sheet/derivation.js';
import type { Method, NumberInput } from '../training/method/document.js';
import { dayQuantities } from '../training/method/week-names.js';
import { quantityValue } from './quantity-value.js';
import type { Words } from './words.js';

/** Where a quantity comes from that no formula gives; null for a formula. */
export function derivationOrigin(words: Words, method: Method, derivation: Derivation): string | null {
  switch (derivation.kind) {
    case 'formula':
      return null;
    case 'constant':
      return words.say('derivation.origin.constant');
    case 'block':
      return words.say(blockKey(derivation), { step: words.minutes(method.rounding.step) });
    case 'input':
      return inputOrigin(words, method, derivation.quantity);
  }
}

const blockKey = ({ formula }: Derivation): string =>
  blocks.some((block) => block === formula) ? `derivation.origin.${formula}` : 'derivation.origin.block';

const blocks = ['sainte-lague', 'week', 'sessions', 'checks'] as const;

function inputOrigin(words: Words, method: Method, id: string): string {
  const range = rangeOf(method, id);
  if (dayQuantities.some((each) => each === id)) return words.say('derivation.origin.day');
  if (!range) return words.say('derivation.origin.choice');
  const value = (amount: number): string => quantityValue(words, method, { id, value: amount });
  return words.say('derivation.origin.input', { least: value(range.least), most: value(range.most) });
}

function rangeOf({ inputs }: Method, id: string): NumberInput | null {
  return id === 'weekly_hours' || id === 'strength_cap' ? inputs[id] : null;
}
