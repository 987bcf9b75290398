import { cautionIds, type CautionId } from '../training/method/check-rules.js';
import type { Method } from '../training/method/document.js';
import type { Words } from './words.js';

/** A usual caution, in a clinic's own wording where its method has one. */
export const usualCaution = (words: Words, { checks }: Pick<Method, 'checks'>, id: CautionId): string =>
  words.text(checks?.cautions?.[id] ?? { key: `usual-caution.${id}` });

/** All usual cautions. */
export const usualCautions = (words: Words, method: Pick<Method, 'checks'>): readonly string[] =>
  cautionIds.map((id) => usualCaution(words, method, id));
