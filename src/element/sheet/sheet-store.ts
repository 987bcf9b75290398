import type { Outcome } from '../../problem.js';
import type { Plan } from '../../plan/document.js';
import { inputNames } from '../../plan/inputs.js';
import type { ReadRequest } from '../../plan/read-request.js';
import { newSheet, scenarioOf, setInputs, setSeason, setSessions, setWeek } from '../../plan/scenarios/change.js';
import type { Scenario, ScenarioSheet } from '../../plan/scenarios/document.js';
import { beginHistory, record, redo, settle, undo, type History } from '../../plan/scenarios/history.js';
import type { Makers } from '../../plan/scenarios/makers.js';
import { ScenarioPlanner, type PlannedScenario } from '../../plan/scenarios/scenario-planner.js';
import { isSameButDays } from '../../plan/week/same-week.js';
import { weekCost } from '../../training/method/week-names.js';
import type { SeasonRequest } from '../../plan/season/wishes.js';
import type { SheetModel } from '../../sheet/model.js';
import type { Method } from '../../training/method/document.js';

/** Holds the sheet with its history, and every scenario of it worked out. */
export class SheetStore {
  readonly planner = new ScenarioPlanner();
  planned: readonly PlannedScenario[] = [];
  /** The scenario that the other panels show. */
  #onShow: string;
  #history: History<ScenarioSheet>;

  /** The sheet is not worked out before `ready`. */
  constructor(method: Method, { inputs, picks }: ReadRequest) {
    const sheet = newSheet(method, inputs);
    this.#onShow = sheet.reference;
    this.#history = beginHistory(setSessions(sheet, sheet.reference, picks));
  }

  /** Fetches what the formulas of the method need, and works the sheet out. */
  async ready(): Promise<void> {
    await this.planner.learn(this.sheet);
    this.planned = this.planner.plan(this.sheet);
  }

  get sheet(): ScenarioSheet {
    return this.#history.present;
  }

  /** True where the sessions of every scenario are laid on days. */
  get hasDays(): boolean {
    return this.planned.every(({ planner }) => planner.sheet.program.registers.has(weekCost));
  }

  /** The model of the first scenario, whose blocks say which rows there are. */
  get model(): SheetModel | undefined {
    return this.planned[0]?.planner.sheet.model;
  }

  get canUndo(): boolean {
    return this.#history.past.length > 0;
  }

  get canRedo(): boolean {
    return this.#history.future.length > 0;
  }

  get onShow(): Scenario {
    return scenarioOf(this.sheet, this.#onShow);
  }

  /** The scenario on show, worked out. */
  get shown(): PlannedScenario | undefined {
    return this.of(this.onShow.id);
  }

  of(scenario: string): PlannedScenario | undefined {
    return this.planned.find((each) => each.scenario.id === scenario);
  }

  put(scenario: string): void {
    this.#onShow = scenario;
  }

  /** Takes another sheet; its formulas are compiled. Acts on the same thing make one step to undo. */
  change(sheet: ScenarioSheet, act: string | null = null): void {
    this.#take(record(this.#history, sheet, act));
  }

  undo(): void {
    this.#take(undo(this.#history));
  }

  redo(): void {
    this.#take(redo(this.#history));
  }

  /** Scenarios are made with these too from now on. */
  teach(makers: Makers): void {
    if (this.planner.teach(makers)) this.planned = this.planner.plan(this.sheet);
  }

  /** The next act is a step of its own. */
  settle(): void {
    this.#history = settle(this.#history);
  }

  /** Takes over what was set on the planner itself, into the scenario on show. */
  follow({ inputs, picks, week }: ReadRequest, season: SeasonRequest | null): Outcome<Plan> | null {
    if (week && this.onShow.week === null) this.#begin(setWeek(this.sheet, this.onShow.id, week));
    if (season && this.onShow.season === null) this.#begin(setSeason(this.sheet, this.onShow.id, season));
    const { id, inputs: before, sessions, week: weekBefore } = this.onShow;
    const changed = inputNames.filter((name) => inputs[name] !== before[name]);
    const patch = Object.fromEntries(changed.map((name) => [name, inputs[name]]));
    const set = changed.length > 0 ? setInputs(this.sheet, id, patch) : this.sheet;
    const isSamePick = JSON.stringify(picks) === JSON.stringify(sessions);
    const picked = isSamePick ? set : setSessions(set, id, picks);
    const isHandled = week !== null && weekBefore !== null && !isSameButDays(week, weekBefore);
    // What is done to the week by hand is a step each time; minutes of days move by slider.
    const laid = week ? setWeek(picked, id, week) : picked;
    this.change(season ? setSeason(laid, id, season) : laid, isHandled ? null : `${id} ${changed.join()}`);
    return this.shown?.outcome ?? null;
  }

  /** Takes a sheet that nobody has changed: there is nothing to undo. */
  #begin(sheet: ScenarioSheet): void {
    this.#take({ ...this.#history, present: sheet });
  }

  #take(history: History<ScenarioSheet>): void {
    if (history === this.#history) return;
    // Worked out first: what cannot be worked out is not taken either.
    if (history.present !== this.sheet) this.planned = this.planner.plan(history.present);
    this.#history = history;
  }
}
