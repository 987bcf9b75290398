import { ceilNear, floorNear, isNear, roundHalfAway } from './numbers.js';
import { stepWidth } from './program.js';

/**
 * Runs steps `start` to `end` (indexes into `steps`) on one column of registers.
 *
 * NaN marks a failed value, an overflow among them: every operation hands it on, a comparison too, so that no failure
 * turns into a quiet "false"; only a branch that `if()` does not take, and the right side that `and` and `or` do not
 * need, may fail unseen. Zero has no sign: a person would not know what to make of -0.
 * The cases are the numbers of `operationCode`, written out because a switch over literals is a jump table.
 */
export function runSteps(
  steps: Int32Array,
  registers: Float64Array,
  { start, end }: { readonly start: number; readonly end: number },
): void {
  for (let step = start; step < end; step += stepWidth) {
    const a = registers[steps[step + 2]!]!;
    const b = registers[steps[step + 3]!]!;
    let result: number;
    switch (steps[step]) {
      case 0: // +
        result = a + b;
        break;
      case 1: // -
        result = a - b;
        break;
      case 2: // *
        result = a * b;
        break;
      case 3: // /
        result = b === 0 ? NaN : a / b;
        break;
      case 4: // %
        result = b === 0 ? NaN : a - b * Math.floor(a / b);
        break;
      case 5: // ^
        result = a === a ? a ** b : NaN; // NaN ** 0 would be 1
        break;
      case 6: // <
        result = a < b ? +!isNear(a, b) : a === a && b === b ? 0 : NaN;
        break;
      case 7: // <=
        result = a <= b ? 1 : a === a && b === b ? +isNear(a, b) : NaN;
        break;
      case 8: // >
        result = a > b ? +!isNear(a, b) : a === a && b === b ? 0 : NaN;
        break;
      case 9: // >=
        result = a >= b ? 1 : a === a && b === b ? +isNear(a, b) : NaN;
        break;
      case 10: // ==
        result = a === a && b === b ? +isNear(a, b) : NaN;
        break;
      case 11: // !=
        result = a === a && b === b ? +!isNear(a, b) : NaN;
        break;
      case 12: // and
        result = a === 0 ? 0 : a === a && b === b ? +(b !== 0) : NaN;
        break;
      case 13: // or
        result = a === a && a !== 0 ? 1 : a === a && b === b ? +(b !== 0) : NaN;
        break;
      case 14: // not
        result = a === a ? +(a === 0) : NaN;
        break;
      case 15: // neg
        result = -a;
        break;
      case 16: // if
        result = a === a ? (a !== 0 ? b : registers[steps[step + 4]!]!) : NaN;
        break;
      case 17: // min
        result = Math.min(a, b);
        break;
      case 18: // max
        result = Math.max(a, b);
        break;
      case 19: // round
        result = roundHalfAway(a);
        break;
      case 20: // floor
        result = floorNear(a);
        break;
      case 21: // ceil
        result = ceilNear(a);
        break;
      case 22: // abs
        result = Math.abs(a);
        break;
      default: // sqrt
        result = Math.sqrt(a);
    }
    registers[steps[step + 1]!] = result - result === 0 ? result + 0 : NaN;
  }
}
