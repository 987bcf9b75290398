import { byCategory, type ByCategory } from '../../training/method/ids.js';
import { clashesOf } from '../../training/week/clashes.js';
import { dayCount } from '../../training/week/day-sets.js';
import type { Laid, WeekProblem } from '../../training/week/week-problem.js';
import type { PlanWeek } from './document.js';
import type { Solution } from './week-solver.js';

/** A week as a plan has it, as far as it is solved. */
export function planWeek(problem: WeekProblem, asked: Asked, solution: Solution): PlanWeek {
  if (solution.state === 'laid') return laidWeek(problem, asked, solution.laid);
  return {
    ...asked,
    state: solution.state,
    days: null,
    sessions: byCategory(() => []),
    cost: null,
    clashes: [],
    conflict: solution.state === 'nothing-fits' ? solution.conflict : null,
  };
}

type Asked = Pick<PlanWeek, 'wishes' | 'picks'>;

function laidWeek(problem: WeekProblem, asked: Asked, laid: Laid): PlanWeek {
  const clashes = clashesOf(problem, laid);
  return {
    ...asked,
    state: 'laid',
    days: daysOf(problem, laid),
    sessions: lengthsOf(problem, laid),
    cost: clashes.reduce((sum, { cost }) => sum + cost, 0),
    clashes,
    conflict: null,
  };
}

/** Sessions by day, each day in the method's order: a run before strength. */
export function daysOf({ rules, step }: WeekProblem, laid: Laid): NonNullable<PlanWeek['days']> {
  return Array.from({ length: dayCount }, (_, day) =>
    rules.order_in_day.flatMap((category) => {
      const steps = laid[category][day] ?? 0;
      return steps > 0 ? [{ category, minutes: steps * step }] : [];
    }),
  );
}

function lengthsOf({ step }: WeekProblem, laid: Laid): ByCategory<readonly number[]> {
  const ascending = (one: number, other: number): number => one - other;
  return byCategory((id) =>
    laid[id]
      .filter((steps) => steps > 0)
      .map((steps) => steps * step)
      .sort(ascending),
  );
}
