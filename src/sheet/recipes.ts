import type { Stage } from './cells.js';
import type { Derivation } from './derivation.js';
import { namesIn } from './formula/names-in.js';
import type { SheetRule } from './model.js';
import type { Sheet } from './sheet.js';

/** A name with the register that holds its value. */
export interface Place {
  readonly name: string;
  readonly register: number;
}

/** A stage that a rule makes, with the registers before and after it. */
export interface RulePlace {
  readonly rule: SheetRule;
  readonly role: Stage['role'];
  readonly before: number;
  readonly after: number;
}

/** What a derivation is made of, the same for every column. */
export interface Recipe {
  readonly quantity: Place;
  readonly kind: Derivation['kind'];
  readonly formula: string | null;
  readonly reads: readonly Place[];
  readonly rules: readonly RulePlace[];
  /** Registers of everything the derivation shows. */
  readonly shown: readonly number[];
}

/** A recipe before names are looked up. */
interface Draft {
  readonly quantity: string;
  readonly kind: Derivation['kind'];
  readonly formula: string | null;
  readonly reads: readonly string[];
}

/** How to derive every quantity of a sheet: inputs, constants, formulas, then what blocks compute. */
export function recipesOf(sheet: Sheet): Recipe[] {
  const rules = new Map(sheet.model.rules.map((rule) => [rule.id, rule]));
  return draftsOf(sheet).map((draft) => complete(draft, sheet, rules));
}

function draftsOf({ model, cells }: Sheet): Draft[] {
  const codes = new Map(cells.formulas.map(({ id, code }) => [id, code]));
  const readBy = (quantity: string): string[] =>
    namesIn(codes.get(cells.stages.get(quantity)?.[0]?.before ?? quantity) ?? []);
  const set = (kind: 'input' | 'constant', { id }: { readonly id: string }): Draft => ({
    quantity: id,
    kind,
    formula: null,
    reads: [],
  });
  return [
    ...model.inputs.map((input) => set('input', input)),
    ...model.constants.map((constant) => set('constant', constant)),
    ...model.formulas.map(({ id, formula }): Draft => ({ quantity: id, kind: 'formula', formula, reads: readBy(id) })),
    ...model.blocks.flatMap(({ id: formula, reads, writes }) =>
      writes.map((quantity): Draft => ({ quantity, kind: 'block', formula, reads })),
    ),
  ];
}

function complete(draft: Draft, { cells, program }: Sheet, rules: ReadonlyMap<string, SheetRule>): Recipe {
  const registerOf = (id: string): number => program.registers.get(id)!;
  const placeOf = (name: string): Place => ({ name, register: registerOf(name) });
  const reads = draft.reads.filter((name) => program.registers.has(name)).map(placeOf);
  const stages = cells.stages.get(draft.quantity) ?? [];
  const places = stages.map(({ rule, role, before, after }): RulePlace => ({
    rule: rules.get(rule)!,
    role,
    before: registerOf(before),
    after: registerOf(after),
  }));
  const quantity = placeOf(draft.quantity);
  const shown = [quantity, ...reads].map(({ register }) => register);
  return {
    ...draft,
    quantity,
    reads,
    rules: places,
    shown: [...shown, ...places.flatMap(({ before, after }) => [before, after])],
  };
}
