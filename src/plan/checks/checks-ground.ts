import { builtInChecks } from '../../training/method/built-in-checks.js';
import type { CheckRules } from '../../training/method/check-rules.js';
import type { Method } from '../../training/method/document.js';

/** How a method holds plans against what is known: by its own checks, or by those of the built-in method. */
export const checkRules = ({ checks }: Pick<Method, 'checks'>): CheckRules => checks ?? builtInChecks;
