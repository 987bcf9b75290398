import { Pricing, fixedSteps, isLongAsWanted, missedSteps, type Choice } from './choice.js';
import { countDays, dayBit, dayCount, type DaySet } from './day-sets.js';
import type { KindNeed, WeekProblem } from './week-problem.js';

/** Every way to hand out the settled sessions of a kind to days; none where a fixed session is not among them. */
export function settledChoices(
  problem: WeekProblem,
  need: KindNeed & { readonly sessions: readonly number[] },
  room: readonly number[],
): Choice[] {
  const fixed = fixedSteps(problem, need);
  const pricing = new Pricing(problem, need);
  const left = without(need.sessions, fixed);
  const most = need.sessions.reduce((sum, each) => sum + each, 0);
  const missed = missedSteps(need, most);
  const choices: Choice[] = [];
  const add = (lengths: readonly number[]): void => {
    const all = lengths.map((steps, day) => steps + fixed[day]!);
    const days = all.reduce((set, steps, day) => (steps > 0 ? set | dayBit(day) : set), 0);
    const long = need.category === 'slow' ? lone(all) : 0;
    const own = pricing.of(days, missed);
    const choice = { days, count: countDays(days), own, missed, under: 0, low: lengths, high: lengths, most, long };
    if (isLongAsWanted(problem, need, choice)) choices.push({ ...choice, isLongOpen: false });
  };
  if (left) handOut(left, { room, lengths: [0, 0, 0, 0, 0, 0, 0], isTaken: (day) => fixed[day]! > 0, from: 0 }, add);
  return choices;
}

/** The day of the longest session, as a set; of equally long ones none is the long run. */
function lone(lengths: readonly number[]): DaySet {
  const longest = Math.max(...lengths);
  return lengths.indexOf(longest) === lengths.lastIndexOf(longest) ? dayBit(lengths.indexOf(longest)) : 0;
}

interface HandingOut {
  readonly room: readonly number[];
  readonly lengths: readonly number[];
  readonly isTaken: (day: number) => boolean;
  /** The first day that the next length may have. */
  readonly from: number;
}

/** Calls `found` once for each way to put the lengths, longest first, on different days. */
function handOut(
  [length, ...others]: readonly number[],
  { room, lengths, isTaken, from }: HandingOut,
  found: (lengths: readonly number[]) => void,
): void {
  if (length === undefined) {
    found(lengths);
    return;
  }
  for (let day = from; day < dayCount; day += 1) {
    if (isTaken(day) || lengths[day] !== 0 || room[day]! < length) continue;
    const laid = lengths.map((each, at) => (at === day ? length : each));
    // Equal lengths go to days in order, or each way would come up several times.
    handOut(others, { room, lengths: laid, isTaken, from: others[0] === length ? day + 1 : 0 }, found);
  }
}

/** The lengths that are left once the fixed ones are taken away, longest first; null where one of these is not there. */
function without(lengths: readonly number[], fixed: readonly number[]): number[] | null {
  const left = [...lengths].sort((one, other) => other - one);
  for (const length of fixed.filter((each) => each > 0)) {
    const index = left.indexOf(length);
    if (index < 0) return null;
    left.splice(index, 1);
  }
  return left;
}
