import { compileFormula } from '../../src/sheet/formula/compile.js';
import type { FormulaBook } from '../../src/sheet/formula/compiled-formula.js';
import { packProgram, type PackedProgram } from '../../src/sheet/packed-program.js';
import { createSheet, formulaTexts } from '../../src/sheet/sheet.js';
import type { Method } from '../../src/training/method/document.js';
import { expandMethod } from '../../src/training/method/expand.js';

export { readMethod } from '../../src/training/method/read-method.js';
export { jsonSchema } from './json-schemas.js';

/** Every formula of a method's sheet, compiled. Throws for the first that is none. */
export function compileFormulas(method: Method): FormulaBook {
  const compiled = formulaTexts(expandMethod(method)).map((text) => {
    const result = compileFormula(text);
    if (!result.ok) throw new Error(`${text}: ${JSON.stringify(result.error)}`);
    return [text, result.formula] as const;
  });
  return Object.fromEntries(compiled);
}

/** The linked program of a method's sheet. */
export function packedProgram(method: Method): PackedProgram {
  const model = expandMethod(method);
  return packProgram(createSheet(model, compileFormulas(method)).program, model);
}
