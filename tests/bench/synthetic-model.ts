import type { SheetModel } from '../../src/sheet/model.js';

/** Operands of a formula: the quantity before it, and two from further back. */
type Operands = readonly [last: string, near: string, far: string];

/** Kinds of formula in turn; their results stay between 0 and 100 where their operands do. */
const kinds: readonly ((operands: Operands) => string)[] = [
  ([a, b]) => `${a} * 0.5 + ${b} * 0.5`,
  ([a, b, c]) => `${a} > ${b} ? ${c} : ${a} * 0.5`,
  ([a, b, c]) => `min(${a}, ${b} + 3) * 0.75 + ${c} / 8`,
  ([a, b]) => `(${a} + ${b}) / 2`,
  ([a, b]) => `max(${a}, ${b}) * 0.9`,
  ([a, b, c]) => `abs(${a} - ${b}) * 0.25 + ${c} * 0.5`,
];
const [quantityCount, inputCount] = [120, 6];

/**
 * A sheet of 120 quantities over 6 inputs that is nobody's method. Every quantity reads the one before it, so a change of
 * `input_0` reaches all of them, and one of `input_5` only the last dozen.
 */
export function syntheticModel(): SheetModel {
  const inputs = Array.from({ length: inputCount }, (_, index) => `input_${index}`);
  const quantities = Array.from({ length: quantityCount }, (_, index) => `quantity_${index}`);
  const before = (index: number): string => quantities[index] ?? inputs[(-index - 1) % 5] ?? 'input_0';
  const formulas = quantities.map((id, index) => {
    const near = index === quantityCount - 12 ? 'input_5' : before(index - 3 - ((index * 7) % 11));
    const far = before(index - 5 - ((index * 5) % 17));
    return { id, formula: kinds[index % kinds.length]?.([before(index - 1), near, far]) ?? '' };
  });
  return {
    inputs: inputs.map((id, index) => ({ id, least: 0, most: 100, step: 1, start: 15 * (index + 1), isChoice: false })),
    constants: [],
    formulas,
    rules: [],
    blocks: [],
    overrides: [],
    sharings: [],
    names: {},
  };
}
