import type { CellError } from './errors.js';

/** A quantity that a formula reads, with its value at the time; null where it failed. */
export interface Reading {
  readonly name: string;
  readonly value: number | null;
}

/** What one rule did to a quantity. */
export interface RuleStep {
  /** The rule of the method. */
  readonly rule: string;
  /** `on`: the rule acts on this quantity; `to`: it hands on to, or takes from, this quantity. */
  readonly role: 'on' | 'to';
  /** False where the rule is switched off. */
  readonly enabled: boolean;
  /** True where the rule changed the quantity. */
  readonly acted: boolean;
  /** The formula that says where the rule acts. */
  readonly when: string;
  /** The formula that says what the quantity `on` becomes. */
  readonly formula: string;
  /** The quantity before the rule; null where it has no number. */
  readonly before: number | null;
  /** The quantity after the rule; null where it has no number. */
  readonly after: number | null;
}

/** What a person's hand did to a quantity, after all rules. */
export interface ByHand {
  /** `override`: a value or formula was put over it; `gives-way`: it makes room for what was put over others. */
  readonly kind: 'override' | 'gives-way';
  /** What was put over it; null where it gives way. */
  readonly formula: string | null;
  /** What that formula reads, and the numbers it found. */
  readonly readings: readonly Reading[];
  /** What the quantity was before; null where that has no number. */
  readonly before: number | null;
  /** The overridden quantities that it gives way to. */
  readonly to: readonly string[];
}

/** Why a quantity is what it is. */
export interface Derivation {
  /** How formulas name it. */
  readonly quantity: string;
  /** `input`: set by a person; `constant`: a number of the method; `formula`; `block`: a whole computation, such as rounding. */
  readonly kind: 'input' | 'constant' | 'formula' | 'block';
  /** Null where the quantity failed: then `error` says why. */
  readonly value: number | null;
  /** The base formula; for a block its name; null for an input or a constant. */
  readonly formula: string | null;
  /** What the formula reads, and the numbers it found. */
  readonly readings: readonly Reading[];
  /** What the rules did to the quantity, in their order. */
  readonly rules: readonly RuleStep[];
  /** What a person put over it, or how it gives way to that; null where nobody did. */
  readonly byHand: ByHand | null;
  /** Why there is no number; null where there is one. */
  readonly error: CellError | null;
}
