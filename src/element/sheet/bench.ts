import type { Problem } from '../../problem.js';
import type { PlanInputs } from '../../plan/document.js';
import {
  copyScenario,
  makeReference,
  moveScenario,
  newScenarioId,
  removeRow,
  removeScenario,
  renameScenario,
  setFormula,
  setInputs,
  setOverride,
  setRow,
  switchRule,
} from '../../plan/scenarios/change.js';
import type { ScenarioSheet } from '../../plan/scenarios/document.js';
import { newRowId } from '../../plan/scenarios/row-id.js';
import { rowGroups, type RowGroup } from '../../plan/scenarios/rows.js';
import { methodOf } from '../../plan/scenarios/scenario-model.js';
import { isOfChecks } from '../../plan/checks/check-quantities.js';
import type { SheetModel } from '../../sheet/model.js';
import type { Method } from '../../training/method/document.js';
import { quantityUnit, type Unit } from '../../words/quantity-value.js';
import { FormulaDraft, type FormulaPlace } from './formula-draft.js';
import { GridState, headColumn, type OpenCell } from './grid-state.js';
import { InputDrafts } from './input-drafts.js';
import { QuestionDesk } from './question-desk.js';
import type { Seat } from './seat.js';
import type { SheetStore } from './sheet-store.js';

/** What the toolbar says after copying or opening something. */
export interface Message {
  readonly key: string;
  readonly count?: number;
  /** What could not be copied, for copying by hand. */
  readonly text?: string;
  readonly problems?: readonly Problem[];
}

/** The row that somebody is adding. */
interface NewRow {
  readonly name: string;
  /** True where it was to be added without a name. */
  readonly isUnnamed: boolean;
}

/** What the rows of the sheet are, which all scenarios share. */
interface Ground {
  readonly of: ScenarioSheet;
  readonly hasDays: boolean;
  readonly model: SheetModel | undefined;
  readonly method: Method;
  readonly groups: readonly RowGroup[];
}

/** What the sheet shows at the moment, and everything that a person can do to it. */
export class Bench {
  readonly store: SheetStore;
  readonly grid = new GridState();
  readonly inputs: InputDrafts;
  readonly desk: QuestionDesk;
  /** Formulas being typed: over a cell, for a row in all scenarios, for a new row. */
  readonly drafts: Readonly<Record<'here' | 'all' | 'row', FormulaDraft>>;
  newRow: NewRow | null = null;
  message: Message | null = null;
  readonly #seat: Seat;
  #lastGround: Ground | null = null;

  constructor(seat: Seat, store: SheetStore) {
    this.#seat = seat;
    this.store = store;
    this.inputs = new InputDrafts(this);
    this.desk = new QuestionDesk(this, seat.adopt);
    const draft = (): FormulaDraft => new FormulaDraft(seat.host, store.planner);
    this.drafts = { here: draft(), all: draft(), row: draft() };
  }

  /** The method with the rows that people added, by which names are read. */
  get method(): Method {
    return this.#ground.method;
  }

  get groups(): readonly RowGroup[] {
    return this.#ground.groups;
  }

