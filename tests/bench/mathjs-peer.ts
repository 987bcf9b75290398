import { compile, type EvalFunction } from 'mathjs/number';
import type { SheetModel } from '../../src/sheet/model.js';
import { rowsOf } from './rows.js';

/** A model evaluated by mathjs's own compiled nodes: all formulas after every change, as mathjs knows of no other way. */
export class MathjsPeer {
  private readonly scope: Map<string, number | boolean>;
  private readonly compiled: readonly (readonly [string, EvalFunction])[];

  constructor(model: SheetModel) {
    this.scope = new Map([
      ...Object.entries(model.names),
      ...model.inputs.map(({ id, start }) => [id, start] as const),
      ...model.constants.map(({ id, constant }) => [id, constant] as const),
    ]);
    this.compiled = rowsOf(model).map(({ name, text }) => [name, compile(text)] as const);
  }

  set(id: string, value: number): void {
    this.scope.set(id, value);
    for (const [name, code] of this.compiled) this.scope.set(name, code.evaluate(this.scope) as number | boolean);
  }

  value(id: string): number {
    return Number(this.scope.get(id));
  }
}
