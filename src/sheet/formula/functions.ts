/** The functions a formula may call, with the fewest and the most values they take. */
export const functionArity: Readonly<Record<string, readonly [least: number, most: number]>> = {
  min: [1, 100],
  max: [1, 100],
  sum: [1, 100],
  round: [1, 1],
  floor: [1, 1],
  ceil: [1, 1],
  abs: [1, 1],
  sqrt: [1, 1],
  clamp: [3, 3],
};

/** Names that a quantity cannot have, because they mean something in every formula. */
export const reservedNames: readonly string[] = [
  ...Object.keys(functionArity),
  ...['value', 'other', 'and', 'or', 'not', 'xor', 'mod', 'to', 'in', 'true', 'false', 'null', 'undefined'],
  ...['end', 'Infinity', 'NaN'],
];

/** Limits on a formula: characters, brackets inside brackets, parts inside parts, steps of the compiled form. */
export const formulaLimits = { length: 2000, brackets: 24, depth: 64, steps: 4000 } as const;
