import type { FormulaBook } from './compiled-formula.js';
import type { FormulaError } from './formula-error.js';

/** Formulas by their texts: compiled, or why one is refused. */
export interface CompiledTexts {
  readonly book: FormulaBook;
  readonly errors: ReadonlyMap<string, FormulaError>;
}

const lone = /^\s*(-?)\s*(\d+(?:\.\d+)?)\s*$/;

/** Compiles the texts that a book lacks. A lone number needs no parser; for anything else the parser is fetched, once. */
export async function compileTexts(texts: readonly string[], known: FormulaBook): Promise<CompiledTexts> {
  const missing = texts.filter((text) => !Object.hasOwn(known, text));
  if (missing.length === 0) return { book: known, errors: new Map() };
  if (missing.every((text) => lone.test(text))) return { book: { ...known, ...numbersOf(missing) }, errors: new Map() };
  const { compileFormula } = await import('./compile.js');
  const compiled = missing.map((text) => [text, compileFormula(text)] as const);
  const added = compiled.flatMap(([text, result]) => (result.ok ? [[text, result.formula] as const] : []));
  const errors = compiled.flatMap(([text, result]) => (result.ok ? [] : [[text, result.error] as const]));
  return { book: { ...known, ...Object.fromEntries(added) }, errors: new Map(errors) };
}

function numbersOf(texts: readonly string[]): FormulaBook {
  const entries = texts.map((text) => {
    const [, sign, digits] = lone.exec(text) ?? [];
    return [text, sign === '-' ? [Number(digits), 'neg()'] : [Number(digits)]] as const;
  });
  return Object.fromEntries(entries);
}
