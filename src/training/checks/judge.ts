import { isNear, withoutNoise } from '../../sheet/numbers.js';
import type { CheckEdge, CheckLimits, CheckRule, CheckScope } from '../method/check-rules.js';
import type { LevelId, PhaseId } from '../method/ids.js';
import type { CheckLevel } from './check-levels.js';
import type { FactId, Facts } from './facts.js';
import { measured, measures } from './measures.js';

/** Whose week it is, and in which phase. */
export interface CheckedRunner {
  readonly level: LevelId;
  readonly phase: PhaseId;
  /** In years; null where it is not told. */
  readonly age: number | null;
}

/** The edges of limits as numbers; null where there is none. */
export interface CheckEdges {
  readonly least: number | null;
  readonly most: number | null;
  readonly below: number | null;
  readonly above: number | null;
}

/** A check made. */
export interface Judgement {
  readonly limits: CheckLimits;
  readonly edges: CheckEdges;
  /** Null where a fact is missing, or there is nothing to measure. */
  readonly level: CheckLevel | null;
  readonly value: number | null;
  /** The first fact that is missing. */
  readonly missing: FactId | null;
  /** How much would have to change to be in line, in the unit of the measure's changes; 0 in line, null without value. */
  readonly amount: number | null;
}

/** A check held against the facts; null where it is not for this runner or this week. */
export function judge(rule: CheckRule, facts: Facts, runner: CheckedRunner): Judgement | null {
  const limits = rule.limits.find((each) => isFor(each, facts, runner));
  if (!limits) return null;
  const measure = measures[rule.measure];
  const { value, missing } = measured(measure, facts);
  const edges = edgesOf(limits, facts);
  const whole = measure.whole === undefined ? 1 : (facts[measure.whole] ?? 1);
  return {
    limits,
    edges,
    value: value === null ? null : withoutNoise(value),
    missing,
    level: value === null ? null : levelOf(value, edges),
    amount: value === null ? null : withoutNoise(distance(value, edges) * whole),
  };
}

function isFor({ levels, phases, ages, hours_above }: CheckScope, facts: Facts, runner: CheckedRunner): boolean {
  const { level, phase, age } = runner;
  const isOfAge =
    ages === undefined ||
    (age === null ? ages.untold === true : age >= (ages.least ?? 0) && age <= (ages.most ?? Number.POSITIVE_INFINITY));
  const isLong = hours_above === undefined || isMore(facts.weekly_hours ?? 0, hours_above);
  return (levels?.includes(level) ?? true) && (phases?.includes(phase) ?? true) && isOfAge && isLong;
}

function edgesOf({ in_line, caution }: CheckLimits, facts: Facts): CheckEdges {
  const edge = (given: CheckEdge | undefined): number | null =>
    typeof given === 'string' ? (facts[given] ?? null) : (given ?? null);
  return {
    least: edge(in_line.least),
    most: edge(in_line.most),
    below: caution?.below ?? null,
    above: caution?.above ?? null,
  };
}

/**
 * The level of a value: edges are in line, and no caution; near numbers are equal.
 *
 * @example levelOf(0.2, { least: null, most: 0.2, below: null, above: 1 }) // 'in-line'
 */
export function levelOf(value: number, { least, most, below, above }: CheckEdges): CheckLevel {
  if ((below !== null && isMore(below, value)) || (above !== null && isMore(value, above))) return 'caution';
  return (least !== null && isMore(least, value)) || (most !== null && isMore(value, most)) ? 'look' : 'in-line';
}

/** How far a value is from being in line. */
function distance(value: number, { least, most }: CheckEdges): number {
  if (least !== null && isMore(least, value)) return least - value;
  return most !== null && isMore(value, most) ? value - most : 0;
}

const isMore = (one: number, other: number): boolean => one > other && !isNear(one, other);
