import { byCategory, categoryIds } from '../../../src/training/method/ids.js';
import type { KindNeed, Laid, WeekProblem } from '../../../src/training/week/week-problem.js';
import { costOf, faultsOf, movesOf } from './week-check.js';

/** What is left of a week when every layout has been looked at. */
export interface Enumerated {
  readonly cost: number;
  /** The fewest moves among the layouts of this cost. */
  readonly moves: number;
}

/** Lengths of the five kinds on one day, in the order of `categoryIds`; 0 where there is none. */
type DayPlan = readonly number[];

/** The least cost of a small week, found by looking at every layout; null where none is valid. */
export function enumerate(problem: WeekProblem): Enumerated | null {
  const found = layoutsOf(problem).map((laid) => ({ cost: costOf(problem, laid), moves: movesOf(problem, laid) }));
  return found.sort((one, other) => one.cost - other.cost || one.moves - other.moves)[0] ?? null;
}

/** Every valid layout of a small week; only what is too much already, or too little in the end, is not looked at closely. */
export function layoutsOf(problem: WeekProblem): Laid[] {
  const plans = dayPlans(problem);
  const sums = problem.kinds.map(({ sessions, least, most }) => {
    const settled = sessions?.reduce((sum, each) => sum + each, 0);
    return { least: settled ?? least, most: settled ?? most };
  });
  const found: Laid[] = [];
  const extend = (chosen: readonly DayPlan[], so: DayPlan): void => {
    if (so.some((sum, kind) => sum > (sums[kind]?.most ?? 0))) return;
    const next = plans[chosen.length];
    for (const plan of next ?? [])
      extend(
        [...chosen, plan],
        so.map((sum, kind) => sum + (plan[kind] ?? 0)),
      );
    if (next || so.some((sum, kind) => sum < (sums[kind]?.least ?? 0))) return;
    const laid = byCategory((category) => chosen.map((plan) => plan[categoryIds.indexOf(category)] ?? 0));
    if (faultsOf(problem, laid).length === 0) found.push(laid);
  };
  extend(
    [],
    sums.map(() => 0),
  );
  return found;
}

/** How many layouts there are to look at, valid or not. */
export function countLayouts(problem: WeekProblem): number {
  return dayPlans(problem).reduce((product, plans) => product * plans.length, 1);
}

/** What could be done on each day, looked at by itself. */
function dayPlans(problem: WeekProblem): DayPlan[][] {
  return problem.room.map((room, day) => {
    const lengths = problem.kinds.map((need) => lengthsOn(problem, need, day));
    const fixed = problem.fixed.filter((session) => session.day === day).length;
    const done = problem.fixed.filter((session) => session.day === day && session.isDone).length;
    const plans = lengths.reduce<DayPlan[]>(
      (so, next) => so.flatMap((plan) => next.map((each) => [...plan, each])),
      [[]],
    );
    return plans.filter((plan) => {
      const steps = plan.reduce((total, each) => total + each, 0);
      const sessions = plan.filter((each) => each > 0).length;
      return (steps <= room || sessions === fixed) && sessions <= Math.max(problem.sessionsADay, done);
    });
  });
}

/** The lengths that a kind could have on a day, 0 among them unless it has a fixed session there. */
function lengthsOn(problem: WeekProblem, { category, shortest, longest, sessions }: KindNeed, day: number): number[] {
  const fixed = problem.fixed.find((session) => session.day === day && session.category === category);
  if (fixed) return [fixed.steps];
  const between = Array.from({ length: Math.max(0, longest - shortest + 1) }, (_, index) => shortest + index);
  return [0, ...new Set(sessions ?? between)];
}
