import type { ClashMember, PairClash, WeekRules } from '../method/document.js';
import { categoryIds, type CategoryId } from '../method/ids.js';
import { countDays, daysEarlier, type DaySet } from './day-sets.js';

/** Days on which each kind has a session, and the day of the long run (as a set; empty where there is none). */
export type DaysTaken = Readonly<Record<ClashMember, DaySet>>;

/** The pairs that cost something. */
export function pairClashes({ clashes }: WeekRules): PairClash[] {
  return clashes.filter((clash): clash is PairClash => clash.kind === 'pair' && clash.cost > 0);
}

/** The cost of a clash that is no pair; 0 where the method has none of that kind. */
export function countCost({ clashes }: WeekRules, kind: 'crowded-day' | 'missed-minutes' | 'session-count'): number {
  return clashes.reduce((sum, clash) => sum + (clash.kind === kind ? clash.cost : 0), 0);
}

/** The days on which the first of a pair falls, with the second the right number of days later. */
export function pairDays({ first, then, days_apart }: PairClash, taken: DaysTaken): DaySet {
  return union(first, taken) & daysEarlier(union(then, taken), days_apart);
}

/** What all pairs cost together. */
export function pairCost(pairs: readonly PairClash[], taken: DaysTaken): number {
  let cost = 0;
  for (const pair of pairs) cost += pair.cost * countDays(pairDays(pair, taken));
  return cost;
}

export const noDaysTaken: DaysTaken = { slow: 0, tempo: 0, intervals: 0, cross: 0, strength: 0, long: 0 };

function union(members: readonly ClashMember[], taken: DaysTaken): DaySet {
  let days = 0;
  for (const member of members) days |= taken[member];
  return days;
}

/**
 * True where what a kind adds to the cost of a pair does not depend on the kinds beside it: no two members of a side can
 * fall on the same day.
 */
export function addsUp({ first, then }: PairClash, { one_a_day }: WeekRules): boolean {
  const isApart = (members: readonly ClashMember[]): boolean => {
    const kinds = new Set<CategoryId>(members.map((member) => (member === 'long' ? 'slow' : member)));
    return kinds.size <= 1 || [...kinds].every((kind) => one_a_day.includes(kind));
  };
  return isApart(first) && isApart(then);
}

export const kindIndex = (category: CategoryId): number => categoryIds.indexOf(category);
