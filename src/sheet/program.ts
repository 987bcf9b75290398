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

/**
 * A sheet made ready to run: plain data, names resolved to registers, cells in an order that needs no looking back.
 * Nothing in it is code, so no content policy can object to it.
 */
export interface Program {
  /** Values of all registers before anything ran: inputs at their start, constants, NaN elsewhere. */
  readonly initial: Float64Array;
  readonly registers: ReadonlyMap<string, number>;
  /** `stepWidth` numbers a step. */
  readonly steps: Int32Array;
  readonly cells: readonly ProgramCell[];
  /** For each register that a person sets, the indexes of the cells that can change with it, in order. */
  readonly reached: ReadonlyMap<number, Int32Array>;
  /** Faults known before the first run: names that do not exist, circles. */
  readonly errors: ReadonlyMap<string, CellError>;
}
