import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeChange } from '../../../../src/plan/week/acts.js';
import { conflictIn } from '../../../../src/training/week/conflict.js';
import { canLay, lay } from '../../../../src/training/week/lay.js';
import { allAtOnce } from '../../../../src/training/week/steps.js';
import { changed, waysOut } from '../../../../src/training/week/ways-out.js';
import type { WeekProblem } from '../../../../src/training/week/week-problem.js';
import type { WayOut, Wish } from '../../../../src/training/week/wish.js';
import { wishesIn, withoutWishes } from '../../../../src/training/week/wishes-in.js';
import { patience, runs } from '../../../reference/runs.js';
import { costOf, faultsOf } from '../../../reference/week/week-check.js';
import { anyWishes, type Asked } from '../../plan/week/random-wishes.js';
import { problemOf, weekOf } from '../../plan/week/weeks.js';

const conflictOf = (problem: WeekProblem): Wish[] => allAtOnce(conflictIn(problem));

/** Weeks in which nothing fits; two quality runs done on one day cannot be wished otherwise. */
const tooMuch = anyWishes.filter(({ runner, wishes }) => {
  const problem = problemOf(wishes, runner);
  return !canLay(problem) && canLay(withoutWishes(problem, wishesIn(problem)));
});

/** True where the wishes, all others of the problem dropped, can hold together. */
function holds(problem: WeekProblem, wishes: readonly Wish[]): boolean {
  const isKept = (wish: Wish): boolean => wishes.some((each) => JSON.stringify(each) === JSON.stringify(wish));
  return canLay(
    withoutWishes(
      problem,
      wishesIn(problem).filter((wish) => !isKept(wish)),
    ),
  );
}

/** What the ways are sorted by: the week's cost, and 1 for each five minutes that a day would have to give. */
const priceOf = ({ changes, cost }: WayOut): number =>
  changes.reduce((sum, { kind, amount }) => sum + (kind === 'more-minutes' ? amount / 5 : 0), cost);

function expectWay({ runner, wishes }: Asked, way: WayOut): void {
  const problem = problemOf(wishes, runner);
  const after = way.changes.reduce(changed, problem);
  const laid = lay(after);
  if (!laid) throw new Error('a way out leads to a week');
  expect(faultsOf(after, laid)).toEqual([]);
  expect(costOf(after, laid)).toBe(way.cost);
  const wishesAfter = way.changes.reduce(makeChange, wishes);
  expect(problemOf(wishesAfter, runner)).toEqual(after);
}

function expectWeek({ runner, wishes }: Asked, { changes, cost }: WayOut): void {
  expect(weekOf(changes.reduce(makeChange, wishes), runner)).toMatchObject({ state: 'laid', cost });
}

describe('where nothing fits', { timeout: 4 * patience }, () => {
  test('the wishes named cannot hold together, could without any one of them, and every way out leads to a week', () => {
    fc.assert(
      fc.property(tooMuch, (asked) => {
        const problem = problemOf(asked.wishes, asked.runner);
        const conflict = conflictOf(problem);
        expect(conflict.length).toBeGreaterThan(0);
        expect(holds(problem, conflict)).toBe(false);
        const without = conflict.map((wish) => conflict.filter((each) => each !== wish));
        expect(without.filter((others) => !holds(problem, others))).toEqual([]);
        const ways = allAtOnce(waysOut(problem, conflict));
        for (const way of ways) expectWay(asked, way);
        const [best] = ways;
        if (best) expectWeek(asked, best);
        const prices = ways.map(priceOf);
        expect(prices).toEqual([...prices].sort((one, other) => one - other));
        // Where wishes collide in several places at once, no single change helps, and there may be no way to tell of.
        const isOnlyOne = conflict.some((wish) => canLay(withoutWishes(problem, [wish])));
        if (isOnlyOne) expect(ways.length).toBeGreaterThan(0);
      }),
      runs(60, 2000),
    );
  });

  test('a plan tells the same', () => {
    fc.assert(
      fc.property(tooMuch, ({ runner, wishes }) => {
        const problem = problemOf(wishes, runner);
        const conflict = conflictOf(problem);
        const { state, days, conflict: told } = weekOf(wishes, runner);
        expect([state, days]).toEqual(['nothing-fits', null]);
        expect(told).toEqual({ wishes: conflict, waysOut: allAtOnce(waysOut(problem, conflict)) });
      }),
      runs(10, 200),
    );
  });
});
