import { ruledChains } from './chains.js';
import type { SheetModel } from './model.js';
import { reachOf, stepWidth, type Program, type ProgramCell } from './program.js';

/** A program as plain data that is small to ship: what its model does not say already. */
export interface PackedProgram {
  /** How many registers there are. */
  readonly size: number;
  /** Registers that hold a number of a formula, each with the number behind it. */
  readonly numbers: readonly number[];
  /** See `Program.steps`. */
  readonly steps: readonly number[];
  /** For each cell its register, how many steps it has and the registers that it reads; -1 is the model's first block, and so on. */
  readonly cells: readonly (readonly number[])[];
}

/** Packs a program of a model without overrides and without faults; throws for any other. */
export function packProgram({ initial, registers, steps, cells, errors }: Program, model: SheetModel): PackedProgram {
  if (errors.size > 0 || model.overrides.length > 0) throw new Error('only a program without faults can be packed');
  const named = [...registers.keys()];
  const names = [...startsOf(model).map(([id]) => id), ...ruledChains(model).names];
  if (names.join() !== named.join()) throw new Error('the names of the cells do not follow from the model');
  const numbers = [...initial].flatMap((value, register) =>
    register >= named.length && !Number.isNaN(value) ? [register, value] : [],
  );
  return {
    size: initial.length,
    numbers,
    steps: [...steps],
    cells: cells.map(({ register, start, end, reads, block }) => [
      block ? -1 - model.blocks.indexOf(block.definition) : register,
      (end - start) / stepWidth,
      ...reads,
    ]),
  };
}

/** The program that was packed, for the model from which it was linked; `cellNames` are those of its `ruledChains`. */
export function unpackProgram(packed: PackedProgram, model: SheetModel, cellNames: readonly string[]): Program {
  const starts = startsOf(model);
  const initial = new Float64Array(packed.size).fill(Number.NaN);
  starts.forEach(([, start], register) => (initial[register] = start));
  packed.numbers.forEach((register, index, numbers) => {
    if (index % 2 === 0) initial[register] = numbers[index + 1]!;
  });
  const names = [...starts.map(([id]) => id), ...cellNames];
  const registers = new Map(names.map((name, register) => [name, register]));
  const settable = new Map(starts.map(([id], register) => [id, register]));
  let start = 0;
  const cells = packed.cells.map(([register = 0, count = 0, ...reads]): ProgramCell => {
    const end = start + count * stepWidth;
    const definition = model.blocks[-1 - register];
    const writes = definition?.writes.map((id) => registers.get(id)!) ?? [];
    const block = definition ? { definition, writes } : null;
    const place = writes[0] ?? register;
    const cell = { id: definition?.id ?? names[register]!, register: place, start, end, reads, block };
    start = end;
    return cell;
  });
  const reached = reachOf(settable.values(), cells);
  const reads = new Map(cells.filter(({ block }) => !block).map((cell) => [cell.id, cell.reads]));
  const steps = Int32Array.from(packed.steps);
  return { initial, registers, settable, steps, cells, reached, reads, errors: new Map() };
}

/** What people set, with what it is before anybody does, in the order of the registers. */
function startsOf({ inputs, constants }: SheetModel): (readonly [id: string, start: number])[] {
  return [
    ...inputs.map(({ id, start }) => [id, start] as const),
    ...constants.map(({ id, constant }) => [id, constant] as const),
  ];
}
