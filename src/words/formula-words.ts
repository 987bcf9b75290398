import { functionArity } from '../sheet/formula/functions.js';
import type { Method } from '../training/method/document.js';
import { quantityName } from './quantity-names.js';
import type { Words } from './words.js';

/** Whose formula it is: in a rule's formula, `value` and `other` stand for quantities of the method. */
export interface FormulaContext {
  readonly method: Method;
  /** The quantity that `value` stands for, where it is not the one at hand. */
  readonly value?: string | undefined;
  readonly other?: string | undefined;
}

// A name, a number, a sign, or anything else one character at a time.
const piece = /[A-Za-z_]\w*|\d+\.?\d*(?:[eE][+-]?\d+)?|\.\d+|<=|>=|==|!=|\s+|./gs;

const signs: ReadonlyMap<string, string> = new Map([
  ['*', '×'],
  ['/', '÷'],
  ['-', '−'],
  ['<=', '≤'],
  ['>=', '≥'],
  ['==', '='],
  ['!=', '≠'],
]);

const spoken: ReadonlyMap<string, string> = new Map([
  ...['and', 'or', 'not', 'mod', 'value', ...Object.keys(functionArity)].map((word) => [word, word] as const),
  ['?', 'then'],
  [':', 'otherwise'],
]);

/**
 * A formula with its quantities by their names in plain words and its signs as people write them.
 *
 * @example formulaWords(words, { method }, 'weekly_minutes * strength_share') // 'minutes a week × share of strength'
 */
export function formulaWords(words: Words, context: FormulaContext, formula: string): string {
  const tokens = formula.match(piece) ?? [];
  return spaced(tokens.map((token) => tokenWords(words, context, token)).join(''));
}

/** Room around the signs between two things, none inside brackets or before a comma, however the coach has written it. */
function spaced(text: string): string {
  return text
    .replace(/(?<=[\p{L}\d)”“»])\s*([−+×÷^%<>≤≥=≠])\s*/gu, ' $1 ')
    .replace(/\s+(?=[:,)])|(?<=\()\s+/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

function tokenWords(words: Words, { method, value, other }: FormulaContext, token: string): string {
  if (token === 'value' && value !== undefined) return quantityName(words, method, value);
  if (token === 'other' && other !== undefined) return quantityName(words, method, other);
  const word = spoken.get(token);
  if (word !== undefined) return `${words.say(`formula.${word}`)} `;
  if (/^\.?\d/.test(token)) return words.number(Number(token), 10);
  if (/^[A-Za-z_]/.test(token)) return quantityName(words, method, token);
  return signs.get(token) ?? token;
}
