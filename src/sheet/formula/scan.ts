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
  /(?<number>(?:\d+(?:\.(?![*/^])\d*)?|\.\d+)(?:[eE][+-]?\d+)?(?![\w.]))|(?<name>[A-Za-z_][A-Za-z0-9_]*)|(?<sign><=|>=|==|!=|<(?!<)|>(?!>)|[-+*/%^?:(),])|(?<space>\s+)/y;
const startOfValue = /\s*(?!(?:and|or|mod)\b)[\w.(+-]/y;

/** Reads the text from left to right without understanding it: finds names and numbers, refuses foreign signs. */
export function scanFormula(text: string): Scan {
  const scanner = new Scanner(text);
  return { error: scanner.run(), leaves: scanner.leaves };
}

class Scanner {
  readonly leaves: Leaf[] = [];
  readonly #text: string;
  #isAfterValue = false;
  /** For the text and for each bracket open in it: whether a `?` waits for its `:`. */
  readonly #waiting = [false];

  constructor(text: string) {
    this.#text = text;
  }

  run(): FormulaError | null {
    for (let position = 0; position < this.#text.length; position = piece.lastIndex) {
      piece.lastIndex = position;
      const groups = piece.exec(this.#text)?.groups;
      const error = groups ? this.#take(groups, position) : notAllowed(position, foreignPiece(this.#text, position));
      if (error) return error;
    }
    return null;
  }

  #take({ number, name, sign, space }: Partial<Record<string, string>>, position: number): FormulaError | null {
    if (space !== undefined) return null;
    const wasAfterValue = this.#isAfterValue;
    this.#isAfterValue = sign === undefined ? !operatorWords.has(name ?? '') : sign === ')';
    // mathjs would take `mod(a, 3)`, and so `% (a)`, for a function, and a lone `and` for a name.
    if (sign === '%' && !wasAfterValue) return formulaError('syntax', position, sign);
    if (sign !== undefined) return this.#takeSign(sign, position);
    if (refusedWords.has(name ?? '')) return notAllowed(position, name ?? '');
    if (this.#isAfterValue) this.leaves.push({ text: number ?? name ?? '', position });
    return this.#isAfterValue || wasAfterValue || name === 'not' ? null : formulaError('syntax', position, name);
  }

  #takeSign(sign: string, position: number): FormulaError | null {
    const waiting = this.#waiting;
    const level = waiting.length - 1;
    switch (sign) {
      case '(':
        waiting.push(false);
        return level < formulaLimits.brackets ? null : formulaError('too-deep', position, sign, { most: level });
      case ')':
        if (level > 0) waiting.pop();
        return null;
      case '?':
        waiting[level] = true;
        return null;
      case ':':
        // A `:` without a `?` before it would be a range.
        if (!waiting[level]) return notAllowed(position, sign);
        waiting[level] = false;
        return null;
      case '%':
        // A `%` with no value behind it would be a percentage.
        startOfValue.lastIndex = position + 1;
        return startOfValue.test(this.#text) ? null : notAllowed(position, sign);
      default:
        return null;
    }
  }
}

const notAllowed = (position: number, found: string): FormulaError => formulaError('not-allowed', position, found);

/** The refused thing as a person sees it: a whole run of digits and letters such as `0x1F`, else one sign. */
function foreignPiece(text: string, position: number): string {
  const rest = text.slice(position, position + 40);
  return /^(?:[\w.]+|<<|>>>?)/.exec(rest)?.[0] ?? Array.from(rest)[0] ?? '';
}
