import type { ByCategory } from '../../training/method/ids.js';
import type { Method } from '../../training/method/document.js';
import type { PlanInputs } from '../document.js';
import type { SeasonRequest } from '../season/wishes.js';
import type { WeekRequest } from '../week/wishes.js';

/** Most scenarios side by side. */
export const mostScenarios = 6;

/** Most that a sheet may hold: characters of a name, rows, formulas over quantities, sessions of a kind. */
export const scenarioLimits = { name: 60, rows: 50, formulas: 200, sessions: 100 } as const;

/**
 * Names that no row can have: valibot leaves such keys out of every record without a word, because code that is not
 * careful trips over them.
 */
export const unusableKeys: readonly string[] = ['__proto__', 'prototype', 'constructor'];

/** A column of the sheet: one set of inputs, and what a person put over the quantities of this column alone. */
export interface Scenario {
  /** Unlike any other scenario's; never shown. */
  readonly id: string;
  /** As the person calls it; empty while nobody has named it. */
  readonly name: string;
  readonly inputs: PlanInputs;
  /** Durations picked for a category, in minutes. */
  readonly sessions: Partial<ByCategory<readonly number[]>>;
  /** What is wanted of the days of the week; null where no days are given. */
  readonly week: WeekRequest | null;
  /** What is wanted of the season; null where none is asked for. */
  readonly season: SeasonRequest | null;
  /** Formulas (a number is one) put over quantities, by quantity id. */
  readonly overrides: Readonly<Record<string, string>>;
  /** Rules switched off in this scenario, by rule id. */
  readonly rulesOff: readonly string[];
}

/** A row of a person's own: how formulas name it, what the screen calls it, and its formula. */
export interface OwnRow {
  readonly id: string;
  readonly name: string;
  readonly formula: string;
}

/**
 * The whole what-if sheet as one value that never changes: every act of a person makes another from it. Undo, the link,
 * the file and the comparison all come from it.
 */
export interface ScenarioSheet {
  /** The method that all scenarios start from. */
  readonly method: Method;
  /** Formulas edited for all scenarios, by quantity id. */
  readonly formulas: Readonly<Record<string, string>>;
  /** Rows added by hand. */
  readonly rows: readonly OwnRow[];
  /** Rules switched off in all scenarios, by rule id. */
  readonly rulesOff: readonly string[];
  /** One to `mostScenarios`, in the order of the columns. */
  readonly scenarios: readonly [Scenario, ...Scenario[]];
  /** The scenario that the others are compared with, by its id. */
  readonly reference: string;
}
