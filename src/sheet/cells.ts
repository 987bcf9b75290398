import type { CompiledFormula, FormulaBook } from './formula/compiled-formula.js';
import type { Block, SheetModel } from './model.js';

/** A number that the machine computes by a formula; `locals` says which cells its own names mean. */
export interface FormulaCell {
  readonly id: string;
  readonly code: CompiledFormula;
  readonly locals: Readonly<Record<string, string>>;
}

/** What one rule makes of one quantity: the cell before it, the cell after it, and the cell that says whether it holds. */
export interface Stage {
  readonly rule: string;
  readonly role: 'on' | 'to';
  readonly when: string;
  readonly before: string;
  readonly after: string;
}

/** A sheet taken apart into single cells, in which a rule is nothing but more cells. */
export interface Cells {
  readonly formulas: readonly FormulaCell[];
  readonly blocks: readonly Block[];
  /** The stages that a quantity goes through, for quantities on which rules act. */
  readonly stages: ReadonlyMap<string, readonly Stage[]>;
}

/**
 * Takes a model apart. A quantity on which rules act becomes a chain of cells, one for each stage; the last has the
 * quantity's own name, so that other formulas see it with all its rules applied.
 *
 * @param book the compiled form of every formula text in the model; a text that is missing is a programming error.
 */
export function cellsOf(model: SheetModel, book: FormulaBook): Cells {
  const chains = new Chains(model);
  const lookUp = (text: string): CompiledFormula => {
    const code = book[text];
    if (!code) throw new Error(`formula not compiled: ${text}`);
    return code;
  };
  const formulas: FormulaCell[] = model.formulas.map(({ id, formula }) => ({
    id: chains.first(id),
    code: lookUp(formula),
    locals: {},
  }));
  for (const { id } of [...model.inputs, ...model.constants])
    if (chains.first(id) !== id) throw new Error(`a rule cannot act on ${id}, which people set`);
  for (const rule of model.rules) {
    const value = chains.now(rule.on);
    const other = rule.to === undefined ? value : chains.now(rule.to);
    const locals = { value, other };
    const when = `${rule.id}.when`;
    formulas.push({ id: when, code: rule.enabled ? lookUp(rule.when) : [0], locals });
    const after = chains.advance(rule.on, { rule: rule.id, role: 'on', when });
    formulas.push({
      id: after,
      code: rule.enabled ? [when, ...lookUp(rule.value), 'value', 'if()'] : ['value'],
      locals,
    });
    if (rule.to === undefined) continue;
    const given = chains.advance(rule.to, { rule: rule.id, role: 'to', when });
    const sum = [when, 'other', 'value', after, 'hand()', 'other', 'if()'];
    formulas.push({ id: given, code: rule.enabled ? sum : ['other'], locals });
  }
  return { formulas, blocks: model.blocks, stages: chains.stages };
}

/** Names the cells of each quantity's chain while the rules are gone through in order. */
class Chains {
  readonly stages = new Map<string, Stage[]>();
  readonly #lengths = new Map<string, number>();

  constructor(model: SheetModel) {
    for (const { on, to } of model.rules)
      for (const id of to === undefined ? [on] : [on, to]) this.#lengths.set(id, (this.#lengths.get(id) ?? 0) + 1);
  }

  first(id: string): string {
    return this.#name(id, 0);
  }

  now(id: string): string {
    return this.#name(id, this.stages.get(id)?.length ?? 0);
  }

  advance(id: string, stage: Pick<Stage, 'rule' | 'role' | 'when'>): string {
    const stages = this.stages.get(id) ?? [];
    const before = this.now(id);
    const after = this.#name(id, stages.length + 1);
    this.stages.set(id, [...stages, { ...stage, before, after }]);
    return after;
  }

  /** The last cell of a chain has the quantity's own name, the ones before it a number behind it. */
  #name(id: string, index: number): string {
    return index === (this.#lengths.get(id) ?? 0) ? id : `${id}.${index}`;
  }
}
