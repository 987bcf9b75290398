import type { FormulaError } from '../sheet/formula/formula-error.js';
import type { Words } from './words.js';

/**
 * Why the text of a formula is refused and where, fit for the middle of a sentence; characters are counted from 1.
 *
 * @example '“strenght” is not a known quantity (character 18)'
 */
export function formulaErrorReason(words: Words, error: FormulaError): string {
  const reason = words.say(reasonKey(error), { ...error.values, count: error.values['most'] ?? 0, found: error.found });
  return words.say('formula-error.at', { reason, position: error.position + 1 });
}

function reasonKey({ code, found, values }: FormulaError): string {
  const key = `formula-error.${code}`;
  if (code === 'syntax' && found === '') return `${key}-end`;
  if (code === 'wrong-arguments' && values['least'] === values['most']) return `${key}-exact`;
  if (code === 'not-allowed' && found === 'implicit multiplication') return 'formula-error.missing-sign';
  return key;
}
