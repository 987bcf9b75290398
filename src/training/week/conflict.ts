import { canLay } from './lay.js';
import type { WeekProblem } from './week-problem.js';
import type { Wish } from './wish.js';
import { wishesIn, withoutWishes } from './wishes-in.js';

/**
 * Wishes of a problem that cannot hold together, and that could without any one of them; empty where something fits. Of
 * the sets found by dropping wishes from the first and from the last, the smaller one.
 */
export function conflictIn(problem: WeekProblem): Wish[] {
  const wishes = wishesIn(problem);
  if (canLay(problem)) return [];
  const [one, other] = [wishes, [...wishes].reverse()].map((order) => narrowed(problem, wishes, order));
  if (!one || !other) return [];
  return other.length < one.length ? other : one;
}

/** Drops one wish after the other, as long as what is left cannot hold together. */
function narrowed(problem: WeekProblem, wishes: readonly Wish[], order: readonly Wish[]): Wish[] {
  let kept: Wish[] = [...wishes];
  for (const wish of order) {
    const rest = kept.filter((each) => each !== wish);
    const dropped = wishes.filter((each) => !rest.includes(each));
    if (!canLay(withoutWishes(problem, dropped))) kept = rest;
  }
  return kept;
}
