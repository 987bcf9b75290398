/**
 * A formula as plain data, operands before operations: `a * (b + 1)` is `['a', 'b', 1, '+', '*']`.
 *
 * Numbers are constants; texts are operations (see `operationTokens`) or names of quantities. Truth is 1, falsehood 0.
 */
export type CompiledFormula = readonly (number | string)[];

/** Compiled formulas by their text: those of the built-in method ship with the package, others come from the parser. */
export type FormulaBook = Readonly<Record<string, CompiledFormula>>;
