import type { Outcome } from '../../problem.js';
import type { CellError } from '../../sheet/errors.js';
import type { FormulaBook } from '../../sheet/formula/compiled-formula.js';
import { compileTexts } from '../../sheet/formula/compile-texts.js';
import type { FormulaError } from '../../sheet/formula/formula-error.js';
import { unknownNames } from '../../sheet/formula/unknown-names.js';
import type { SheetModel } from '../../sheet/model.js';
import { createSheet, formulaTexts, quantityIds, type Sheet } from '../../sheet/sheet.js';
import { builtInFormulas } from '../../training/method/built-in-formulas.js';
import type { Method } from '../../training/method/document.js';
import { expandMethod } from '../../training/method/expand.js';
import type { Plan, PlanRequest } from '../document.js';
import { Planner } from '../planner.js';
import { scenarioOf } from './change.js';
import type { Scenario, ScenarioSheet } from './document.js';
import { handsOn } from './hands.js';
import type { Makers } from './makers.js';
import { methodOf, modelOf } from './scenario-model.js';

/** A scenario worked out. */
export interface PlannedScenario {
  readonly scenario: Scenario;
  /** Its method is the sheet's, with what the scenario changes in it. */
  readonly planner: Planner;
  readonly outcome: Outcome<Plan>;
}

/** A formula that is not yet part of a sheet. */
export interface TypedFormula {
  /** The scenario whose value is wanted. */
  readonly scenario: string;
  readonly quantity: string;
  readonly formula: string;
}

/** What a formula would give in a scenario, or why it gives nothing. */
export type Trial =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly error: FormulaError }
  | { readonly ok: false; readonly failure: CellError };

/** Works out the scenarios of a sheet. It keeps what did not change, so that a step of one slider costs one column. */
export class ScenarioPlanner {
  #book: FormulaBook = builtInFormulas;
  #planned = new Map<string, PlannedScenario>();
  #shapes = new Map<string, { readonly method: Method; readonly sheet: Sheet }>();
  #last: ScenarioSheet | null = null;
  readonly #learned = new WeakSet<Method>();
  #makers: Makers = {};

