import { ceilNear, floorNear, handOn, isNear, plainNumber, roundHalfAway } from './numbers.js';
import { stepWidth, type Program, type ProgramCell } from './program.js';

/** Where cells find and leave their values, and the marks (1) on those that have changed. */
export interface Workspace {
  readonly registers: Float64Array;
  readonly changed: Uint8Array;
}

/**
 * Runs, of the cells at `indexes`, those that read a changed value, and marks what changes by that.
 *
 * NaN marks a failed value, an overflow among them: every operation hands it on, a comparison too, so that no failure
 * turns into a quiet "false"; only a branch that `if()` does not take, and the right side that `and` and `or` do not
 * need, may fail unseen. Zero has no sign: a person would not know what to make of -0.
 *
 * It is one long function because a call for each cell costs as much as the cell. The cases are the numbers of
 * `operationCode`, written out because a switch over literals is a jump table.
 *
 * @returns the ids whose value changed, in the order of computation.
 */
export function runCells({ cells, steps }: Program, indexes: Int32Array, workspace: Workspace): string[] {
  const { registers, changed } = workspace;
  const changedIds: string[] = [];
  for (let index = 0; index < indexes.length; index += 1) {
    const cell = cells[indexes[index]!]!;
    if (!isStale(cell.reads, changed)) continue;
    if (cell.block) runBlock(cell, cell.block, { ...workspace, changedIds });
    const { register, end } = cell;
    const before = registers[register]!;
    for (let step = cell.start; step < end; step += stepWidth) {
      const a = registers[steps[step + 2]!]!;
      const b = registers[steps[step + 3]!]!;
      let result: number;
      switch (steps[step]) {
        case 0: // +
          result = plainNumber(a + b);
          break;
        case 1: // -
          result = plainNumber(a - b);
          break;
        case 2: // *
          result = plainNumber(a * b);
          break;
        case 3: // /
          result = b === 0 ? NaN : plainNumber(a / b);
          break;
        case 4: // %
          result = b === 0 ? NaN : plainNumber(a - b * Math.floor(a / b));
          break;
        case 5: // ^
          result = a === a ? plainNumber(a ** b) : NaN; // NaN ** 0 would be 1
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
          result = 0 - a;
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
          result = plainNumber(roundHalfAway(a));
          break;
        case 20: // floor
          result = plainNumber(floorNear(a));
          break;
        case 21: // ceil
          result = plainNumber(ceilNear(a));
          break;
        case 22: // abs
          result = Math.abs(a);
          break;
        case 23: // sqrt
          result = Math.sqrt(a);
          break;
        case 24: // hand
          result = plainNumber(handOn(a, b, registers[steps[step + 4]!]!));
          break;
        default: // spare
          result = a < 0 ? NaN : a;
      }
      registers[steps[step + 1]!] = result;
    }
    if (Object.is(before, registers[register])) continue;
    changed[register] = 1;
    changedIds.push(cell.id);
  }
  return changedIds;
}

/** A cell that reads nothing is always run: in the first run it has to be, and later it changes nothing. */
function isStale(reads: readonly number[], changed: Uint8Array): boolean {
  for (let index = 0; index < reads.length; index += 1) if (changed[reads[index]!] === 1) return true;
  return reads.length === 0;
}

function runBlock(
  { reads }: ProgramCell,
  { definition, writes }: NonNullable<ProgramCell['block']>,
  { registers, changed, changedIds }: Workspace & { readonly changedIds: string[] },
): void {
  const values = reads.map((register) => registers[register]!);
  const results = values.every(Number.isFinite) ? definition.compute(values) : [];
  definition.writes.forEach((id, index) => {
    const register = writes[index]!;
    const result = plainNumber(results[index] ?? NaN);
    if (Object.is(result, registers[register])) return;
    registers[register] = result;
    changed[register] = 1;
    changedIds.push(id);
  });
}
