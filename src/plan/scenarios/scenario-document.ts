import type { OwnRow, Scenario } from './document.js';

/** A scenario as plain data; what is left out is filled in when it is read. */
export type WrittenScenario = Partial<Scenario>;

/** A what-if sheet as plain data, for a link or a file. */
export interface ScenarioDocument {
  /** What the document is. */
  readonly format: 'weekwright-sheet';
  /** The version of the format. */
  readonly version: 1;
  /** The id of the method that all scenarios start from. */
  readonly method: string;
  /** Formulas edited for all scenarios, by quantity id. */
  readonly formulas?: Readonly<Record<string, string>>;
  /** Rows added by hand. */
  readonly rows?: readonly OwnRow[];
  /** Rules switched off in all scenarios, by rule id. */
  readonly rulesOff?: readonly string[];
  /** In the order of the columns, at least one. */
  readonly scenarios: readonly WrittenScenario[];
  /** The scenario that the others are compared with, by its id; the first one where it is left out. */
  readonly reference?: string;
}
