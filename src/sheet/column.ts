import type { Program, ProgramCell } from './program.js';
import { runSteps } from './run-steps.js';

/** One column of a sheet: a set of inputs and everything that follows from them. Scenarios are columns of one program. */
export class Column {
  readonly program: Program;
  /** Every value of the column by register; read only. NaN where a cell has no number. */
  readonly registers: Float64Array;
  private readonly changed: Uint8Array;

  constructor(program: Program) {
    this.program = program;
    this.registers = program.initial.slice();
    this.changed = new Uint8Array(this.registers.length);
    for (const cell of program.cells) this.run(cell);
  }

  /** The number of a cell, NaN where it has none. Throws for a name that the sheet does not have. */
  value(id: string): number {
    return this.registers[this.registerOf(id)]!;
  }

  registerOf(id: string): number {
    const register = this.program.registers.get(id);
    if (register === undefined) throw new Error(`the sheet has no quantity ${id}`);
    return register;
  }

  /**
   * Sets inputs or constants and computes again what depends on them, stopping where nothing changed.
   *
   * @returns the ids of the cells whose value changed, in the order of computation.
   */
  set(values: Readonly<Record<string, number>>): string[] {
    const touched = Object.entries(values).filter(([id, value]) => this.put(id, value));
    if (touched.length === 0) return [];
    const changed = this.propagate(this.cellsReached(touched.map(([id]) => this.registerOf(id))));
    this.changed.fill(0);
    return changed;
  }

  private put(id: string, value: number): boolean {
    const register = this.registerOf(id);
    if (!this.program.reached.has(register)) throw new Error(`${id} is computed and cannot be set`);
    if (Object.is(this.registers[register], value)) return false;
    this.registers[register] = value;
    this.changed[register] = 1;
    return true;
  }

  /** The cells one input can change; with several inputs changed, all of them, in which `isStale` finds the ones to run. */
  private cellsReached(registers: readonly number[]): Iterable<number> {
    const [only, ...others] = registers;
    if (only === undefined || others.length > 0) return this.program.cells.keys();
    return this.program.reached.get(only) ?? [];
  }

  private propagate(indexes: Iterable<number>): string[] {
    const ids: string[] = [];
    for (const index of indexes) {
      const cell = this.program.cells[index]!;
      if (this.isStale(cell) && this.run(cell)) ids.push(cell.id);
    }
    return ids;
  }

  private isStale({ reads }: ProgramCell): boolean {
    for (const register of reads) if (this.changed[register] === 1) return true;
    return false;
  }

  /** Computes a cell; true where its value is another than before. */
  private run(cell: ProgramCell): boolean {
    if (cell.block) return this.runBlock(cell, cell.block);
    const { registers } = this;
    const before = registers[cell.register]!;
    runSteps(this.program.steps, registers, cell.start, cell.end);
    const after = registers[cell.register]!;
    // An overflow is a failure like any other: nothing that is not a finite number leaves a cell.
    if (after - after !== 0) registers[cell.register] = NaN;
    if (before === after || (before !== before && after !== after)) return false;
    this.changed[cell.register] = 1;
    return true;
  }

  private runBlock({ reads }: ProgramCell, { definition, writes }: NonNullable<ProgramCell['block']>): boolean {
    const values = reads.map((register) => this.registers[register]!);
    const results = values.every(Number.isFinite) ? definition.compute(values) : [];
    let anyChanged = false;
    writes.forEach((register, index) => {
      const result = results[index] ?? NaN;
      if (Object.is(result, this.registers[register])) return;
      this.registers[register] = result;
      this.changed[register] = 1;
      anyChanged = true;
    });
    return anyChanged;
  }
}
