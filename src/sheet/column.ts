import { plainNumber } from './numbers.js';
import type { Program, ProgramCell } from './program.js';
import { runSteps } from './run-steps.js';

type BlockOfCell = NonNullable<ProgramCell['block']>;

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
    for (const cell of program.cells) this.run(cell, []);
    this.changed.fill(0);
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
   * Sets inputs or constants and computes again what depends on them, stopping where nothing changed. Throws for a name
   * that cannot be set, and then sets nothing.
   *
   * @returns the ids of the cells whose value changed, in the order of computation.
   */
  set(values: Readonly<Record<string, number>>): string[] {
    const given = Object.entries(values).map(([id, value]) => [this.settable(id), value] as const);
    const touched = given.filter(([register, value]) => this.put(register, value)).map(([register]) => register);
    if (touched.length === 0) return [];
    const changed = this.propagate(this.cellsReached(touched));
    this.changed.fill(0);
    return changed;
  }

  private settable(id: string): number {
    const register = this.registerOf(id);
    if (!this.program.reached.has(register)) throw new Error(`${id} is computed and cannot be set`);
    return register;
  }

  /** Fills a register; true where its value is another than before. */
  private put(register: number, value: number): boolean {
    const plain = plainNumber(value);
    if (Object.is(this.registers[register], plain)) return false;
    this.registers[register] = plain;
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
      if (this.isStale(cell)) this.run(cell, ids);
    }
    return ids;
  }

  private isStale({ reads }: ProgramCell): boolean {
    for (const register of reads) if (this.changed[register] === 1) return true;
    return false;
  }

  /** Computes a cell, and adds the ids under which its value is another than before. */
  private run(cell: ProgramCell, changedIds: string[]): void {
    if (cell.block) return this.runBlock(cell, cell.block, changedIds);
    const { registers } = this;
    const before = registers[cell.register]!;
    runSteps(this.program.steps, registers, cell);
    if (Object.is(before, registers[cell.register])) return;
    this.changed[cell.register] = 1;
    changedIds.push(cell.id);
  }

  private runBlock({ reads }: ProgramCell, { definition, writes }: BlockOfCell, changedIds: string[]): void {
    const values = reads.map((register) => this.registers[register]!);
    const results = values.every(Number.isFinite) ? definition.compute(values) : [];
    definition.writes.forEach((id, index) => {
      if (this.put(writes[index]!, results[index] ?? NaN)) changedIds.push(id);
    });
  }
}
