import { Chains, type Chained } from './chains.js';
import type { CompiledFormula, FormulaBook } from './formula/compiled-formula.js';
import type { FormulaCell } from './formula-cell.js';
import { blocksAround, givingCells, overrideCells, touchedIds, touchedIn } from './hands.js';
import type { Block, SheetModel, SheetRule } from './model.js';

/** A sheet taken apart into single cells, in which a rule or an override is nothing but more cells. */
export interface Cells extends Chained {
  /** The cell of each input and constant that people set. */
  readonly settable: ReadonlyMap<string, string>;
  readonly formulas: readonly FormulaCell[];
  readonly blocks: readonly Block[];
}

/**
 * Takes a model apart. A quantity on which rules or overrides act becomes a chain of cells, one for each stage.
 *
 * @param book the compiled form of every formula text in the model; a text that is missing is a programming error.
 */
export function cellsOf(model: SheetModel, book: FormulaBook): Cells {
  const touched = touchedIn(model);
  const chains = new Chains(model, touchedIds(touched));
  const lookUp = (text: string): CompiledFormula => {
    const code = book[text];
    if (!code) throw new Error(`formula not compiled: ${text}`);
    return code;
  };
  const set = [...model.inputs, ...model.constants].map(({ id }) => id);
  const acted = model.rules.flatMap(({ on, to }) => [on, to]).find((id) => id !== undefined && set.includes(id));
  if (acted !== undefined) throw new Error(`a rule cannot act on ${acted}, which people set`);
  const settable = new Map(set.map((id) => [id, chains.first(id)]));
  const base = model.formulas.map(({ id, formula }) => ({ id: chains.first(id), code: lookUp(formula), locals: {} }));
  const ruled = model.rules.flatMap((rule) => ruleCells(rule, chains, lookUp));
  const overridden = overrideCells(model, chains, lookUp);
  const giving = givingCells(touched, chains);
  const blocks = model.blocks.flatMap((block) => blocksAround(touched, block, chains));
  const formulas = [...base, ...ruled, ...overridden, ...giving];
  return { settable, formulas, blocks, stages: chains.stages, hands: chains.hands };
}

/** The cell that says whether a rule holds, and the next stage of each quantity that it changes. */
function ruleCells(rule: SheetRule, chains: Chains, lookUp: (text: string) => CompiledFormula): FormulaCell[] {
  const { when, value, other, after, given } = chains.pass(rule);
  const locals = { value, other };
  const cells: FormulaCell[] = [
    { id: when, code: rule.enabled ? lookUp(rule.when) : [0], locals },
    { id: after, code: rule.enabled ? [when, ...lookUp(rule.value), 'value', 'if()'] : ['value'], locals },
  ];
  if (given === null) return cells;
  const sum = [when, 'other', 'value', after, 'hand()', 'other', 'if()'];
  return [...cells, { id: given, code: rule.enabled ? sum : ['other'], locals }];
}
