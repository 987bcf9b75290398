import type { CheckLevel } from '../../training/checks/check-levels.js';
import type { FactId } from '../../training/checks/facts.js';
import type { CheckUnit } from '../../training/checks/measures.js';
import type { LoadSpread } from '../../training/load/load-spread.js';
import type { Founded } from '../../training/method/founded.js';
import type { CheckGroupId, MeasureId } from '../../training/method/check-rules.js';
import type { ByCategory, Text } from '../../training/method/ids.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** The plan held against one piece of guidance. */
export interface CheckResult extends Founded {
  /** The check of the method. */
  readonly id: string;
  readonly group: CheckGroupId;
  readonly measure: MeasureId;
  /** Null where something is not known, or there is nothing to measure. */
  readonly level: CheckLevel | null;
  readonly value: number | null;
  readonly unit: CheckUnit;
  /** What is not known. */
  readonly missing: FactId | null;
  /** In line from `least` to `most`, ends included; null for no edge. */
  readonly inLine: { readonly least: number | null; readonly most: number | null };
  /** A caution below `below` or above `above`, these not included. */
  readonly caution: { readonly below: number | null; readonly above: number | null };
  /** How much would have to change to be in line; 0 where it is, null without a value. */
  readonly change: { readonly amount: number | null; readonly unit: CheckUnit };
  /** The numbers that it was worked out from. */
  readonly values: Readonly<Record<string, number>>;
  /** What the source does not say. */
  readonly notSaid: Text;
  readonly sources: readonly string[];
}

/** How hard the week is: effort times minutes. */
export interface PlanLoad {
  /** How hard sessions feel as a whole, 0 to 10; assumptions where the runner has not said otherwise. */
  readonly efforts: ByCategory<number>;
  /** A whole number. */
  readonly week: number;
  /** Of each day, Monday first; null while sessions are not laid on days. */
  readonly days: readonly number[] | null;
  /** How it is spread over the days; null without days. */
  readonly spread: LoadSpread | null;
  /** The runner's own weeks: mean load, and the highest monotony and strain; null where they are not told. */
  readonly own: {
    readonly load: number | null;
    readonly monotony: number | null;
    readonly strain: number | null;
    /** How many of them are told day by day. */
    readonly dayWeeks: number;
  };
}
