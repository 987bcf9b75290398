import { render, type LitElement, type TemplateResult } from 'lit';
import type { Plan } from '../../plan/document.js';
import type { PlanCompletion, PlanPart } from '../../plan/plan-part.js';
import type { Outcome, Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import type { FullView, LatePanel, PageSays } from '../controllers/late-panel-controller.js';
import type { FieldDesk, TypedField } from '../fields/field-view.js';
import { draftProblems } from '../parts/draft-problems.js';
import type { Draft } from '../view.js';

/** What a planner lets such a panel do. */
export interface ConcreteSeat {
  readonly host: LitElement;
  /** Plans again, as a person's act. */
  readonly finish: () => void;
}

/** What the templates of a panel read of it, and what people can do. */
export interface ConcreteDesk<R> extends FieldDesk<R> {
  /** What is asked for. */
  readonly request: R;
  /** What the page has given last, whatever it is. */
  readonly given: unknown;
  /** What was chosen in fields that alone make no request, by the id of the field. */
  readonly held: ReadonlyMap<string, string>;
  /** What a listener is told. */
  readonly message: string;
  hold(id: string, text: string | null): void;
  /** What was typed into a field no longer counts. */
  forget(id: string): void;
  isOpen(box: string): boolean;
  toggle(box: string, isOpen: boolean): void;
}

/** All that the templates of a panel read. */
export interface ConcreteView<R> extends FullView {
  readonly desk: ConcreteDesk<R>;
}

/** What a page says: a property with a request as plain data, and an attribute with the most needed part of it. */
export interface ConcretePage {
  readonly given: unknown;
  readonly text: string | null | undefined;
}

/** What makes one such panel. */
export interface ConcreteParts<R> {
  readonly part: PlanPart;
  readonly panel: (view: ConcreteView<R>) => TemplateResult;
  /** What of all that a page says is for this panel. */
  readonly says: (page: PageSays) => ConcretePage;
  /** What a page asks for, or what is wrong with what it says. */
  readonly begin: (page: ConcretePage) => Outcome<R>;
  /** A request made whole before it is read. */
  readonly ask: (request: R) => R;
  /** A problem as a person meets it: seconds as a time. */
  readonly told: (problem: Problem, request: R) => Problem;
  /** True where what is held and asked for allows no plan at all. */
  readonly stops?: (desk: ConcreteDesk<R>) => boolean;
}

/** A panel that makes minutes concrete: it adds its part to every plan, by what the page or a person says of the runner. */
export class ConcretePanel<R extends object> implements LatePanel, ConcreteDesk<R> {
  drafts: ReadonlyMap<string, Draft> = new Map();
  held: ReadonlyMap<string, string> = new Map();
  message = '';
  /** The last request that could be read: acts go on from it. */
  request: R;
  readonly #seat: ConcreteSeat;
  readonly #parts: ConcreteParts<R>;
  readonly #start: R;
  readonly #open = new Set<string>();
  /** What the page or a person has asked for last. */
  #asked: R;
  #page: ConcretePage | null = null;
  /** What is wrong with what the page says, before it is a request and after. */
  #pageFaults: readonly Problem[] = [];
  #faults: readonly Problem[] = [];
  #view: FullView | null = null;
  #method: Method | null = null;

  constructor(seat: ConcreteSeat, parts: ConcreteParts<R>, start: R) {
    this.#seat = seat;
    this.#parts = parts;
    this.#start = start;
    this.#asked = start;
    this.request = start;
  }

  /** What changes with every act; a plan made before is stale where it is another. */
  get version(): unknown {
    return this.#asked;
  }

  get given(): unknown {
    return this.#page?.given;
  }

  /** True where there may be no plan at all. */
  get isStopped(): boolean {
    return this.#parts.stops?.(this) ?? false;
  }

  get problems(): readonly Problem[] {
    return [...this.#pageFaults, ...this.#faults];
  }

  hear(page: PageSays): void {
    const { given, text } = this.#parts.says(page);
    if (this.#page?.given === given && this.#page?.text === text) return;
    this.#page = { given, text };
    const begun = this.#parts.begin(this.#page);
    this.#pageFaults = begun.ok ? [] : begun.problems;
    if (!begun.ok) return;
    this.#asked = begun.value;
    this.drafts = new Map();
    this.held = new Map();
  }

  get drafted(): readonly Problem[] {
    return draftProblems(this.drafts);
  }

  reset(): void {
    this.put(this.#start);
    this.#page = null;
  }

  /** Takes over a request that could be read, from a file or a link; what was typed or held here is another runner's. */
  put(request: R): void {
    this.#pageFaults = [];
    this.#asked = request;
    this.drafts = new Map();
    this.held = new Map();
    this.message = '';
  }

  /** The plan with this panel's part; where what is asked for cannot be, that is told, and the last that could be stays. */
  complete(plan: Plan, method: Method): Plan {
    this.#method = method;
    const read = this.#read(this.#asked);
    this.#faults = read.ok ? [] : read.problems.map((problem) => this.#parts.told(problem, this.#asked));
    if (!read.ok) return this.#completeAsBefore(plan);
    this.request = this.#asked;
    return read.value(plan);
  }

  /** With the last request that could be read; where that cannot be by this method, with the one to start from. */
  #completeAsBefore(plan: Plan): Plan {
    for (const request of [this.request, this.#start]) {
      const read = this.#read(request);
      if (!read.ok) continue;
      this.request = request;
      return read.value(plan);
    }
    return plan;
  }

  act(request: R, field?: TypedField): void {
    const read = this.#read(request);
    const [problem] = read.ok ? [] : read.problems;
    if (problem) {
      this.refuse(problem, field);
      return;
    }
    if (field) this.forget(field.id);
    this.message = '';
    // What was only chosen or held is no other plan.
    const isSame = told(request) === told(this.#asked);
    this.#pageFaults = [];
    if (!isSame) this.#asked = request;
    if (isSame) this.#update();
    else this.#seat.finish();
  }

  refuse(problem: Problem, field?: TypedField): void {
    const told = this.#parts.told(problem, this.request);
    const named = field ? { ...told, path: field.label, value: field.entry ?? field.text } : told;
    if (field) this.drafts = new Map(this.drafts).set(field.id, { text: field.text, problem: named });
    this.message = this.#view ? this.#view.details.sayProblem(this.#view.words, named) : '';
    this.#update();
  }

  hold(id: string, text: string | null): void {
    const held = new Map(this.held);
    if (text === null) held.delete(id);
    else held.set(id, text);
    this.held = held;
    this.#update();
  }

  forget(id: string): void {
    const drafts = new Map(this.drafts);
    if (drafts.delete(id)) this.drafts = drafts;
  }

  isOpen(box: string): boolean {
    return this.#open.has(box);
  }

  toggle(box: string, isOpen: boolean): void {
    if (isOpen === this.#open.has(box)) return;
    if (isOpen) this.#open.add(box);
    else this.#open.delete(box);
    this.#update();
  }

  outdate(): void {
    // All is rendered at once.
  }

  render(container: HTMLElement, view: FullView): boolean {
    this.#view = view;
    render(this.#parts.panel({ ...view, desk: this }), container, { host: this.#seat.host });
    return false;
  }

  #read(request: R): Outcome<PlanCompletion> {
    if (!this.#method) return { ok: false, problems: [] };
    return this.#parts.part.read(this.#parts.ask(request), this.#method);
  }

  #update(): void {
    this.#seat.host.requestUpdate();
  }
}

/** What a request tells: what is null is not told. */
const told = (request: object): string =>
  JSON.stringify(request, (_, value: unknown) => (value === null ? undefined : value));
