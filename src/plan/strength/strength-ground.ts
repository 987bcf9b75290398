import { builtInStrength } from '../../training/method/built-in-strength.js';
import type { Method } from '../../training/method/document.js';
import type { Movement, StrengthRules } from '../../training/method/strength-rules.js';
import { builtInMovements } from '../../training/strength/built-in-movements.js';

/** What strength sessions are filled with. */
export interface StrengthGround {
  readonly rules: StrengthRules;
  /** The library, with the coach's own movements in place of those with the same id, and the others after them. */
  readonly movements: readonly Movement[];
}

/** How a method fills strength sessions: by its own rules, or by those of the built-in method. */
export function strengthGround({ strength }: Pick<Method, 'strength'>): StrengthGround {
  const rules = strength ?? builtInStrength;
  const own = new Map(rules.movements?.map((movement) => [movement.id, movement]));
  const library = builtInMovements.map((movement) => own.get(movement.id) ?? movement);
  const known = new Set(library);
  return { rules, movements: [...library, ...[...own.values()].filter((movement) => !known.has(movement))] };
}
