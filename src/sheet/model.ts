/** A quantity that a person sets. */
export interface InputQuantity {
  readonly id: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly start: number;
  /** True for a choice: nothing lies between two steps. */
  readonly isChoice: boolean;
}

/** A quantity that a formula gives. */
export interface FormulaQuantity {
  readonly id: string;
  readonly formula: string;
}

/** A quantity that is a number of the method, to be changed by whoever adapts it. */
export interface ConstantQuantity {
  readonly id: string;
  readonly constant: number;
}

/**
 * A change to one quantity. `when` and `value` see the quantity so far as `value`; what the change takes off is added
 * to the quantity `to` (and what it adds is taken from there), which both formulas see so far as `other`.
 */
export interface SheetRule {
  readonly id: string;
  readonly on: string;
  readonly when: string;
  readonly value: string;
  readonly to?: string | undefined;
  readonly enabled: boolean;
}

/** Several quantities computed together by a pure function, where no formula would do (rounding to a fixed total, say). */
export interface Block {
  readonly id: string;
  readonly reads: readonly string[];
  readonly writes: readonly string[];
  /**
   * Gives one number for each of `writes`; NaN where there is none. Called only with finite numbers. `held` has the
   * results that a person has fixed, at their places among `writes`: the others are worked out around them.
   */
  readonly compute: (reads: readonly number[], held?: readonly (number | undefined)[]) => readonly number[];
}

/** A value or a formula that a person put over a quantity: it acts after all rules, and sees what it replaces as `value`. */
export interface Override {
  readonly on: string;
  readonly formula: string;
}

/**
 * Quantities whose sum is kept when some of them are overridden: of the others those of `givesWay`, where any of them is
 * left, else all, are scaled alike. A quantity is in one sharing at most.
 */
export interface Sharing {
  readonly members: readonly string[];
  readonly givesWay: readonly string[];
}

/** What a sheet is made of: named quantities, rules that act on them in this order, and what people put over them. */
export interface SheetModel {
  readonly inputs: readonly InputQuantity[];
  readonly constants: readonly ConstantQuantity[];
  readonly formulas: readonly FormulaQuantity[];
  readonly rules: readonly SheetRule[];
  readonly blocks: readonly Block[];
  readonly overrides: readonly Override[];
  readonly sharings: readonly Sharing[];
  /** Names that formulas may use for fixed numbers and that are no quantities (the choices of an input). */
  readonly names: Readonly<Record<string, number>>;
}
