import type { Problem } from '../../problem.js';

/** What is wrong with a text that is no number. */
export function notANumber(path: string, value: string): Problem {
  return { path, value, code: 'wrong-type', allowed: { expected: 'number' } };
}
