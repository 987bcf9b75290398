import type { PlanWeek } from '../../plan/week/document.js';
import type { Words } from '../words.js';

/**
 * How good a week is, and that none is better; or that it is still being looked for, or that there is none.
 *
 * @example 'This week costs 3; no week costs less.'
 */
export function weekVerdict(words: Words, { state, cost }: Pick<PlanWeek, 'state' | 'cost'>): string {
  const key = state === 'laid' && cost === 0 ? 'week.verdict.laid.free' : `week.verdict.${state}`;
  return words.say(key, { cost: words.number(cost ?? 0) });
}
