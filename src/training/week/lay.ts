import { byCategory, categoryIds } from '../method/ids.js';
import { fixedSteps } from './choice.js';
import { dayCount } from './day-sets.js';
import { evenOut } from './even-out.js';
import { Lengths } from './lengths.js';
import { longChoices, type LongChoice } from './long-run.js';
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

/** The lengths of the sessions of a week that was found: of those that miss as little, the most even. */
export function laidOut(problem: WeekProblem, found: Found): Laid {
  const lengths = new Lengths(
    problem.kinds,
    problem.kinds.map((need) => fixedSteps(problem, need)),
  );
  const missed = lengths.choose(found.chosen, found.room, found.long);
  const ways = found.long ? waysLike(found.long, found) : [null];
  const laid = ways.flatMap((long) => {
    if (lengths.choose(found.chosen, found.room, long) !== missed) return [];
    evenOut(lengths.filling, lengths.least);
    return [stepsOf(lengths)];
  });
  const [first, ...others] = laid;
  if (!first) throw new Error('a week that was found has lengths');
  const best = others.reduce((least, each) => (squares(each) < squares(least) ? each : least), first);
  return byCategory((id) => best.slice(categoryIds.indexOf(id) * dayCount, (categoryIds.indexOf(id) + 1) * dayCount));
}

/** The same session as the long run, at every length that it could have. */
function waysLike(long: LongChoice, { chosen }: Found): LongChoice[] {
  const { days, high } = chosen[categoryIds.indexOf('slow')]!;
  const most = Math.max(long.length, ...high);
  const lengths = { least: long.length, most };
  if ('day' in long) return longChoices(days, long.day, lengths);
  return longChoices(days, null, lengths).filter((way) => 'pair' in way && way.pair.join() === long.pair.join());
}

function stepsOf({ filling, least }: Lengths): number[] {
  return Array.from(least, (steps, place) => steps + filling.given[place]!);
}

const squares = (steps: readonly number[]): number => steps.reduce((sum, each) => sum + each * each, 0);
