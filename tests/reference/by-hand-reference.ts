import type { ByCategory, CategoryId, LevelId, PhaseId } from '../../src/training/method/ids.js';
import { categoryIds } from '../../src/training/method/ids.js';
import {
  compare,
  decimal,
  dividedBy,
  fraction,
  isLess,
  minus,
  nearestWhole,
  plus,
  sumOf,
  times,
  zero,
} from './fractions.js';
import type { Fraction } from './fractions.js';
import { sessionLimits } from './session-limits.js';
import { defaultMethod, type SplitName } from './week-reference.js';

/** A week in which a person has put values over quantities: decimals of at most six places, by the quantity's name. */
export interface HandQuestion {
  readonly hours: number;
  readonly phase: PhaseId;
  readonly level: LevelId;
  readonly strengthCap: number;
  readonly over: Readonly<Record<string, number>>;
  /** Who gives way before all others. */
  readonly givesWay: readonly CategoryId[];
}

export interface HandAnswer {
  readonly split: SplitName;
  readonly shares: ByCategory<Fraction>;
  readonly minutes: ByCategory<Fraction>;
  readonly rounded: ByCategory<bigint>;
  readonly totalRounded: bigint;
}

/** Quantity by quantity, each as it is or as a person has set it. */
type Row = Record<CategoryId, Fraction>;

/**
 * The week worked out once more, in exact fractions and by plain functions; null where what is held is more than there
 * is, or less than nothing.
 */
export function weekByHand(question: HandQuestion): HandAnswer | null {
  const { over, phase, level } = question;
  const given = (name: string, otherwise: Fraction): Fraction =>
    name in over ? decimal(over[name] ?? NaN) : otherwise;
  const hours = given('weekly_hours', decimal(question.hours));
  const split = splitOf(phase, level);
  const [slow, tempo, intervals, cross, strength] = defaultMethod.percentages[split].map((part) => fraction(part, 100));
  const ofSplit = makeRoom({ slow, tempo, intervals, cross, strength } as Row, `${split}_`, ['_share', question]);
  const shares = ofSplit && makeRoom(ofSplit, '', ['_share', question]);
  if (!shares) return null;
  const weekly = given('weekly_minutes', times(hours, fraction(60)));
  const minutes = rowOf((id) => times(weekly, shares[id]));
  const shortest = (id: CategoryId): Fraction => given(`${id}_shortest`, fraction(sessionLimits[id].shortest));
  capStrength(minutes, hours, given('strength_cap', decimal(question.strengthCap)));
  foldAway(minutes, 'intervals', ['tempo', shortest('intervals')]);
  foldAway(minutes, 'tempo', ['slow', shortest('tempo')]);
  foldAway(minutes, 'cross', ['slow', shortest('cross')]);
  raiseStrength(minutes, shortest('strength'));
  const planned = makeRoom(minutes, '', ['_minutes', question]);
  if (!planned || categoryIds.some((id) => isLess(planned[id], zero))) return null;
  const whole = roundToFives(planned, over);
  return whole && { split, shares, minutes: planned, ...whole };
}

function rowOf(value: (id: CategoryId) => Fraction): Row {
  return {
    slow: value('slow'),
    tempo: value('tempo'),
    intervals: value('intervals'),
    cross: value('cross'),
    strength: value('strength'),
  };
}

function splitOf(phase: PhaseId, level: LevelId): SplitName {
  if (level === 'new' || phase === 'off-season') return 'off_season';
  return phase === 'taper' || phase === 'recovery' ? phase : 'in_season';
}

