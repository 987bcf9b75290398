import { cellsOf } from '../../src/sheet/cells.js';
import type { SheetModel } from '../../src/sheet/model.js';
import { orderOf } from '../../src/sheet/order.js';

/** A formula of a sheet in which every rule is written out as one more formula. */
export interface Row {
  readonly name: string;
  readonly text: string;
}

/** The formulas of a model in mathjs's syntax, each after those it reads; blocks are left out. */
export function rowsOf(model: SheetModel): Row[] {
  const rows = [...baseRows(model), ...ruleRows(model)];
  const names = new Set(rows.map(({ name }) => name));
  const reads = rows.map(({ name, text }) => [name, wordsOf(text).filter((word) => names.has(word))] as const);
  const { sorted } = orderOf(new Map(reads));
  const byName = new Map(rows.map((row) => [row.name, row]));
  return sorted.flatMap((name) => byName.get(name) ?? []);
}

const wordsOf = (text: string): string[] => text.match(/[a-z]\w*/g) ?? [];
const rowName = (cell: string): string => cell.replace('.', '_stage_').replaceAll('-', '_');

/** Names of a quantity's stages, before and after each rule: the last has the quantity's own name. */
function stagesOf(model: SheetModel) {
  const anyCode = Object.fromEntries(
    [...model.formulas.map(({ formula }) => formula), ...model.rules.flatMap(({ when, value }) => [when, value])].map(
      (text) => [text, [0]],
    ),
  );
  return cellsOf(model, anyCode).stages;
}

function baseRows(model: SheetModel): Row[] {
  const stages = stagesOf(model);
  return model.formulas.map(({ id, formula }) => ({ name: rowName(stages.get(id)?.[0]?.before ?? id), text: formula }));
}

function ruleRows(model: SheetModel): Row[] {
  const stages = stagesOf(model);
  const stage = (rule: string, quantity: string) => stages.get(quantity)?.find((each) => each.rule === rule);
  return model.rules.flatMap(({ id, on, when, value, to, enabled }) => {
    const acting = stage(id, on);
    const giving = to === undefined ? undefined : stage(id, to);
    if (!acting || !enabled) throw new Error(`rule ${id} is switched off`);
    const [before, after] = [rowName(acting.before), rowName(acting.after)];
    const other = giving ? rowName(giving.before) : before;
    const inside = (text: string): string => text.replace(/\bvalue\b/g, before).replace(/\bother\b/g, other);
    const rows = [
      { name: rowName(acting.when), text: inside(when) },
      { name: after, text: `${rowName(acting.when)} ? (${inside(value)}) : ${before}` },
    ];
    return giving ? [...rows, { name: rowName(giving.after), text: `${other} + (${before} - ${after})` }] : rows;
  });
}
