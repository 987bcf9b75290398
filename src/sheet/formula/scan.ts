import { formulaLimits } from './functions.js';
import { formulaError, type FormulaError } from './formula-error.js';

/** A name or a number in a formula's text, in the order in which the text has them. */
export interface Leaf {
  readonly text: string;
  readonly position: number;
}

export interface Scan {
  readonly leaves: readonly Leaf[];
  /** The first thing in the text that no formula may hold. */
  readonly error: FormulaError | null;
}

const operatorWords: ReadonlySet<string> = new Set(['and', 'or', 'not', 'mod']);
const refusedWords: ReadonlySet<string> = new Set(['xor', 'to', 'in']);
const piece =
  /(?<number>(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?(?![\w.]))|(?<name>[A-Za-z_][A-Za-z0-9_]*)|(?<sign><=|>=|==|!=|[-+*/%^<>?:(),])|(?<space>\s+)/y;

/** Reads the text from left to right without understanding it: finds names and numbers, refuses foreign signs. */
export function scanFormula(text: string): Scan {
  const leaves: Leaf[] = [];
  let brackets = 0;
  const stop = (error: FormulaError): Scan => ({ leaves, error });
  for (let position = 0; position < text.length; position = piece.lastIndex) {
    piece.lastIndex = position;
    const groups = piece.exec(text)?.groups;
    if (!groups) return stop(formulaError('not-allowed', position, foreignPiece(text, position)));
    const { number, name, sign } = groups;
    if (name && refusedWords.has(name)) return stop(formulaError('not-allowed', position, name));
    if (number ?? (name && !operatorWords.has(name))) leaves.push({ text: number ?? name ?? '', position });
    if (sign === '(') brackets += 1;
    if (sign === ')') brackets -= 1;
    if (brackets > formulaLimits.brackets)
      return stop(formulaError('too-deep', position, '(', { most: formulaLimits.brackets }));
  }
  return { leaves, error: null };
}

/** The refused thing as a person sees it: a whole run of digits and letters such as `0x1F`, else one sign. */
function foreignPiece(text: string, position: number): string {
  return /^[\w.]+/.exec(text.slice(position, position + 40))?.[0] ?? [...text.slice(position, position + 2)][0] ?? '';
}
