import type { CellError } from './errors.js';

/** A quantity that a formula reads, with its value at the time; null where it failed. */
export interface Reading {
  readonly name: string;
  readonly value: number | null;
}

/** What one rule did to a quantity. */
export interface RuleStep {
  readonly rule: string;
  /** `on`: the rule acts on this quantity; `to`: it hands on to, or takes from, this quantity. */
  readonly role: 'on' | 'to';
  readonly enabled: boolean;
  readonly acted: boolean;
  readonly when: string;
  readonly formula: string;
  readonly before: number | null;
  readonly after: number | null;
}

/** Why a quantity is what it is. */
export interface Derivation {
  readonly quantity: string;
  /** `input`: set by a person; `constant`: a number of the method; `formula`; `block`: a whole computation, such as rounding. */
  readonly kind: 'input' | 'constant' | 'formula' | 'block';
  readonly value: number | null;
  /** The base formula; for a block its name; null for an input or a constant. */
  readonly formula: string | null;
  readonly readings: readonly Reading[];
  readonly rules: readonly RuleStep[];
  readonly error: CellError | null;
}
