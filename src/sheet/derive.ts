import type { Column } from './column.js';
import type { Derivation, Reading, RuleStep } from './derivation.js';
import { withoutNoise } from './numbers.js';
import { recipesOf, type Recipe, type RulePlace } from './recipes.js';
import type { Sheet } from './sheet.js';

interface Made {
  readonly numbers: readonly number[];
  readonly derivation: Derivation;
}

/** Makes derivations of one column's quantities; one whose numbers have not changed is handed out again. */
export class Deriver {
  /** Every quantity of the sheet: inputs, constants, formulas, then what blocks compute. */
  readonly quantities: readonly string[];
  readonly #sheet: Sheet;
  readonly #column: Column;
  readonly #recipes: ReadonlyMap<string, Recipe>;
  readonly #made = new Map<string, Made>();

  constructor(sheet: Sheet, column: Column) {
    this.#sheet = sheet;
    this.#column = column;
    this.#recipes = new Map(recipesOf(sheet).map((recipe) => [recipe.quantity.name, recipe]));
    this.quantities = [...this.#recipes.keys()];
  }

  /** Why the quantity `id` has its value. Throws for a name that is no quantity of the sheet. */
  derive(id: string): Derivation {
    const recipe = this.#recipes.get(id);
    if (!recipe) throw new Error(`the sheet has no quantity ${id}`);
    const last = this.#made.get(id);
    // What failed may now fail for another reason, which no number shows.
    if (last?.derivation.error === null && this.#holds(recipe.shown, last.numbers)) return last.derivation;
    const numbers = recipe.shown.map((register) => this.#column.registers[register]!);
    const derivation = this.#make(recipe);
    this.#made.set(id, { numbers, derivation });
    return derivation;
  }

  /** True where the registers still hold these numbers. */
  #holds(shown: readonly number[], numbers: readonly number[]): boolean {
    const { registers } = this.#column;
    for (let index = 0; index < shown.length; index += 1)
      if (!Object.is(registers[shown[index]!], numbers[index])) return false;
    return true;
  }

  #make({ quantity, kind, formula, reads, rules }: Recipe): Derivation {
    const value = this.#number(quantity.register);
    return {
      quantity: quantity.name,
      kind,
      value,
      formula,
      readings: reads.map(({ name, register }): Reading => ({ name, value: this.#number(register) })),
      rules: rules.map((place) => this.#ruleStep(place)),
      byHand: this.#sheet.hands?.explain(quantity.name, (register) => this.#number(register)) ?? null,
      error: value === null ? this.#sheet.explain(this.#column, quantity.name) : null,
    };
  }

  #ruleStep({ rule, role, ...places }: RulePlace): RuleStep {
    const [before, after] = [this.#number(places.before), this.#number(places.after)];
    return {
      rule: rule.id,
      role,
      enabled: rule.enabled,
      acted: before !== null && after !== null && before !== after,
      when: rule.when,
      formula: rule.value,
      before,
      after,
    };
  }

  /** As people read it: what is computed without the noise of binary fractions, null where there is none (as in JSON). */
  #number(register: number): number | null {
    const value = this.#column.registers[register]!;
    if (!Number.isFinite(value)) return null;
    const isSetByHand = this.#column.program.reached.has(register);
    return isSetByHand ? value : withoutNoise(value);
  }
}
