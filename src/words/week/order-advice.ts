import type { PlanWeek } from '../../plan/week/document.js';
import { weekRules } from '../../plan/week/week-problem-of.js';
import type { Method } from '../../training/method/document.js';
import type { CategoryId } from '../../training/method/ids.js';
import type { Words } from '../words.js';

/** What a method says of the order within a day. */
export interface OrderAdvice {
  readonly text: string;
  /** Ids of entries in shared/evidence. */
  readonly sources: readonly string[];
}

/** Why a day's sessions stand in their order, and how far apart they should be. */
export function orderAdvice(words: Words, method: Method): OrderAdvice {
  const { order_reason, order_sources = [], hours_between } = weekRules(method);
  return { text: words.text(order_reason, { hours: words.hours(hours_between) }), sources: order_sources };
}

const runs: readonly CategoryId[] = ['slow', 'tempo', 'intervals'];

/** The days, counted from 0 for Monday, on which a run and strength both fall: there the order matters. */
export function daysWithBoth({ days }: Pick<PlanWeek, 'days'>): readonly number[] {
  return (days ?? []).flatMap((sessions, day) => {
    const hasRun = sessions.some(({ category }) => runs.includes(category));
    return hasRun && sessions.some(({ category }) => category === 'strength') ? [day] : [];
  });
}
