import type { Cells } from './cells.js';
import type { FormulaCell } from './formula-cell.js';
import { isOfSharing, quantityOf } from './chains.js';
import type { CellError } from './errors.js';
import { namesIn } from './formula/names-in.js';
import { isOperation, operandCount, operationCode } from './formula/operations.js';
import type { Block, SheetModel } from './model.js';
import { plainNumber } from './numbers.js';
import { orderOf } from './order.js';
import { reachOf, type Program, type ProgramCell } from './program.js';

/**
 * Resolves every name to a register, brings the cells into order and lays down the steps of each.
 *
 * A name that does not exist, or a circle, is no exception: the cell gets an error (`Program.errors`) and no value.
 */
export function link(model: SheetModel, cells: Cells): Program {
  const builder = new ProgramBuilder(model, cells);
  const sources = new Map<string, FormulaCell>(cells.formulas.map((cell) => [cell.id, cell]));
  const writers = new Map(cells.blocks.flatMap((block) => block.writes.map((written) => [written, block] as const)));

  const reads = new Map<string, readonly string[]>();
  for (const cell of cells.formulas) reads.set(cell.id, namesOf(cell));
  for (const [written, block] of writers) reads.set(written, block.reads);
  const { sorted, circles } = orderOf(reads);

  for (const id of reads.keys()) builder.allocate(id);
  for (const cell of cells.formulas) builder.noteReads(cell);
  for (const [id, circle] of circles) builder.fail(id, { code: 'circle', path: quantitiesOn(circle) });
  const blocksAdded = new Set<Block>();
  for (const id of sorted) {
    const formula = sources.get(id);
    const block = writers.get(id);
    if (formula) builder.addFormula(formula);
    if (block && !blocksAdded.has(block)) builder.addBlock(block);
    if (block) blocksAdded.add(block);
  }
  return builder.finish();
}

/** A circle as a person would tell it: by its quantities, without the conditions of rules and the stages between them. */
function quantitiesOn(circle: readonly string[]): string[] {
  const quantities = circle.filter((id) => !id.endsWith('.when') && !isOfSharing(id)).map(quantityOf);
  const [first = '', ...others] = quantities.filter((id, index) => id !== quantities[index - 1]);
  return others.at(-1) === first ? [first, ...others] : [first, ...others, first];
}

function namesOf({ code, locals }: FormulaCell): string[] {
  return [...new Set(namesIn(code).map((name) => cellMeant(name, locals)))];
}

/** The cell that a name in a formula means; names such as `constructor` are names like any other. */
function cellMeant(name: string, locals: FormulaCell['locals']): string {
  return (Object.hasOwn(locals, name) ? locals[name] : undefined) ?? name;
}

class ProgramBuilder {
  readonly #values: number[] = [];
  readonly #registers = new Map<string, number>();
  readonly #constants = new Map<number, number>();
  readonly #names: Readonly<Record<string, number>>;
  readonly #settable: ReadonlyMap<string, number>;
  readonly #steps: number[] = [];
  readonly #cells: ProgramCell[] = [];
  readonly #reads = new Map<string, readonly number[]>();
  readonly #errors = new Map<string, CellError>();

  constructor({ inputs, constants, names }: SheetModel, { settable }: Cells) {
    this.#names = names;
    const starts = new Map([
      ...inputs.map(({ id, start }) => [id, start] as const),
      ...constants.map(({ id, constant }) => [id, constant] as const),
    ]);
    for (const [id, cell] of settable) this.allocate(cell, starts.get(id));
    this.#settable = new Map([...settable].map(([id, cell]) => [id, this.#register(cell)]));
  }

  allocate(id: string, value = Number.NaN): void {
    this.#registers.set(id, this.#values.push(plainNumber(value)) - 1);
  }

  fail(id: string, error: CellError): void {
    this.#errors.set(id, error);
  }

  noteReads(cell: FormulaCell): void {
    const known = namesOf(cell).filter((name) => this.#registers.has(name));
    this.#reads.set(
      cell.id,
      known.map((name) => this.#register(name)),
    );
  }

  addFormula(cell: FormulaCell): void {
    const names = namesOf(cell);
    const missing = names.find((name) => !this.#registers.has(name) && !Object.hasOwn(this.#names, name));
    if (missing !== undefined) return this.fail(cell.id, { code: 'unknown-name', name: quantityOf(missing) });
    const register = this.#register(cell.id);
    const start = this.#steps.length;
    this.#lay(cell, register);
    const reads = this.#reads.get(cell.id) ?? [];
    this.#cells.push({ id: cell.id, register, start, end: this.#steps.length, reads, block: null });
  }

  addBlock(definition: Block): void {
    const missing = definition.reads.find((name) => !this.#registers.has(name));
    if (missing !== undefined)
      return definition.writes.forEach((id) => this.fail(id, { code: 'unknown-name', name: missing }));
    const writes = definition.writes.map((name) => this.#register(name));
    const reads = definition.reads.map((name) => this.#register(name));
    const end = this.#steps.length;
    this.#cells.push({
      id: definition.id,
      register: writes[0] ?? 0,
      start: end,
      end,
      reads,
      block: { definition, writes },
    });
  }

  finish(): Program {
    return {
      initial: Float64Array.from(this.#values),
      registers: this.#registers,
      settable: this.#settable,
      steps: Int32Array.from(this.#steps),
      cells: this.#cells,
      reads: this.#reads,
      reached: reachOf(this.#settable.values(), this.#cells),
      errors: this.#errors,
    };
  }

  /** Lays down a cell's steps; the last one fills the cell's own register. */
  #lay(cell: FormulaCell, register: number): void {
    const stack: number[] = [];
    cell.code.forEach((token, index) => {
      if (typeof token === 'number' || !isOperation(token)) return void stack.push(this.#operand(cell, token));
      const count = operandCount(token);
      const [a = 0, b = 0, c = 0] = stack.splice(stack.length - count, count);
      const target = index === cell.code.length - 1 ? register : this.#values.push(Number.NaN) - 1;
      this.#steps.push(operationCode[token], target, a, b, c);
      stack.push(target);
    });
    // A formula that is a lone name or number is copied by taking the larger of it and itself.
    const [only = register] = stack;
    if (only !== register) this.#steps.push(operationCode['max()'], register, only, only, 0);
  }

  #operand(cell: FormulaCell, token: number | string): number {
    if (typeof token === 'number') return this.#constant(token);
    const name = cellMeant(token, cell.locals);
    return this.#registers.get(name) ?? this.#constant(this.#names[name] ?? Number.NaN);
  }

  #constant(value: number): number {
    const known = this.#constants.get(value);
    if (known !== undefined) return known;
    const register = this.#values.push(value) - 1;
    this.#constants.set(value, register);
    return register;
  }

  #register(id: string): number {
    const register = this.#registers.get(id);
    if (register === undefined) throw new Error(`no register for ${id}`);
    return register;
  }
}
