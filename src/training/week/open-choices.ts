import { Pricing, fixedSteps, isLongAsWanted, type Choice } from './choice.js';
import { countDays, dayBit, dayCount, everyDay, type DaySet } from './day-sets.js';
import type { KindNeed, WeekProblem } from './week-problem.js';

/** Every set of days on which a kind's sessions can be cut from its minutes. */
export function openChoices(problem: WeekProblem, need: KindNeed, room: readonly number[]): Choice[] {
  const pricing = new Pricing(problem, need);
  const cuts = new Cuts(need, fixedSteps(problem, need), { room, longRun: problem.longRun });
  const choices: Choice[] = [];
  for (let days = 0; days <= everyDay; days += 1) {
    const choice = cuts.on(days, pricing);
    if (choice && isLongAsWanted(problem, need, choice)) choices.push(choice);
  }
  return choices;
}

/** Cuts of a kind's minutes into one session on each day of a set. */
class Cuts {
  readonly #need: KindNeed;
  readonly #longRun: number | null;
  readonly #fixed: readonly number[];
  readonly #fixedSum: number;
  /** Days that must have a session, and those that could. */
  readonly #required: DaySet;
  readonly #possible: DaySet;
  readonly #least: readonly number[];
  readonly #most: readonly number[];

  constructor(
    need: KindNeed,
    fixed: readonly number[],
    { room, longRun }: { readonly room: readonly number[]; readonly longRun: number | null },
  ) {
    this.#need = need;
    this.#longRun = need.category === 'slow' ? longRun : null;
    this.#fixed = fixed;
    this.#fixedSum = fixed.reduce((sum, steps) => sum + steps, 0);
    this.#required = setOf(fixed.map((steps) => steps > 0));
    this.#possible = this.#required | setOf(room.map((steps) => steps >= need.shortest));
    this.#least = fixed.map((steps) => (steps > 0 ? 0 : need.shortest));
    this.#most = fixed.map((steps, day) => (steps > 0 ? 0 : Math.min(need.longest, room[day]!)));
  }

  on(days: DaySet, pricing: Pricing): Choice | null {
    if ((days & ~this.#possible) !== 0 || (this.#required & ~days) !== 0) return null;
    const { category, rounded } = this.#need;
    const count = countDays(days);
    const low = daysOnly(this.#least, days);
    const high = daysOnly(this.#most, days);
    if (count > 1 && this.#longRun !== null && !makeWayForLong(this.#longRun, this.#fixed, { low, high })) return null;
    const least = total(low) + this.#fixedSum;
    const most = total(high) + this.#fixedSum;
    if (least > this.#need.most || most < this.#need.least) return null;
    const under = Math.max(0, Math.floor(rounded) - most);
    const missed = Math.max(under, least - Math.ceil(rounded));
    const own = pricing.of(days, missed);
    const isSlow = category === 'slow';
    return {
      days,
      count,
      own,
      missed,
      under,
      low,
      high,
      most,
      long: this.#longOf(days),
      isLongOpen: isSlow && count > 1,
    };
  }

  /** The only slow session is the long run; of several their lengths decide. */
  #longOf(days: DaySet): DaySet {
    if (this.#need.category !== 'slow') return 0;
    if (countDays(days) < 2) return days;
    return this.#longRun === null ? 0 : dayBit(this.#longRun);
  }
}

function setOf(isIn: readonly boolean[]): DaySet {
  return isIn.reduce((set, each, day) => (each ? set | dayBit(day) : set), 0);
}

function daysOnly(steps: readonly number[], days: DaySet): number[] {
  const only = [0, 0, 0, 0, 0, 0, 0];
  for (let day = 0; day < dayCount; day += 1) if ((days >> day) & 1) only[day] = steps[day]!;
  return only;
}

function total(steps: readonly number[]): number {
  let sum = 0;
  for (let day = 0; day < dayCount; day += 1) sum += steps[day]!;
  return sum;
}

/**
 * The day that wants the long run has more than every other: so much is known before its length is. False where it cannot
 * have more.
 */
function makeWayForLong(
  longRun: number,
  fixed: readonly number[],
  { low, high }: { readonly low: number[]; readonly high: number[] },
): boolean {
  if (fixed[longRun] === 0) {
    for (let day = 0; day < dayCount; day += 1)
      low[longRun] = Math.max(low[longRun]!, (day === longRun ? 0 : low[day]! + fixed[day]!) + 1);
    if (low[longRun]! > high[longRun]!) return false;
  }
  const most = high[longRun]! + fixed[longRun]!;
  for (let day = 0; day < dayCount; day += 1) {
    if (day === longRun) continue;
    if (fixed[day]! >= most) return false;
    high[day] = Math.min(high[day]!, most - 1);
    if (low[day]! > high[day]!) return false;
  }
  return true;
}