  /**
   * Compiles the formulas of a sheet that are not known yet; to be awaited before `plan`.
   *
   * @returns the texts that are refused, with the reason; `plan` may not be asked for a sheet that has any.
   */
  async learn(sheet: ScenarioSheet): Promise<ReadonlyMap<string, FormulaError>> {
    const texts = [
      // What is switched off may be switched on again without anybody learning.
      ...formulaTexts(expandMethod(sheet.method)),
      ...sheet.scenarios.flatMap((scenario) => formulaTexts(modelOf(methodOf(sheet, scenario), sheet, scenario))),
    ];
    const { book, errors } = await compileTexts([...new Set(texts)], this.#book);
    this.#book = { ...this.#book, ...book };
    if (errors.size === 0) this.#learned.add(sheet.method);
    return errors;
  }

  /** From now on scenarios are made with these too; true where all is to be worked out again. */
  teach(makers: Makers): boolean {
    const next = { ...this.#makers, ...makers };
    const { week, season, checks } = this.#makers;
    if (next.week === week && next.season === season && next.checks === checks) return false;
    this.#makers = next;
    this.#forget();
    return true;
  }

  /** True where every formula of the sheet is compiled. */
  knows(sheet: ScenarioSheet): boolean {
    const texts = [
      ...Object.values(sheet.formulas),
      ...sheet.rows.map(({ formula }) => formula),
      ...sheet.scenarios.flatMap(({ overrides }) => Object.values(overrides)),
    ];
    return this.#learned.has(sheet.method) && texts.every((text) => Object.hasOwn(this.#book, text));
  }

  /** All scenarios in their order; throws where a formula is not compiled. */
  plan(sheet: ScenarioSheet): readonly PlannedScenario[] {
    if (this.#last === null || !sameGround(this.#last, sheet)) this.#forget();
    this.#last = sheet;
    const planned = sheet.scenarios.map((scenario) => this.#planOne(sheet, scenario));
    this.#planned = new Map(planned.map((each) => [each.scenario.id, each]));
    const used = new Set(sheet.scenarios.map(shapeOf));
    for (const shape of this.#shapes.keys()) if (!used.has(shape)) this.#shapes.delete(shape);
    return planned;
  }

  /**
   * What a formula that somebody is typing is worth.
   *
   * @param sheet as it would be with the formula, which stands over `quantity` in the scenario, or for it in all.
   */
  async tryOut(sheet: ScenarioSheet, { scenario, quantity, formula }: TypedFormula): Promise<Trial> {
    const { book, errors } = await compileTexts([formula], this.#book);
    const refused = errors.get(formula);
    if (refused) return { ok: false, error: refused };
    this.#book = { ...this.#book, ...book };
    const found = scenarioOf(sheet, scenario);
    const method = methodOf(sheet, found);
    const model = this.#modelOf(method, sheet, found);
    const names = new Set([...quantityIds(model), ...Object.keys(model.names)]);
    // What is put over a quantity sees what it replaces.
    if (found.overrides[quantity] === formula) names.add('value');
    const [unknown] = unknownNames(formula, book[formula] ?? [], (name) => names.has(name));
    if (unknown) return { ok: false, error: unknown };
    const planner = this.#plannerOn({ method, sheet: createSheet(model, this.#book) });
    planner.plan(this.#requestOf({ ...found, season: null }));
    const failure = planner.sheet.explain(planner.column, quantity);
    return failure ? { ok: false, failure } : { ok: true, value: planner.column.value(quantity) };
  }

  #forget(): void {
    this.#planned = new Map();
    this.#shapes = new Map();
  }

  #planOne(sheet: ScenarioSheet, scenario: Scenario): PlannedScenario {
    const last = this.#planned.get(scenario.id);
    if (last?.scenario === scenario) return last;
    const planner = last && sameShape(last.scenario, scenario) ? last.planner : this.#plannerOf(sheet, scenario);
    return { scenario, planner, outcome: planner.plan(this.#requestOf(scenario)) };
  }

  /** Scenarios of one shape share a sheet; each has a column of its own. */
  #plannerOf(sheet: ScenarioSheet, scenario: Scenario): Planner {
    const key = shapeOf(scenario);
    const known = this.#shapes.get(key);
    if (known) return this.#plannerOn(known);
    const method = methodOf(sheet, scenario);
    const shape = { method, sheet: createSheet(this.#modelOf(method, sheet, scenario), this.#book) };
    this.#shapes.set(key, shape);
    return this.#plannerOn(shape);
  }

  #modelOf(method: Method, sheet: ScenarioSheet, scenario: Scenario): SheetModel {
    const { sessions: picks, week } = scenario;
    const { week: weeks, checks } = this.#makers;
    const model = modelOf(method, sheet, weeks ? scenario : { ...scenario, week: null });
    const laid = weeks?.extend(method, model, { picks, week, reading: checks?.reading(method) }) ?? model;
    return checks?.extend(method, laid, { picks }) ?? laid;
  }

  #plannerOn({ method, sheet }: { readonly method: Method; readonly sheet: Sheet }): Planner {
    return new Planner(
      { method, sheet },
      { hands: sheet.hands ? handsOn(method, sheet) : undefined, week: this.#makers.week, season: this.#makers.season },
    );
  }

  /** The request that a scenario makes; days and a season are asked for only of planners that know of them. */
  #requestOf({ inputs, sessions, week, season }: Scenario): PlanRequest {
    return {
      ...inputs,
      sessions,
      ...(week && this.#makers.week ? { week } : {}),
      ...(season && this.#makers.season ? { season } : {}),
    };
  }
}

/** Scenarios with the same text here are computed by the same program; the minutes of days are inputs of it. */
function shapeOf({ overrides, rulesOff, week, sessions }: Scenario): string {
  return JSON.stringify([
    overrides,
    rulesOff,
    sessions,
    week && { ...week, days: [], before: null, sessions: { ...sessions, ...week.sessions } },
  ]);
}

/** True where two sheets differ in scenarios only. */
function sameGround(one: ScenarioSheet, other: ScenarioSheet): boolean {
  return (
    one.method === other.method &&
    one.formulas === other.formulas &&
    one.rows === other.rows &&
    one.rulesOff === other.rulesOff
  );
}

function sameShape(one: Scenario, other: Scenario): boolean {
  return (
    one.overrides === other.overrides &&
    one.rulesOff === other.rulesOff &&
    ((one.week === other.week && one.sessions === other.sessions) || shapeOf(one) === shapeOf(other))
  );
}
