import { ages } from '../plan/ages.js';
import { cautionIds, type CautionId } from '../training/method/check-rules.js';
import type { Method } from '../training/method/document.js';
import type { Words } from './words.js';

/** A usual caution, in a clinic's own wording where its method has one. */
const usualCaution = (words: Words, { checks }: Pick<Method, 'checks'>, id: CautionId): string =>
  words.text(checks?.cautions?.[id] ?? { key: `usual-caution.${id}` });

/** The usual cautions that an age calls for, in years; none where it is not told. */
export function cautionsOfAge(words: Words, method: Pick<Method, 'checks'>, age: number | null): readonly string[] {
  if (age === null) return [];
  if (age < ages.adult) return [usualCaution(words, method, 'under-18')];
  return age >= ages.older ? [usualCaution(words, method, 'older')] : [];
}

/** All usual cautions. */
export const usualCautions = (words: Words, method: Pick<Method, 'checks'>): readonly string[] =>
  cautionIds.map((id) => usualCaution(words, method, id));
