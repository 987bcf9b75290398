import { byCategory, categoryIds } from '../method/ids.js';
import { fixedSteps } from './choice.js';
import { clashesOf } from './clashes.js';
import { dayCount, daysOf } from './day-sets.js';
import { evenOut } from './even-out.js';
import { Lengths } from './lengths.js';
import { longChoices, longDays, type LongChoice } from './long-run.js';
import { WeekSearch, type Found } from './search.js';
import type { Laid, WeekProblem } from './week-problem.js';

/** The sessions of a week of least cost, as even as the days allow; null where nothing fits. */
export function lay(problem: WeekProblem): Laid | null {
  const search = new WeekSearch(problem);
  search.run();
  return search.best ? laidOut(problem, search.best) : null;
}

/** True where the sessions can be laid at all. */
export function canLay(problem: WeekProblem): boolean {
  const search = new WeekSearch(problem, true);
  search.run();
  return search.best !== null;
}

/**
 * The lengths of the sessions of a week that was found: of those that cost as little, the most even. Settled lengths stay
 * on the days that the search chose for them.
 */
export function laidOut(problem: WeekProblem, found: Found): Laid {
  const lengths = new Lengths(
    problem.kinds,
    problem.kinds.map((need) => fixedSteps(problem, need)),
  );
  const evenly = (long: LongChoice | null): Laid[] => {
    if (lengths.choose(found.chosen, found.room, long) < 0) return [];
    evenOut(lengths.filling, lengths.least);
    return [laidBy(lengths)];
  };
  const costOf = (laid: Laid): number => clashesOf(problem, laid).reduce((sum, { cost }) => sum + cost, 0);
  if (!found.long) return evenly(null)[0]!;
  const [wanted] = evenly(found.long);
  const least = costOf(wanted!);
  // Where it does not matter which session is the long run, nothing holds the lengths back.
  const [free] = problem.longRun === null ? evenly(null) : [];
  if (free && costOf(free) === least) return free;
  const ways = waysOf(problem, found).flatMap(evenly);
  return ways.filter((laid) => costOf(laid) === least).reduce(moreEven, wanted!);
}

/** Every session that could be the long run, at every length that it could have. */
function waysOf({ longRun, fixed }: WeekProblem, { chosen }: Found): LongChoice[] {
  const { days, low, high } = chosen[categoryIds.indexOf('slow')]!;
  const own = fixedSteps({ fixed }, { category: 'slow' });
  const lengths = {
    least: Math.min(...daysOf(days).map((day) => low[day]! + own[day]!)),
    most: Math.max(...daysOf(days).map((day) => high[day]! + own[day]!)),
  };
  return longDays(days, longRun).flatMap((day) => longChoices(days, day, lengths));
}

const moreEven = (one: Laid, other: Laid): Laid => (squares(other) < squares(one) ? other : one);

const squares = (laid: Laid): number =>
  categoryIds.reduce((sum, id) => laid[id].reduce((total, each) => total + each * each, sum), 0);

function laidBy({ filling, least }: Lengths): Laid {
  const steps = Array.from(least, (each, place) => each + filling.given[place]!);
  return byCategory((id) => steps.slice(categoryIds.indexOf(id) * dayCount, (categoryIds.indexOf(id) + 1) * dayCount));
}
