import type { Stage } from './chains.js';
import type { Derivation } from './derivation.js';
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
  /** What a block reads; what a formula does is looked up. */
  readonly reads: readonly string[];
}

/** How to derive every quantity of a sheet: inputs, constants, formulas, then what blocks compute. */
export function recipesOf(sheet: Sheet): Recipe[] {
  const completer = new Completer(sheet);
  return draftsOf(sheet).map((draft) => completer.complete(draft));
}

function draftsOf({ model }: Sheet): Draft[] {
  const set = (kind: 'input' | 'constant', { id }: { readonly id: string }): Draft => ({
    quantity: id,
    kind,
    formula: null,
    reads: [],
  });
  return [
    ...model.inputs.map((input) => set('input', input)),
    ...model.constants.map((constant) => set('constant', constant)),
    ...model.formulas.map(({ id, formula }): Draft => ({ quantity: id, kind: 'formula', formula, reads: [] })),
    ...model.blocks.flatMap(({ id: formula, reads, writes }) =>
      writes.map((quantity): Draft => ({ quantity, kind: 'block', formula, reads })),
    ),
  ];
}

/** Looks up the registers of what a draft names. */
class Completer {
  readonly #sheet: Sheet;
  readonly #names: ReadonlyMap<number, string>;
  readonly #rules: ReadonlyMap<string, SheetRule>;

  constructor(sheet: Sheet) {
    this.#sheet = sheet;
    this.#names = new Map([...sheet.program.registers].map(([name, register]) => [register, name]));
    this.#rules = new Map(sheet.model.rules.map((rule) => [rule.id, rule]));
  }

  complete(draft: Draft): Recipe {
    const { quantity: id } = draft;
    const quantity = { name: id, register: this.#register(id) };
    const reads = draft.kind === 'formula' ? this.#readBy(this.#firstCell(id)) : this.#places(draft.reads);
    const rules = (this.#sheet.cells.stages.get(id) ?? []).map((stage) => this.#rulePlace(stage));
    const stages = rules.flatMap(({ before, after }) => [before, after]);
    const named = [quantity, ...reads].map(({ register }) => register);
    const byHand = this.#sheet.hands?.registersOf(id) ?? [];
    return { ...draft, quantity, reads, rules, shown: [...named, ...stages, ...byHand] };
  }

  #rulePlace({ rule, role, before, after }: Stage): RulePlace {
    return { rule: this.#rules.get(rule)!, role, before: this.#register(before), after: this.#register(after) };
  }

  /** The cell that holds a quantity before any rule and any hand. */
  #firstCell(quantity: string): string {
    const { stages, hands } = this.#sheet.cells;
    return stages.get(quantity)?.[0]?.before ?? hands.get(quantity)?.before ?? quantity;
  }

  #readBy(cell: string): Place[] {
    const registers = this.#sheet.program.reads.get(cell) ?? [];
    return registers.map((register) => ({ name: this.#names.get(register)!, register }));
  }

  #places(names: readonly string[]): Place[] {
    const { registers } = this.#sheet.program;
    const known = names.filter((name) => registers.has(name));
    return known.map((name) => ({ name, register: this.#register(name) }));
  }

  #register(id: string): number {
    return this.#sheet.program.registers.get(id)!;
  }
}
