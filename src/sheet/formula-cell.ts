import type { CompiledFormula } from './formula/compiled-formula.js';

/** A number that the machine computes by a formula; `locals` says which cells its own names mean. */
export interface FormulaCell {
  readonly id: string;
  readonly code: CompiledFormula;
  readonly locals: Readonly<Record<string, string>>;
}