  /** The same objects until the rows or the rules for all scenarios change: every cell asks for them. */
  get #ground(): Ground {
    const { sheet } = this.store;
    const last = this.#lastGround;
    const { hasDays, model } = this.store;
    const isSame = last?.of.rows === sheet.rows && last.of.rulesOff === sheet.rulesOff && last.hasDays === hasDays;
    if (isSame && last.model === model) return last;
    const method = methodOf(sheet, { rulesOff: [] });
    const checks = (model?.blocks ?? []).flatMap(({ writes }) => writes.filter(isOfChecks));
    this.#lastGround = { of: sheet, hasDays, model, method, groups: rowGroups(method, { hasDays, checks }) };
    return this.#lastGround;
  }

  /** What a quantity is counted in. */
  unitOf(quantity: string): Unit {
    return quantityUnit(this.method, quantity);
  }

  get host(): Seat['host'] {
    return this.#seat.host;
  }

  update(): void {
    this.#seat.host.requestUpdate();
  }

  say(message: Message | null): void {
    this.message = message;
    this.update();
  }

  // Scenarios

  set(scenario: string, inputs: Partial<PlanInputs>): void {
    const about = `${scenario} ${Object.keys(inputs).join()}`;
    this.#do(setInputs(this.store.sheet, scenario, inputs), { scenario, about });
  }

  show(scenario: string): void {
    this.#do(this.store.sheet, { scenario });
  }

  copy(scenario: string): void {
    const { sheet } = this.store;
    const added = newScenarioId(sheet);
    const next = copyScenario(sheet, scenario);
    this.#do(next, next === sheet ? {} : { scenario: added });
  }

  move(scenario: string, by: -1 | 1): void {
    this.#do(moveScenario(this.store.sheet, scenario, by));
  }

  remove(scenario: string): void {
    if (this.grid.open?.scenario === scenario) this.grid.open = null;
    this.#do(removeScenario(this.store.sheet, scenario));
  }

  compareWith(scenario: string): void {
    this.#do(makeReference(this.store.sheet, scenario));
  }

  rename(scenario: string, name: string): void {
    this.#do(renameScenario(this.store.sheet, scenario, name.trim()));
  }

  undo(): void {
    this.store.undo();
    this.#do(this.store.sheet);
  }

  redo(): void {
    this.store.redo();
    this.#do(this.store.sheet);
  }

  /** Takes a sheet from outside; its formulas are compiled. */
  replace(sheet: ScenarioSheet, onShow: string = sheet.reference): void {
    this.#do(sheet, { scenario: onShow });
  }

  // Cells

  openCell(cell: OpenCell | null): void {
    this.grid.open = cell;
    const { overrides = {} } = this.store.sheet.scenarios.find(({ id }) => id === cell?.scenario) ?? {};
    this.drafts.here.begin((cell?.quantity && overrides[cell.quantity]) ?? '');
    this.drafts.all.begin(cell?.quantity ? (this.formulaOf(cell.quantity) ?? '') : '');
    this.#do(this.store.sheet, cell?.scenario ? { scenario: cell.scenario } : {});
  }

  /** The formula of a quantity in all scenarios; null where it has none. */
  formulaOf(quantity: string): string | null {
    const model = this.store.shown?.planner.sheet.model;
    return model?.formulas.find(({ id }) => id === quantity)?.formula ?? null;
  }

  override(scenario: string, quantity: string, formula: string | null): void {
    const act = { quantity, formula };
    this.#do(setOverride(this.store.sheet, scenario, act), { scenario });
  }

  placeOver(scenario: string, quantity: string): FormulaPlace {
    const sheetWith = (formula: string): ScenarioSheet =>
      setOverride(this.store.sheet, scenario, { quantity, formula });
    return { scenario, quantity, sheetWith };
  }

  placeForAll(quantity: string): FormulaPlace {
    const sheetWith = (formula: string): ScenarioSheet => setFormula(this.store.sheet, quantity, formula);
    return { scenario: this.store.onShow.id, quantity, sheetWith };
  }

  setFormula(quantity: string, formula: string | null): void {
    this.#do(setFormula(this.store.sheet, quantity, formula));
    this.drafts.all.begin(this.formulaOf(quantity) ?? '');
  }

  switchRule(scenario: string | null, rule: string): void {
    this.#do(switchRule(this.store.sheet, scenario, rule), scenario === null ? {} : { scenario });
  }

  // Own rows

  beginRow(newRow: NewRow | null): void {
    if (!newRow || !this.newRow) this.drafts.row.begin('');
    this.newRow = newRow;
    this.update();
  }

  placeOfRow(): FormulaPlace {
    const name = this.newRow?.name ?? '';
    const quantity = newRowId(this.store.sheet, name);
    const sheetWith = (formula: string): ScenarioSheet => setRow(this.store.sheet, { id: quantity, name, formula });
    return { scenario: this.store.onShow.id, quantity, sheetWith };
  }

  addRow(formula: string): void {
    const { quantity, sheetWith } = this.placeOfRow();
    this.#do(sheetWith(formula));
    this.beginRow(null);
    this.grid.go({ row: quantity, column: headColumn }, { mark: false });
  }

  removeRow(quantity: string): void {
    this.grid.open = null;
    this.#do(removeRow(this.store.sheet, quantity));
  }

  /** Every act ends here: the sheet is worked out, and the planner shows the scenario that was touched. */
  #do(sheet: ScenarioSheet, { scenario, about = null }: { scenario?: string; about?: string | null } = {}): void {
    this.message = null;
    this.store.change(sheet, about);
    if (scenario !== undefined) this.store.put(scenario);
    this.#seat.put(this.store.onShow);
  }
}
