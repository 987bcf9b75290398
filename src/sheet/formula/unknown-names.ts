import type { CompiledFormula } from './compiled-formula.js';
import { formulaError, type FormulaError } from './formula-error.js';
import { namesIn } from './names-in.js';

/** The names in a formula that `isKnown` does not know, each as an error at the place where the text has it first. */
export function unknownNames(
  text: string,
  code: CompiledFormula,
  isKnown: (name: string) => boolean,
): readonly FormulaError[] {
  const unknown = namesIn(code).filter((name) => !isKnown(name));
  return unknown.map((name) => formulaError('unknown-name', positionOf(name, text), name));
}

function positionOf(name: string, text: string): number {
  return Math.max(0, text.search(new RegExp(`\\b${name}\\b`)));
}
