import type { CategoryId } from '../training/method/ids.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** Something the runner should know of this plan; words for `code` are in the locales or in the method's rule. */
export interface Notice {
  readonly code: NoticeCode;
  /** Good to know, or mind your health. */
  readonly level: 'note' | 'caution';
  /** The rule that says it, where one does. */
  readonly rule?: string;
  /** The category it is about. */
  readonly category?: CategoryId;
  /** The quantity it is about. */
  readonly quantity?: string;
  /** What the code needs: minutes, exact and rounded; a quantity before and after; how many others give way. */
  readonly values: Readonly<Record<string, number>>;
}
export const noticeCodes = [
  'rule',
  'by-hand',
  'total-rounded',
  'every-second-week',
  'pick-dropped',
  'quantity-failed',
] as const;
/** What there is to say: the words of a rule (see `rule`), or what happened to a total, a category or a quantity. */
export type NoticeCode = (typeof noticeCodes)[number];
