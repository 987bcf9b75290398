import type { Stage } from './cells.js';
import type { Column } from './column.js';
import type { Derivation, Reading, RuleStep } from './derivation.js';
import { explainFailure } from './explain-failure.js';
import { isOperation } from './formula/operations.js';
import type { SheetRule } from './model.js';
import type { Sheet } from './sheet.js';

/** What a derivation is made of, the same for every column. */
interface Recipe {
  readonly quantity: string;
  readonly kind: Derivation['kind'];
  readonly formula: string | null;
  readonly reads: readonly string[];
  readonly stages: readonly Stage[];
  /** Registers of everything the derivation shows. */
  readonly registers: readonly number[];
}

/** Makes derivations of one column's quantities; one whose numbers have not changed is handed out again. */
export class Deriver {
  private readonly column: Column;
  private readonly rules: ReadonlyMap<string, SheetRule>;
  private readonly recipes: ReadonlyMap<string, Recipe>;
  private readonly made = new Map<string, { readonly numbers: Float64Array; readonly derivation: Derivation }>();

  constructor(sheet: Sheet, column: Column) {
    this.column = column;
    this.rules = new Map(sheet.model.rules.map((rule) => [rule.id, rule]));
    this.recipes = new Map(recipesOf(sheet).map((recipe) => [recipe.quantity, recipe]));
  }

  /** Every quantity of the sheet: inputs, constants, formulas, then what blocks compute. */
  get quantities(): Iterable<string> {
    return this.recipes.keys();
  }

  /** Why the quantity `id` has its value. Throws for a name that is no quantity of the sheet. */
  derive(id: string): Derivation {
    const recipe = this.recipes.get(id);
    if (!recipe) throw new Error(`the sheet has no quantity ${id}`);
    const { registers } = this.column;
    const last = this.made.get(id);
    if (last && recipe.registers.every((register, index) => Object.is(registers[register], last.numbers[index])))
      return last.derivation;
    const numbers = Float64Array.from(recipe.registers, (register) => registers[register]!);
    const derivation = this.make(recipe);
    this.made.set(id, { numbers, derivation });
    return derivation;
  }

  private make({ quantity, kind, formula, reads, stages }: Recipe): Derivation {
    return {
      quantity,
      kind,
      value: this.number(quantity),
      formula,
      readings: reads.map((name): Reading => ({ name, value: this.number(name) })),
      rules: stages.map((stage) => this.ruleStep(stage)),
      error: explainFailure(this.column, quantity),
    };
  }

  private ruleStep({ rule: id, role, before: beforeCell, after: afterCell }: Stage): RuleStep {
    const rule = this.rules.get(id);
    const [before, after] = [this.number(beforeCell), this.number(afterCell)];
    return {
      rule: id,
      role,
      enabled: rule?.enabled ?? false,
      acted: before !== null && after !== null && before !== after,
      when: rule?.when ?? '',
      formula: rule?.value ?? '',
      before,
      after,
    };
  }

  /** JSON has no NaN: a cell without a number is null. */
  private number(id: string): number | null {
    const value = this.column.value(id);
    return Number.isFinite(value) ? value : null;
  }
}

function recipesOf({ model, cells, program }: Sheet): Recipe[] {
  const codes = new Map(cells.formulas.map(({ id, code }) => [id, code]));
  const complete = (recipe: Omit<Recipe, 'stages' | 'registers'>): Recipe => {
    const stages = cells.stages.get(recipe.quantity) ?? [];
    const reads = recipe.reads.filter((name) => program.registers.has(name));
    const shown = [recipe.quantity, ...reads, ...stages.flatMap(({ before, after }) => [before, after])];
    return { ...recipe, reads, stages, registers: shown.map((id) => program.registers.get(id) ?? 0) };
  };
  const namesIn = (quantity: string): string[] => {
    const code = codes.get(cells.stages.get(quantity)?.[0]?.before ?? quantity) ?? [];
    return [...new Set(code.filter((token): token is string => typeof token === 'string' && !isOperation(token)))];
  };
  return [
    ...model.inputs.map(({ id }) => ({ quantity: id, kind: 'input' as const, formula: null, reads: [] })),
    ...model.constants.map(({ id }) => ({ quantity: id, kind: 'constant' as const, formula: null, reads: [] })),
    ...model.formulas.map(({ id, formula }) => ({ quantity: id, kind: 'formula' as const, formula, reads: namesIn(id) })),
    ...model.blocks.flatMap(({ id: formula, reads, writes }) =>
      writes.map((quantity) => ({ quantity, kind: 'block' as const, formula, reads })),
    ),
  ].map(complete);
}
