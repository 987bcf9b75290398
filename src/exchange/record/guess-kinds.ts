import { categoryIds, type CategoryId } from '../../training/method/ids.js';
import { kindKey } from './kinds-in.js';
import type { Mapping, Vocabulary } from './mapping.js';
import { saysOneOf } from './says-one-of.js';

/** Tells the kind of training that a text says: by its word or its id, else by the one kind of which a word stands in it. */
export function kindSayer(kinds: Vocabulary['kinds']): (text: string) => CategoryId | null {
  const sayers = categoryIds.map((id) => ({ id, says: saysOneOf([id, ...kinds[id]]) }));
  return (text) => {
    const said = sayers.map(({ id, says }) => ({ id, how: says(text) }));
    const whole = said.find(({ how }) => how === 2);
    const [only, other] = said.filter(({ how }) => how === 1);
    return whole?.id ?? (other ? null : (only?.id ?? null));
  };
}

/** What each text means, as far as words tell it. */
export function guessKinds(texts: readonly string[], kinds: Vocabulary['kinds']): Mapping['kinds'] {
  const said = kindSayer(kinds);
  // A text may be `__proto__`: this makes an own property of it.
  return Object.fromEntries(texts.map((text) => [kindKey(text), said(text)]));
}
