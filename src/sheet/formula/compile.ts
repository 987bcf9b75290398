import type { CompiledFormula } from './compiled-formula.js';
import { formulaError, type FormulaError, type FormulaErrorCode } from './formula-error.js';
import { formulaLimits, functionArity } from './functions.js';
import { parseSyntax } from './parser.js';
import { scanFormula, type Leaf } from './scan.js';
import type { SyntaxNode } from './syntax-tree.js';

export type Compilation =
  { readonly ok: true; readonly formula: CompiledFormula } | { readonly ok: false; readonly error: FormulaError };

/**
 * Turns the text of a formula into plain data that the machine runs.
 *
 * @param text mathjs expression syntax, of which numbers, names, arithmetic, comparison, `and or not`, the conditional
 *   `a ? b : c` and the functions of `functionArity` are allowed; at most 2,000 characters.
 * @returns the compiled formula, or the first error with its position. Names are not looked up: linking does that.
 * @example compileFormula('hours * 60') // { ok: true, formula: ['hours', 60, '*'] }
 */
export function compileFormula(text: string): Compilation {
  const { length } = formulaLimits;
  if (text.length > length) return refuse(formulaError('too-long', length, '', { most: length, given: text.length }));
  if (text.trim() === '') return refuse(formulaError('empty', 0));
  const scan = scanFormula(text);
  if (scan.error) return refuse(scan.error);
  try {
    const code: (number | string)[] = [];
    new Walk(scan.leaves, code).visit(parseSyntax(forParser(text)), 0);
    return { ok: true, formula: code };
  } catch (error) {
    return refuse(asFormulaError(error, text));
  }
}

const mod = ' mod ';

/** Spaces of every kind as plain ones, and `mod` for `%`: what stands behind a `%` mathjs reads twice, to know a percentage. */
function forParser(text: string): string {
  return text.replace(/\s/g, ' ').replaceAll('%', mod);
}

/** Where in the text a place is of what the parser was given. */
function placeIn(text: string, given: number): number {
  let length = 0;
  const place = Array.from(text).findIndex((sign) => (length += forParser(sign).length) > given);
  return place === -1 ? text.length : place;
}

const refuse = (error: FormulaError): Compilation => ({ ok: false, error });

class Refusal extends Error {
  readonly error: FormulaError;
  constructor(error: FormulaError) {
    super(error.code);
    this.error = error;
  }
}

function asFormulaError(error: unknown, text: string): FormulaError {
  if (error instanceof Refusal) return error.error;
  // A text of nothing but signs can nest deeper than the stack before any limit of ours sees the tree.
  if (error instanceof RangeError) return formulaError('too-deep', 0, '', { most: formulaLimits.depth });
  if (!(error instanceof SyntaxError)) throw error;
  const char = 'char' in error && typeof error.char === 'number' ? error.char : Infinity;
  const position = placeIn(text, char - 1);
  return formulaError('syntax', position, /^\s*(\w+|\S?)/.exec(text.slice(position))?.[1] ?? '');
}

const binaryTokens: Readonly<Record<string, string>> = {
  ...Object.fromEntries(['+', '-', '*', '/', '%', '^', '<', '<=', '>', '>=', '==', '!='].map((sign) => [sign, sign])),
  and: 'and()',
  or: 'or()',
  mod: '%',
};
const unaryTokens: Readonly<Record<string, string | null>> = { '-': 'neg()', '+': null, not: 'not()' };
const relations: Readonly<Record<string, string>> = {
  smaller: '<',
  smallerEq: '<=',
  larger: '>',
  largerEq: '>=',
  equal: '==',
  unequal: '!=',
};

/** One pass over the syntax tree in the order of the text, so that the leaves it meets are the leaves the scan found. */
class Walk {
  readonly #leaves: readonly Leaf[];
  readonly #code: (number | string)[];
  #met = 0;

  constructor(leaves: readonly Leaf[], code: (number | string)[]) {
    this.#leaves = leaves;
    this.#code = code;
  }

