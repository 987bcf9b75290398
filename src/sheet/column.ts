import { plainNumber } from './numbers.js';
import type { Program } from './program.js';
import { runCells } from './run-cells.js';

/** One column of a sheet: a set of inputs and everything that follows from them. Scenarios are columns of one program. */
export class Column {
  readonly program: Program;
  /** Every value of the column by register; read only. NaN where a cell has no number. */
  readonly registers: Float64Array;
  readonly #changed: Uint8Array;
  readonly #everyCell: Int32Array;

  /** @param computed the registers of another column of the program, to go on from; left out, all is computed. */
  constructor(program: Program, computed?: Float64Array) {
    this.program = program;
    this.registers = (computed ?? program.initial).slice();
    this.#changed = new Uint8Array(this.registers.length).fill(computed ? 0 : 1);
    this.#everyCell = Int32Array.from(program.cells.keys());
    if (!computed) this.#run(this.#everyCell);
  }

  /** A column with the same values, to try things on without touching this one. */
  copy(): Column {
    return new Column(this.program, this.registers);
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
    const ids = Object.keys(values);
    const registers = ids.map((id) => this.#settable(id));
    const touched = registers.filter((register, index) => this.#put(register, values[ids[index]!]!));
    return touched.length === 0 ? [] : this.#run(this.#cellsReached(touched));
  }

  /** What an input or constant is set to, whatever a person has put over it. Throws for a name that cannot be set. */
  setting(id: string): number {
    return this.registers[this.#settable(id)]!;
  }

  /** A quick `set` for one input or constant that is moved many times. Throws for a name that cannot be set. */
  mover(id: string): (value: number) => void {
    const register = this.#settable(id);
    const reached = this.#cellsReached([register]);
    return (value) => {
      if (this.#put(register, value)) this.#run(reached);
    };
  }

  #settable(id: string): number {
    const register = this.program.settable.get(id);
    if (register !== undefined) return register;
    this.registerOf(id);
    throw new Error(`${id} is computed and cannot be set`);
  }

  /** Fills a register; true where its value is another than before. */
  #put(register: number, value: number): boolean {
    const plain = plainNumber(value);
    if (Object.is(this.registers[register], plain)) return false;
    this.registers[register] = plain;
    this.#changed[register] = 1;
    return true;
  }

  /** The cells one input can change; where several changed, all cells, of which only those that read a change are run. */
  #cellsReached(touched: readonly number[]): Int32Array {
    const reached = touched.length === 1 ? this.program.reached.get(touched[0]!) : undefined;
    return reached ?? this.#everyCell;
  }

  #run(indexes: Int32Array): string[] {
    const changedIds = runCells(this.program, indexes, { registers: this.registers, changed: this.#changed });
    this.#changed.fill(0);
    return changedIds;
  }
}
