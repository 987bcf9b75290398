import type { ClashMember, PairClash, WeekRules } from '../method/document.js';
import type { CategoryId } from '../method/ids.js';
import type { WeekProblem } from './week-problem.js';
import { daysEarlier, type DaySet } from './day-sets.js';

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

function union(members: readonly ClashMember[], taken: DaysTaken): DaySet {
  let days = 0;
  for (const member of members) days |= taken[member];
  return days;
}

/** Kinds of which no day has two: unless two of them are done on one day. */
function apart({ rules, fixed }: Pick<WeekProblem, 'rules' | 'fixed'>): readonly CategoryId[] {
  const done = fixed.filter((each) => each.isDone && rules.one_a_day.includes(each.category));
  return new Set(done.map(({ day }) => day)).size < done.length ? [] : rules.one_a_day;
}

/**
 * True where what a kind adds to the cost of a pair does not depend on the kinds beside it: no two members of a side can
 * fall on the same day.
 */
export function addsUp({ first, then }: PairClash, problem: Pick<WeekProblem, 'rules' | 'fixed'>): boolean {
  const oneADay = apart(problem);
  const isApart = (members: readonly ClashMember[]): boolean => {
    const kinds = new Set<CategoryId>(members.map((member) => (member === 'long' ? 'slow' : member)));
    return kinds.size <= 1 || [...kinds].every((kind) => oneADay.includes(kind));
  };
  return isApart(first) && isApart(then);
}
