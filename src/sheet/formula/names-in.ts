import type { CompiledFormula } from './compiled-formula.js';
import { isOperation } from './operations.js';

/** The names that a compiled formula reads, each once: of `['a', 'b', '+', 'a', '*']` they are `a` and `b`. */
export function namesIn(code: CompiledFormula): string[] {
  const names = code.filter((token): token is string => typeof token === 'string' && !isOperation(token));
  return [...new Set(names)];
}
