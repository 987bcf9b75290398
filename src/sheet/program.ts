import type { CellError } from './errors.js';
import type { Block } from './model.js';

/** A step of the machine: an operation, the register it fills, and the registers it reads. */
export const stepWidth = 5;

/** A cell as the machine runs it: steps from `start` to `end`, the last of which fills `register`; or a block. */
export interface ProgramCell {
  readonly id: string;
  readonly register: number;
  readonly start: number;
  readonly end: number;
  /** Registers of the cells it reads. */
  readonly reads: readonly number[];
  readonly block: { readonly definition: Block; readonly writes: readonly number[] } | null;
}

/** For each register that a person sets, the indexes of the cells that can change with it, in order. */
export function reachOf(settable: Iterable<number>, cells: readonly ProgramCell[]): Program['reached'] {
  return new Map([...settable].map((register) => [register, reachedFrom(register, cells)]));
}

function reachedFrom(register: number, cells: readonly ProgramCell[]): Int32Array {
  const changed = new Set([register]);
  const indexes: number[] = [];
  cells.forEach((cell, index) => {
    if (!cell.reads.some((read) => changed.has(read))) return;
    indexes.push(index);
    for (const written of cell.block?.writes ?? [cell.register]) changed.add(written);
  });
  return Int32Array.from(indexes);
}

/**
 * A sheet made ready to run: plain data, names resolved to registers, cells in an order that needs no looking back.
 * Nothing in it is code, so no content policy can object to it.
 */
export interface Program {
  /** Values of all registers before anything ran: inputs at their start, constants, NaN elsewhere. */
  readonly initial: Float64Array;
  readonly registers: ReadonlyMap<string, number>;
  /** The registers of the inputs and constants that a person sets, by the name of the quantity. */
  readonly settable: ReadonlyMap<string, number>;
  /** `stepWidth` numbers a step. */
  readonly steps: Int32Array;
  readonly cells: readonly ProgramCell[];
  /** For each register that a person sets, the indexes of the cells that can change with it, in order. */
  readonly reached: ReadonlyMap<number, Int32Array>;
  /** For each formula's cell, those with a fault too, the registers of the cells it reads. */
  readonly reads: ReadonlyMap<string, readonly number[]>;
  /** Faults known before the first run: names that do not exist, circles. */
  readonly errors: ReadonlyMap<string, CellError>;
}
