import type { WeekRules } from '../method/document.js';
import { countDays, dayBit, dayCount, daysEarlier, has, type DaySet } from './day-sets.js';
import { countCost } from './pair-costs.js';
import type { KindNeed, WeekProblem } from './week-problem.js';

/** Cost comes first, then sessions moved, then sessions of a kind on neighbouring days: one number for all three. */
export const weights = { cost: 4096, moved: 64, neighbours: 1 } as const;

/** A way to lay the sessions of one kind on days. */
export interface Choice {
  readonly days: DaySet;
  readonly count: number;
  /** What it costs by itself (see `weights`), pairs and crowded days aside. */
  readonly own: number;
  /** The steps by which its sessions miss the rounded minutes at best, and how many of these more room would give. */
  readonly missed: number;
  readonly under: number;
  /** Least and most steps of its session by day, sessions that are fixed left out: they have their room already. */
  readonly low: readonly number[];
  readonly high: readonly number[];
  /** The most that its sessions can add up to, fixed ones included. */
  readonly most: number;
  /** The day of the long run where the choice settles it, as a set. */
  readonly long: DaySet;
  /** True where the lengths decide which session is the long run. */
  readonly isLongOpen: boolean;
}

/** What choosing days costs a kind by itself. */
export class Pricing {
  readonly #session: number;
  readonly #miss: number;
  readonly #before: DaySet | null;
  readonly #wished: number;

  constructor({ rules, before }: { rules: WeekRules; before: WeekProblem['before'] }, need: KindNeed) {
    this.#session = weights.cost * countCost(rules, 'session-count');
    this.#miss = weights.cost * countCost(rules, 'missed-minutes');
    this.#before = before ? (before[need.category] ?? 0) : null;
    this.#wished = need.wished;
  }

  of(days: DaySet, missed: number): number {
    const sessions = Math.abs(countDays(days) - this.#wished);
    const moved = this.#before === null ? 0 : countDays(this.#before & ~days);
    const neighbours = countDays(days & daysEarlier(days, 1));
    return this.#session * sessions + this.#miss * missed + weights.moved * moved + weights.neighbours * neighbours;
  }
}

/** Steps that are fixed, by day; 0 where none are. */
export function fixedSteps({ fixed }: Pick<WeekProblem, 'fixed'>, { category }: Pick<KindNeed, 'category'>): number[] {
  const steps = new Array<number>(dayCount).fill(0);
  for (const session of fixed) if (session.category === category) steps[session.day]! += session.steps;
  return steps;
}

/** Steps by which a sum misses the rounded minutes; nothing between the two whole steps around them. */
export function missedSteps({ rounded }: Pick<KindNeed, 'rounded'>, steps: number): number {
  return Math.max(0, Math.floor(rounded) - steps, steps - Math.ceil(rounded));
}

/** Where a day is wanted for the long run, it is there; without any slow running there is none to want. */
export function isLongAsWanted(
  { longRun }: Pick<WeekProblem, 'longRun'>,
  { category }: Pick<KindNeed, 'category'>,
  { days, long }: Pick<Choice, 'days' | 'long'>,
): boolean {
  if (category !== 'slow' || longRun === null || days === 0) return true;
  return long === dayBit(longRun) && has(days, longRun);
}
