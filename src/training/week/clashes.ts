import { withoutNoise } from '../../sheet/numbers.js';
import type { ClashRule } from '../method/document.js';
import { categoryIds, type CategoryId } from '../method/ids.js';
import { missedSteps } from './choice.js';
import { dayBit, dayCount, daysOf, type DaySet } from './day-sets.js';
import { pairDays, type DaysTaken } from './pair-costs.js';
import type { Laid, WeekProblem } from './week-problem.js';

/** A preference that a layout breaks. */
export interface Clash {
  /** Its id in the method. */
  readonly kind: string;
  /** The days on which it happens, 0 for Monday; empty where it is about the whole week. */
  readonly days: readonly number[];
  readonly cost: number;
  /** The kind of training it is about, where it is about one. */
  readonly category: CategoryId | null;
  /** What is more (or, below nothing, fewer) than it should be: minutes or sessions; 0 where it is about days. */
  readonly by: number;
}

/** Everything that a layout costs, in the order of the method's clashes. */
export function clashesOf(problem: Pick<WeekProblem, 'rules' | 'kinds' | 'step'>, laid: Laid): Clash[] {
  return problem.rules.clashes.filter(({ cost }) => cost > 0).flatMap((rule) => clashesBy(rule, problem, laid));
}

function clashesBy(rule: ClashRule, problem: Pick<WeekProblem, 'kinds' | 'step'>, laid: Laid): Clash[] {
  const { id: kind, cost } = rule;
  switch (rule.kind) {
    case 'pair':
      return daysOf(pairDays(rule, daysTaken(laid))).map((day) => {
        const days = rule.days_apart === 0 ? [day] : [day, (day + rule.days_apart) % dayCount];
        return { kind, days, cost, category: null, by: 0 };
      });
    case 'crowded-day':
      return daysOf(crowded(laid)).map((day) => ({ kind, days: [day], cost, category: null, by: 0 }));
    case 'missed-minutes':
      return problem.kinds.flatMap((need) => {
        const steps = laid[need.category].reduce((sum, each) => sum + each, 0);
        const missed = missedSteps(need, steps);
        const by = withoutNoise((steps - need.rounded) * problem.step);
        return missed === 0 ? [] : [{ kind, days: [], cost: cost * missed, category: need.category, by }];
      });
    case 'session-count':
      return problem.kinds.flatMap(({ category, wished }) => {
        const by = sessionCount(laid[category]) - wished;
        return by === 0 ? [] : [{ kind, days: [], cost: cost * Math.abs(by), category, by }];
      });
  }
}

/** The days that each kind has in a layout, and the day of the long run: the slow session longer than every other. */
export function daysTaken(laid: Laid): DaysTaken {
  const longest = Math.max(...laid.slow);
  const isLone = longest > 0 && laid.slow.filter((steps) => steps === longest).length === 1;
  const long = isLone ? dayBit(laid.slow.indexOf(longest)) : 0;
  const of = (category: CategoryId): DaySet =>
    laid[category].reduce((set, steps, day) => (steps > 0 ? set | dayBit(day) : set), 0);
  return {
    slow: of('slow'),
    tempo: of('tempo'),
    intervals: of('intervals'),
    cross: of('cross'),
    strength: of('strength'),
    long,
  };
}

const sessionCount = (steps: readonly number[]): number => steps.filter((each) => each > 0).length;

function crowded(laid: Laid): DaySet {
  let set = 0;
  for (let day = 0; day < dayCount; day += 1)
    if (categoryIds.filter((id) => laid[id][day]! > 0).length > 1) set |= dayBit(day);
  return set;
}