/** What is set stays as it is set; the others share what is left as they shared what they had, or evenly. */
function makeRoom(row: Row, before: string, [after, { over, givesWay }]: readonly [string, HandQuestion]): Row | null {
  const nameOf = (id: CategoryId): string => `${before}${id}${after}`;
  const held = categoryIds.filter((id) => nameOf(id) in over);
  if (held.length === 0) return row;
  const free = categoryIds.filter((id) => !held.includes(id));
  const wished = free.filter((id) => givesWay.includes(id));
  const givers = wished.length > 0 ? wished : free;
  const set = (id: CategoryId): Fraction => decimal(over[nameOf(id)] ?? NaN);
  const had = sumOf(givers.map((id) => row[id]));
  const left = minus(plus(had, sumOf(held.map((id) => row[id]))), sumOf(held.map(set)));
  if (givers.length > 0 && isLess(left, zero)) return null;
  const part = (id: CategoryId): Fraction =>
    compare(had, zero) === 0 ? dividedBy(left, fraction(givers.length)) : dividedBy(times(left, row[id]), had);
  return rowOf((id) => (held.includes(id) ? set(id) : givers.includes(id) ? part(id) : row[id]));
}

function capStrength(minutes: Row, hours: Fraction, cap: Fraction): void {
  if (isLess(fraction(6), hours) && isLess(cap, minutes.strength)) move(minutes, ['strength', 'slow'], cap);
}

function foldAway(minutes: Row, from: CategoryId, [to, shortest]: readonly [CategoryId, Fraction]): void {
  if (isLess(zero, minutes[from]) && isLess(minutes[from], shortest)) move(minutes, [from, to], zero);
}

function raiseStrength(minutes: Row, shortest: Fraction): void {
  if (!isLess(zero, minutes.strength) || !isLess(minutes.strength, shortest)) return;
  const both = plus(minutes.strength, minutes.slow);
  move(minutes, ['strength', 'slow'], isLess(both, shortest) ? both : shortest);
}

function move(minutes: Row, [from, to]: readonly [CategoryId, CategoryId], after: Fraction): void {
  minutes[to] = plus(minutes[to], minus(minutes[from], after));
  minutes[from] = after;
}

/** Whole minutes that are set are multiples of five here. */
function roundToFives(minutes: Row, over: HandQuestion['over']): Pick<HandAnswer, 'rounded' | 'totalRounded'> | null {
  const set = (name: string): bigint | undefined => (name in over ? BigInt(over[name] ?? NaN) / 5n : undefined);
  const held = categoryIds.map((id) => set(`${id}_rounded`));
  const taken = held.reduce<bigint>((sum, units) => sum + (units ?? 0n), 0n);
  const total = set('total_rounded') ?? nearestWhole(dividedBy(sumOf(Object.values(minutes)), fraction(5)));
  const isAnyFree = held.includes(undefined);
  if (isAnyFree && taken > total) return null;
  const free = categoryIds.map((id, index) => (held[index] === undefined ? minutes[id] : zero));
  const weights = free.some((weight) => isLess(zero, weight))
    ? free
    : held.map((units) => (units === undefined ? fraction(1) : zero));
  const units = isAnyFree ? awardByQuotients(weights, Number(total - taken)) : held.map(() => 0);
  const minutesOf = (index: number): bigint => 5n * (held[index] ?? BigInt(units[index] ?? 0));
  const [slow = 0n, tempo = 0n, intervals = 0n, cross = 0n, strength = 0n] = categoryIds.map((_, index) =>
    minutesOf(index),
  );
  const totalRounded = 'total_rounded' in over ? 5n * total : slow + tempo + intervals + cross + strength;
  return { rounded: { slow, tempo, intervals, cross, strength }, totalRounded };
}

/** Strength, slow, tempo, intervals, cross: whom a tie favours. */
const tieOrder = [4, 0, 1, 2, 3];

/**
 * The table of quotients with exact fractions: a weight over 1, 3, 5, ..., and the seats go to the largest of all.
 *
 * Held against the table with whole weights (apportionment-reference.ts) in overrides.test.ts.
 */
export function awardByQuotients(weights: readonly Fraction[], seats: number): readonly number[] {
  const award = weights.map(() => 0);
  const quotient = (index: number): Fraction =>
    dividedBy(weights[index] ?? zero, fraction(2 * (award[index] ?? 0) + 1));
  for (let seat = 0; seat < seats; seat += 1) {
    const winner = tieOrder.reduce((best, index) => (compare(quotient(index), quotient(best)) > 0 ? index : best));
    award[winner] = (award[winner] ?? 0) + 1;
  }
  return award;
}
