import type { ClashRule, PairClash, WeekRules } from '../../../src/training/method/document.js';

type PairShape = Pick<PairClash, 'kind' | 'cost' | 'first' | 'then' | 'days_apart'>;
interface CountShape {
  readonly kind: Exclude<ClashRule['kind'], 'pair'>;
  readonly cost: number;
}

/** A clash with the words that every clash has. */
export function clash(shape: PairShape | CountShape, id = 'own'): ClashRule {
  const words = { id, name: id, says: id, reason: id, status: 'assumption' } as const;
  return shape.kind === 'pair' ? { ...words, ...shape } : { ...words, ...shape };
}

const quality = ['tempo', 'intervals'] as const;

/**
 * The table of the design, written down a second time: what a layout should not have, and its cost. All of it is the
 * project's own assumption; that hard runs and strength want a day between them is common practice, no source.
 */
export const defaultClashes: readonly ClashRule[] = [
  clash({ kind: 'pair', first: quality, then: quality, days_apart: 1, cost: 8 }, 'quality-neighbours'),
  clash({ kind: 'pair', first: ['strength'], then: ['strength'], days_apart: 1, cost: 6 }, 'strength-neighbours'),
  clash({ kind: 'pair', first: ['strength'], then: quality, days_apart: 1, cost: 4 }, 'strength-before-quality'),
  clash({ kind: 'pair', first: quality, then: ['long'], days_apart: 1, cost: 3 }, 'long-after-quality'),
  clash({ kind: 'pair', first: ['strength'], then: quality, days_apart: 0, cost: 2 }, 'strength-with-quality'),
  clash({ kind: 'crowded-day', cost: 1 }, 'two-sessions'),
  clash({ kind: 'missed-minutes', cost: 1 }, 'missed-minutes'),
  clash({ kind: 'session-count', cost: 2 }, 'session-count'),
];

/** How the default method lays a week. */
export const defaultRules: WeekRules = {
  sessions_a_day: 2,
  rest_days: 1,
  one_a_day: quality,
  order_in_day: ['intervals', 'tempo', 'slow', 'cross', 'strength'],
  hours_between: 6,
  order_reason: 'own',
  clashes: defaultClashes,
  templates: [],
};
