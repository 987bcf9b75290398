import type { Plan } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import { categoryIds, type CategoryId } from '../training/method/ids.js';
import { categoryTitle } from './category-name.js';
import type { Words } from './words.js';

/** One kind of training in the table of the week, in words. */
export interface KindRow {
  readonly category: CategoryId;
  readonly name: string;
  readonly share: string;
  readonly exact: string;
  readonly planned: string;
  /** Empty where there are no minutes. */
  readonly sessions: string;
}

/** The table of the week, one row a kind of training, in the order of `categoryIds`. */
export function kindRows(words: Words, method: Method, plan: Plan): readonly KindRow[] {
  return categoryIds.map((category) => ({
    category,
    name: categoryTitle(words, method, category),
    share: words.share(plan.split.shares[category]),
    exact: words.minutesShort(plan.minutes[category]),
    planned: words.minutesShort(plan.rounded[category]),
    sessions: words.sessions(plan.sessions[category]),
  }));
}
