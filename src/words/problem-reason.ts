import { formulaErrorCodes, type FormulaError } from '../sheet/formula/formula-error.js';
import type { CellError } from '../sheet/errors.js';
import type { Problem } from '../problem.js';
import { cellErrorReason } from './cell-error-reason.js';
import { formulaErrorReason } from './formula-error-reason.js';
import type { Words } from './words.js';

/** The cause that some problems carry along, in words: a formula that is refused, or one that gives no number. */
export function problemReason(words: Words, { allowed }: Problem): string {
  const { error, cause, text } = { error: allowed['error'], cause: allowed['cause'], text: allowed['text'] };
  if (isFormulaError(error)) return formulaErrorReason(words, error);
  if (isCellError(cause)) return cellErrorReason(words, cause, (id) => id);
  if (typeof text === 'string' || isKey(text)) return words.text(text);
  return words.say('problem.unnamed');
}

const isKey = (value: unknown): value is { readonly key: string } =>
  isRecord(value) && typeof value['key'] === 'string';

function isFormulaError(value: unknown): value is FormulaError {
  if (!isRecord(value)) return false;
  const { code, position, found, values } = value;
  const isKnown = formulaErrorCodes.some((known) => known === code);
  return isKnown && typeof position === 'number' && typeof found === 'string' && isRecord(values);
}

function isCellError(value: unknown): value is CellError {
  if (!isRecord(value)) return false;
  switch (value['code']) {
    case 'division-by-zero':
    case 'too-large':
      return true;
    case 'nothing-left':
      return typeof value['over'] === 'number';
    case 'not-a-number':
      return typeof value['operation'] === 'string';
    case 'unknown-name':
      return typeof value['name'] === 'string';
    case 'circle':
      return Array.isArray(value['path']);
    case 'depends-on':
      return typeof value['name'] === 'string' && isCellError(value['cause']);
    default:
      return false;
  }
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
