import { canLay } from './lay.js';
import type { Steps } from './steps.js';
import type { WeekProblem } from './week-problem.js';
import type { Wish } from './wish.js';
import { wishesIn, withoutWishes } from './wishes-in.js';

/**
 * Wishes of a problem in which nothing fits that cannot hold together, and that could without any one of them. Of the sets
 * found by dropping wishes from the first and from the last, the smaller one. It can be worked out step by step.
 */
export function* conflictIn(problem: WeekProblem): Steps<Wish[]> {
  const wishes = wishesIn(problem);
  const one = yield* narrowed(problem, wishes, wishes);
  const other = yield* narrowed(problem, wishes, [...wishes].reverse());
  return other.length < one.length ? other : one;
}

/** Drops one wish after the other, as long as what is left cannot hold together. */
function* narrowed(problem: WeekProblem, wishes: readonly Wish[], order: readonly Wish[]): Steps<Wish[]> {
  let kept: Wish[] = [...wishes];
  for (const wish of order) {
    const rest = kept.filter((each) => each !== wish);
    const dropped = wishes.filter((each) => !rest.includes(each));
    if (!canLay(withoutWishes(problem, dropped))) kept = rest;
    yield;
  }
  return kept;
}
