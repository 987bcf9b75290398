import type { Outcome } from '../../problem.js';
import { checkMethod } from './check-method.js';
import type { Method } from './document.js';
import { readShape } from './read-shape.js';
import { methodSchema } from './schema.js';

/**
 * Reads a method document from outside: its shape, then what goes across its fields. Formulas are not compiled here.
 *
 * @returns the method, or every problem found, each with its path, the value given and what is allowed.
 */
export function readMethod(document: unknown): Outcome<Method> {
  const shape = readShape(methodSchema, document);
  if (!shape.ok) return shape;
  const problems = checkMethod(shape.value);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: shape.value };
}
