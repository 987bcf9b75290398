/**
 * What a compiled formula can do, by the number that the machine knows it by (`runCells` names the same numbers). A
 * token is written as it stands in a formula, functions with brackets behind them.
 */
export const operationCode = {
  '+': 0,
  '-': 1,
  '*': 2,
  '/': 3,
  '%': 4,
  '^': 5,
  '<': 6,
  '<=': 7,
  '>': 8,
  '>=': 9,
  '==': 10,
  '!=': 11,
  'and()': 12,
  'or()': 13,
  'not()': 14,
  'neg()': 15,
  'if()': 16,
  'min()': 17,
  'max()': 18,
  'round()': 19,
  'floor()': 20,
  'ceil()': 21,
  'abs()': 22,
  'sqrt()': 23,
  // No formula can call it: rules hand on with it what they take.
  'hand()': 24,
  // Nor this: what is left when some of it is held by hand, which is not less than nothing.
  'spare()': 25,
} as const;
export type OperationToken = keyof typeof operationCode;

const unary: ReadonlySet<string> = new Set([
  'not()',
  'neg()',
  'round()',
  'floor()',
  'ceil()',
  'abs()',
  'sqrt()',
  'spare()',
]);

/** True for a token that is an operation; every other text in a compiled formula is the name of a quantity. */
export function isOperation(token: string): token is OperationToken {
  return Object.hasOwn(operationCode, token);
}

/** How many values an operation takes. */
export function operandCount(token: OperationToken): 1 | 2 | 3 {
  if (token === 'if()' || token === 'hand()') return 3;
  return unary.has(token) ? 1 : 2;
}
