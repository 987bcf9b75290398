import { compileFormula } from '../../src/sheet/formula/compile.js';
import type { Outcome } from '../../src/problem.js';
import type { FormulaBook } from '../../src/sheet/formula/compiled-formula.js';
import { packProgram, type PackedProgram } from '../../src/sheet/packed-program.js';
import { createSheet, formulaTexts } from '../../src/sheet/sheet.js';
import type { Method } from '../../src/training/method/document.js';
import { duplicates } from '../../src/training/method/duplicates.js';
import { expandMethod } from '../../src/training/method/expand.js';
import { readShape } from '../../src/training/method/read-shape.js';
import type { Movement } from '../../src/training/method/strength-rules.js';
import { movementsSchema } from '../../src/training/method/strength-schema.js';

export { readMethod } from '../../src/training/method/read-method.js';
export { jsonSchema } from './json-schemas.js';

/** The library of movements, or its faults. */
export function readMovements(document: unknown): Outcome<readonly Movement[]> {
  const read = readShape(movementsSchema, document);
  const problems = read.ok ? duplicates(read.value, 'movements') : [];
  return problems.length > 0 ? { ok: false, problems } : read;
}

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
