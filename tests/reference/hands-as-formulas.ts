import type { SheetModel, Sharing } from '../../src/sheet/model.js';

/** A model without overrides, and the name under which a quantity that people set is set in it. */
export interface WrittenOut {
  readonly model: SheetModel;
  readonly settingOf: (id: string) => string;
}

/**
 * A model in which what people put over quantities is written out as formulas: what a quantity was before is called
 * `<name>_before`, and those that give way have formulas over that. Written for a general spreadsheet engine, which
 * knows neither rules nor overrides; blocks are left out.
 */
export function withHandsAsFormulas(model: SheetModel): WrittenOut {
  const held = new Map(model.overrides.map(({ on, formula }) => [on, formula]));
  const givingUp = model.sharings.filter(({ members }) => members.some((id) => held.has(id)));
  const givers = new Map(givingUp.flatMap((sharing) => free(sharing, held).map((id) => [id, sharing] as const)));
  const before = (id: string): string => (held.has(id) || givers.has(id) ? `${id}_before` : id);
  const renamed = <T extends { readonly id: string }>(all: readonly T[]): T[] =>
    all.map((each) => ({ ...each, id: before(each.id) }));
  const overridden = [...held].map(([id, formula]) => ({ id, formula: formula.replace(/\bvalue\b/g, before(id)) }));
  const giving = [...givers].map(([id, sharing]) => ({ id, formula: share(id, sharing, { held, before }) }));
  const written: SheetModel = {
    ...model,
    inputs: renamed(model.inputs),
    constants: renamed(model.constants),
    formulas: [...renamed(model.formulas), ...overridden, ...giving],
    rules: model.rules.map((rule) => ({
      ...rule,
      on: before(rule.on),
      ...(rule.to === undefined ? {} : { to: before(rule.to) }),
    })),
    blocks: [],
    overrides: [],
    sharings: [],
  };
  return { model: written, settingOf: before };
}

const free = ({ members }: Sharing, held: ReadonlyMap<string, string>): readonly string[] =>
  members.filter((id) => !held.has(id));

/** The part of what is left: as it was, or an even one where all that give have nothing. */
function share(
  id: string,
  sharing: Sharing,
  { held, before }: { readonly held: ReadonlyMap<string, string>; readonly before: (id: string) => string },
): string {
  const giving = free(sharing, held);
  const sum = (ids: readonly string[]): string => `(${ids.join(' + ')})`;
  const taken = sharing.members.filter((each) => held.has(each));
  const left = `(${sum(sharing.members.map(before))} - ${sum(taken)})`;
  const had = sum(giving.map(before));
  return `${had} == 0 ? ${left} / ${String(giving.length)} : ${before(id)} * ${left} / ${had}`;
}