  visit(node: SyntaxNode, depth: number): void {
    if (depth > formulaLimits.depth) this.#fail('too-deep', { values: { most: formulaLimits.depth } });
    const inside = depth + 1;
    switch (node.type) {
      case 'ConstantNode':
        return this.#constant(node.value);
      case 'SymbolNode':
        return void this.#code.push(this.#take(node.name));
      case 'ParenthesisNode':
        return this.visit(node.content, depth);
      case 'OperatorNode':
        return this.#operator(node, inside);
      case 'ConditionalNode':
        this.#all([node.condition, node.trueExpr, node.falseExpr], inside);
        return void this.#code.push('if()');
      case 'RelationalNode':
        return this.#chain(node, inside);
      case 'FunctionNode':
        return this.#call(node, inside);
    }
  }

  #all(nodes: readonly SyntaxNode[], depth: number): void {
    for (const node of nodes) this.visit(node, depth);
  }

  #take(name: string): string {
    if (Object.hasOwn(functionArity, name)) this.#fail('syntax', { found: name });
    this.#met += 1;
    return name;
  }

  #constant(value: unknown): void {
    const number = typeof value === 'boolean' ? Number(value) : value;
    if (typeof number !== 'number') return this.#fail('not-allowed', { found: String(value) });
    if (!Number.isFinite(number)) this.#fail('not-finite');
    this.#met += 1;
    this.#code.push(number);
  }

  #operator(node: SyntaxNode & { type: 'OperatorNode' }, depth: number): void {
    const [first, second] = node.args;
    if (first) this.visit(first, depth);
    if (node.implicit) this.#fail('not-allowed', { found: 'implicit multiplication' });
    if (second) this.visit(second, depth);
    const tokens = second ? binaryTokens : unaryTokens;
    if (!Object.hasOwn(tokens, node.op)) this.#fail('not-allowed', { found: node.op });
    const token = tokens[node.op];
    if (token) this.#code.push(token);
  }

  /** `1 < a < 10` means `1 < a and a < 10`; the middle is written twice, computed alike. */
  #chain(node: SyntaxNode & { type: 'RelationalNode' }, depth: number): void {
    const operands = node.params.map((param) => {
      const start = this.#code.length;
      this.visit(param, depth);
      return this.#code.splice(start);
    });
    node.conditionals.forEach((relation, index) => {
      const token = relations[relation];
      if (!token) return this.#fail('not-allowed', { found: relation });
      this.#code.push(...(operands[index] ?? []), ...(operands[index + 1] ?? []), token);
      if (index > 0) this.#code.push('and()');
      // Chains inside the middles of chains double at each level: the result is bounded, not only the text.
      if (this.#code.length > formulaLimits.steps) this.#fail('too-long', { values: { most: formulaLimits.steps } });
    });
  }

  #call(node: SyntaxNode & { type: 'FunctionNode' }, depth: number): void {
    const name = node.fn.type === 'SymbolNode' ? node.fn.name : '';
    const arity = Object.hasOwn(functionArity, name) ? functionArity[name] : undefined;
    if (!arity) return this.#fail('unknown-function', { found: name });
    const [least, most] = arity;
    const given = node.args.length;
    if (given < least || given > most) this.#fail('wrong-arguments', { found: name, values: { least, most, given } });
    this.#met += 1;
    if (name === 'clamp') return this.#clamp(node.args, depth);
    const token = name === 'sum' ? '+' : `${name}()`;
    node.args.forEach((argument, index) => {
      this.visit(argument, depth);
      if (index > 0) this.#code.push(token);
    });
    if (most === 1) this.#code.push(token);
  }

  /** `clamp(value, least, most)` is `min(max(value, least), most)`. */
  #clamp(args: readonly SyntaxNode[], depth: number): void {
    args.forEach((argument, index) => {
      this.visit(argument, depth);
      if (index > 0) this.#code.push(index === 1 ? 'max()' : 'min()');
    });
  }

  #fail(
    code: FormulaErrorCode,
    { found, values = {} }: { found?: string; values?: Readonly<Record<string, number>> } = {},
  ): never {
    const leaf = this.#leaves[Math.min(this.#met, this.#leaves.length - 1)];
    throw new Refusal(formulaError(code, leaf?.position ?? 0, found ?? leaf?.text ?? '', values));
  }
}
