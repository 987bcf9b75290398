import { nothing, render, type ReactiveController } from 'lit';
import type { Outcome, Problem } from '../../problem.js';
import type { Plan, PlanRequest } from '../../plan/document.js';
import type { Planner } from '../../plan/planner.js';
import { readRequest, type ReadRequest } from '../../plan/read-request.js';
import type { Makers } from '../../plan/scenarios/makers.js';
import type { ScenarioSheet } from '../../plan/scenarios/document.js';
import type { PlannedScenario } from '../../plan/scenarios/scenario-planner.js';
import type { Method } from '../../training/method/document.js';
import type { FullView, LatePanel } from '../controllers/late-panel-controller.js';
import { Bench } from './bench.js';
import { formulaProblems, sheetFromLink } from './sheet-from-link.js';
import { ColumnTurns } from './column-turns.js';
import type { Seat } from './seat.js';
import { sheetPanel } from './sheet-panel.js';
import { SheetStore } from './sheet-store.js';
import { lateStyles } from '../late.styles.js';
import { sheetStyles } from './sheet.styles.js';
import { gridStyles } from './grid.styles.js';
import { questionsStyles } from './questions/questions.styles.js';
import { formulaFieldStyles } from '../formula-field/formula-field.styles.js';
import { narrowStyles } from './narrow.styles.js';

const styles = [lateStyles, sheetStyles, gridStyles, questionsStyles, formulaFieldStyles, narrowStyles];

/** The what-if sheet of a planner; fetched where a page shows it. */
export class Sheet implements LatePanel, ReactiveController {
  readonly #seat: Seat;
  readonly #turns = new ColumnTurns();
  #bench: Bench | null = null;
  #container: HTMLElement | null = null;
  /** The method of the sheet that is there or on its way. */
  #method: Method | null = null;
  #makers: Makers = {};
  /** Settles when the sheet of the last method is there. */
  begun: Promise<void> = Promise.resolve();

  constructor(seat: Seat) {
    this.#seat = seat;
    seat.host.renderRoot.addEventListener('change', () => {
      // A slider that is let go ends a step.
      this.settle();
    });
    seat.host.addController(this);
  }

  hostConnected(): void {
    addEventListener('hashchange', this.#openLink);
  }

  hostDisconnected(): void {
    removeEventListener('hashchange', this.#openLink);
  }

  /** Scenarios are made with these too from now on. */
  teach(makers: Makers): void {
    this.#makers = { ...this.#makers, ...makers };
    this.#bench?.store.teach(makers);
  }

  /** The next act is a step of its own. */
  settle(): void {
    this.#bench?.store.settle();
  }

  /** All of it; null while it is on its way. */
  get whole(): { readonly sheet: ScenarioSheet; readonly onShow: string } | null {
    const store = this.#current?.store;
    return store ? { sheet: store.sheet, onShow: store.onShow.id } : null;
  }

  /** Formulas of a sheet from outside that cannot be compiled; what can be is compiled. */
  async problemsWith(sheet: ScenarioSheet): Promise<readonly Problem[]> {
    await this.begun;
    return this.#bench ? formulaProblems(this.#bench.store.planner, sheet) : [];
  }

  /** Takes over a sheet that `problemsWith` has nothing against, as a person's act that can be taken back. */
  put(sheet: ScenarioSheet, onShow: string): void {
    this.#bench?.replace(sheet, onShow);
  }

  /** The next plan that is asked for begins a sheet of its own. */
  reset(): void {
    this.#method = null;
  }

  /** Every scenario, worked out. */
  get scenarios(): readonly PlannedScenario[] {
    return this.#current?.store.planned ?? [];
  }

  /** What changes with every act; a plan made before is stale where it is another. */
  get version(): unknown {
    return this.#current?.store.shown ?? this;
  }

  /** The bench of the method in use; null while it is on its way. */
  get #current(): Bench | null {
    return this.#bench?.store.sheet.method === this.#method ? this.#bench : null;
  }

  /** The planner of the scenario on show; null while the sheet is not ready. */
  get planner(): Planner | null {
    return this.#current?.store.shown?.planner ?? null;
  }

  /** The plan of the scenario on show, after it has taken over what is asked for; null while the sheet is not ready. */
  plan({ method }: Pick<Planner, 'method'>, request: PlanRequest): Outcome<Plan> | null {
    const read = readRequest(request, method, this.#makers);
    if (!read.ok) return read;
    if (method !== this.#method) this.begun = this.#begin(method, read.value);
    return this.#current?.store.follow(read.value, request.season ?? null) ?? null;
  }

  /** Reads the address again, where the page has another one now. */
  readonly #openLink = (): void => {
    if (this.#bench && this.#seat.isOpener()) void sheetFromLink(this.#bench);
  };

  /** Something has changed: what is rendered from now on shows it. */
  outdate(): void {
    this.#turns.outdate(this.#bench?.store.sheet.scenarios.map(({ id }) => id) ?? []);
  }

  /** Renders as much as fits into a task; true where more is to come. */
  render(container: HTMLElement, { words, details }: FullView): boolean {
    const bench = this.#bench;
    const turns = this.#turns;
    if (container !== this.#container) container.addEventListener('keydown', this.#takeBack);
    this.#container = container;
    const isMore = bench !== null && turns.take(bench.store.onShow.id);
    render(bench ? sheetPanel({ words, details, bench, turns }) : nothing, container, { host: this.#seat.host });
    return isMore;
  }

  /** The usual keys take back and do again; in a text they belong to the text. */
  readonly #takeBack = (event: KeyboardEvent): void => {
    const { key, ctrlKey, metaKey, shiftKey, target } = event;
    const isText = target instanceof Element && target.matches('textarea, input[type="text"]');
    if (!(ctrlKey || metaKey) || isText || !/^[zy]$/i.test(key) || this.#seat.host.matches(':disabled')) return;
    event.preventDefault();
    if (shiftKey || key.toLowerCase() === 'y') this.#bench?.redo();
    else this.#bench?.undo();
  };

  async #begin(method: Method, request: ReadRequest): Promise<void> {
    this.#method = method;
    const store = new SheetStore(method, request);
    // The network may be gone, and with it the parser for a coach's formulas: the next change tries again.
    const isReady = await store.ready().then(
      () => true,
      () => false,
    );
    if (this.#method !== method) return;
    if (!isReady) {
      this.#method = null;
      return;
    }
    store.teach(this.#makers);
    this.#bench = new Bench(this.#seat, store);
    this.#seat.host.requestUpdate();
    if (this.#seat.isOpener()) await sheetFromLink(this.#bench);
  }
}

/** The sheet, as the planner fetches it. */
export const load = (seat: Seat) => ({ styles, panel: new Sheet(seat) });
