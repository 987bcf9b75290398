import { compileFormula } from '../../../src/sheet/formula/compile.js';
import type { CompiledFormula, FormulaBook } from '../../../src/sheet/formula/compiled-formula.js';
import type { Block, Override, Sharing, SheetModel, SheetRule } from '../../../src/sheet/model.js';
import { createColumn, createSheet, formulaTexts, type Sheet } from '../../../src/sheet/sheet.js';

/** A sheet in short: numbers and formulas by name. */
export interface SheetParts {
  readonly inputs?: Readonly<Record<string, number>>;
  readonly constants?: Readonly<Record<string, number>>;
  readonly formulas?: Readonly<Record<string, string>>;
  readonly rules?: readonly SheetRule[];
  readonly blocks?: readonly Block[];
  readonly overrides?: readonly Override[];
  readonly sharings?: readonly Sharing[];
  readonly names?: Readonly<Record<string, number>>;
}

/** A rule that is on and holds, unless `parts` says otherwise. */
export function ruleOf(parts: Pick<SheetRule, 'id' | 'on' | 'value'> & Partial<SheetRule>): SheetRule {
  return { when: '1', enabled: true, ...parts };
}

export function sheetOf({ inputs = {}, constants = {}, formulas = {}, ...parts }: SheetParts): Sheet {
  const model: SheetModel = {
    inputs: Object.entries(inputs).map(([id, start]) => ({
      id,
      start,
      least: -Infinity,
      most: Infinity,
      step: 1,
      isChoice: false,
    })),
    constants: Object.entries(constants).map(([id, constant]) => ({ id, constant })),
    formulas: Object.entries(formulas).map(([id, formula]) => ({ id, formula })),
    rules: [],
    blocks: [],
    overrides: [],
    sharings: [],
    names: {},
    ...parts,
  };
  return createSheet(model, compileAll(formulaTexts(model)));
}

/** Compiles texts that must be formulas. */
export function compileAll(texts: readonly string[]): FormulaBook {
  return Object.fromEntries(texts.map((text) => [text, compiled(text)]));
}

export function compiled(text: string): CompiledFormula {
  const result = compileFormula(text);
  if (!result.ok) throw new Error(`${text}: ${JSON.stringify(result.error)}`);
  return result.formula;
}

/** The machine's value of one formula over named numbers; NaN where it has none. */
export function valueOf(text: string, numbers: Readonly<Record<string, number>> = {}): number {
  return createColumn(sheetOf({ inputs: numbers, formulas: { result: text } })).value('result');
}
