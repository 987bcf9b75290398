import { html, type PropertyValues, type TemplateResult } from 'lit';
import type { Plan, PlanInputs } from '../plan.js';
import type { Problem } from '../problem.js';
import type { ByCategory, CategoryId } from '../training/method/ids.js';
import { hasNotes } from '../words/acted-rules.js';
import { readNumber } from '../words/read-number.js';
import { baseStyles } from './base.styles.js';
import { DetailsController } from './controllers/details-controller.js';
import { DraftsController } from './controllers/drafts-controller.js';
import { FormController } from './controllers/form-controller.js';
import { LanguageController } from './controllers/language-controller.js';
import { MethodController } from './controllers/method-controller.js';
import { LatePanels } from './controllers/late-panels.js';
import { StatusController } from './controllers/status-controller.js';
import { notANumber } from './inputs/not-a-number.js';
import { panels, readPanels } from './panels.js';
import { PlannerFace } from './planner-face.js';
import { plannerTemplate, spokenPlan } from './planner-template.js';
import { PlanChangeEvent } from './plan-change-event.js';
import { WhyController } from './controllers/why-controller.js';
import type { Actions, View } from './view.js';
import { Week } from './week.js';

/**
 * Divides a runner's training week: hours, season phase and athlete level in, sessions out, a reason for every number.
 *
 * @summary A what-if planner for a runner's training week.
 * @tag weekwright-planner
 *
 * @slot - Shown until the planner is ready, and where scripts do not run: a small table, a sentence, a link.
 * @slot method - A `<script type="application/json">` with the coach's own method.
 * @slot logo - Whose page it is, in front of the panels and on handouts: a picture, a name. Hidden, it is on handouts alone.
 * @slot header - In front of the panels, beside the logo: a heading, a sentence.
 * @slot contact - Whom to ask, behind the panels.
 * @slot footer - Behind the panels: a note, a link.
 *
 * @fires {PlanChangeEvent} plan-change - A person changed something; `detail` is the whole plan, as plain data.
 * @fires {Event} input - In a form, or with a label: with every act, for whoever listens to all fields.
 * @fires {Event} change - The same once nothing moves any more, as when a slider is let go.
 *
 * @csspart planner - The whole planner.
 * @csspart header - The slots in front of the panels.
 * @csspart footer - The slots behind the panels.
 * @csspart answer - The sentence with the answer.
 * @csspart ring - The ring of the week.
 * @csspart inputs - All inputs together.
 * @csspart field - One input with its label.
 * @csspart slider - A slider.
 * @csspart table - The table of the week.
 * @csspart sheet - The what-if sheet.
 * @csspart week - The sessions on their days.
 * @csspart season - The weeks up to an event.
 * @csspart running - Paces, distances and heart rates.
 * @csspart strength - Strength sessions by movements and sets.
 * @csspart checks - The plan held against what is known.
 * @csspart basis - What every number rests on.
 * @csspart record - What was done against what was planned.
 * @csspart handout - What a runner takes home.
 * @csspart why - The derivation of a number.
 * @csspart notes - The rules that acted, and what is worth knowing.
 * @csspart cautions - The usual cautions.
 * @csspart problems - What is wrong with the attributes or the method.
 *
 * @cssproperty [--weekwright-accent] - Colour of sliders, links and focus; 4.5 : 1 against the ground.
 * @cssproperty [--weekwright-ground] - Colour behind everything.
 * @cssproperty [--weekwright-text] - Colour of text.
 * @cssproperty [--weekwright-muted] - Colour of text that stands back; 4.5 : 1 against the ground.
 * @cssproperty [--weekwright-line] - Colour of thin lines.
 * @cssproperty [--weekwright-radius] - Rounding of the planner's corners.
 * @cssproperty [--weekwright-slow] - Colour of slow running; this and the next four 3 : 1 against the ground.
 * @cssproperty [--weekwright-tempo] - Colour of tempo running.
 * @cssproperty [--weekwright-intervals] - Colour of intervals.
 * @cssproperty [--weekwright-cross] - Colour of cross-training.
 * @cssproperty [--weekwright-strength] - Colour of strength.
 */
export class WeekwrightPlanner extends PlannerFace {
  static override styles = [baseStyles, ...panels.split.styles];

  readonly #language = new LanguageController(this);
  readonly #methods = new MethodController(this);
  readonly #status = new StatusController(this);
  readonly #more = new DetailsController(this, this.#language);
  readonly #late = new LatePanels({
    host: this,
    more: this.#more,
    view: () => this.#view(),
    picks: () => this.#picks,
    show: (inputs, sessions) => {
      this.#set(inputs, sessions);
      this.#finishAct();
    },
    finish: () => this.#finishAct(),
    // What a person has done goes on, and the page hears how it ends.
    arrive: () => (this.#week.plan === this.#actPlan ? this.#finishAct() : this.requestUpdate()),
  });
  #picks: Partial<ByCategory<readonly number[]>> = {};
  readonly #drafts = new DraftsController(this, (problem) => {
    this.#status.tell(() => this.#more.say(problem));
  });
  readonly #why = new WhyController(this);
  readonly #form = new FormController({
    host: this,
    internals: this.internals,
    methods: this.#methods,
    drafts: this.#drafts,
    late: this.#late,
    more: this.#more,
    set: (inputs, sessions) => this.#set(inputs, sessions),
  });
  /** The plan that the last act made. */
  #actPlan: Plan | null = null;
  readonly #week = new Week();

  /** The plan on show; null until the planner is ready, and where a runner's answers allow none. */
  get plan(): Plan | null {
    return this.#late.isStopped ? null : this.#week.plan;
  }

  /**
   * The plan as JSON, as a form submits it; empty while there is none. A plan that was submitted before can be set again,
   * as an attribute too: its inputs, sessions, days and season are put on the planner.
   */
  get value(): string {
    return this.plan ? JSON.stringify(this.plan) : '';
  }

  set value(text: string | null) {
    this.#form.do('take', text ?? '');
  }

  /** What is wrong with the attributes and with the method, if anything. */
  get problems(): readonly Problem[] {
    return [...this.#methods.problems, ...this.#inputProblems()];
  }

  formAssociatedCallback(): void {
    this.requestUpdate();
  }

  formDisabledCallback(): void {
    this.requestUpdate();
  }

  formResetCallback(): void {
    this.#form.do('reset');
  }

  formStateRestoreCallback(state: unknown): void {
    this.value = String(state);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!this.hasUpdated || changed.has('method') || changed.has('methodSrc')) this.#methods.use(this);
    this.#late.want(this.#panelsWanted().names);
    this.#replan();
    const isFaulty = this.problems.length > 0 || !this.#drafts.isEmpty;
    const isAsked = hasNotes(this.#week.plan) || this.#methods.isOwn || this.#why.asked !== null;
    if (isFaulty || isAsked) this.#more.want();
  }

  /**
   * Renders in a task of its own once the planner stands: the event that moved a slider ends first, and a slow phone has
   * two short tasks instead of one long one.
   */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.hasUpdated) await new Promise((resolve) => setTimeout(resolve));
    await super.scheduleUpdate();
  }

  /** Also waits for the method, the words and the details, where those have to be fetched. */
  protected override async getUpdateComplete(): Promise<boolean> {
    await super.getUpdateComplete();
    await Promise.all([this.#methods.ready, this.#form.ready]);
    await super.getUpdateComplete();
    await Promise.all([this.#language.ready, this.#more.ready, this.#late.ready]);
    await super.getUpdateComplete();
    await this.#late.ready;
    return super.getUpdateComplete();
  }

  /** Plans again where the method, an input or a pick is another than before. */
  #replan(): void {
    const { planner } = this.#methods;
    if (!planner) return;
    // The request first: making it, panels take over what the page says.
    const request = this.#late.request(this, planner.method);
    this.#week.replan(planner, this.#late.maker(planner), request);
  }

  #panelsWanted(): ReturnType<typeof readPanels> {
    return readPanels(this.panels ?? 'split');
  }

  #inputProblems(): readonly Problem[] {
    return [
      ...this.#panelsWanted().problems,
      ...this.#late.problems,
      ...this.#week.problems,
      ...(this.#form.part?.problems ?? []),
    ];
  }

  /** What people do. Each act changes the request, plans at once and tells the page. */
  readonly #actions: Actions = {
    change: (inputs) => {
      this.#drafts.forget(Object.keys(inputs));
      this.#takeWeekOnShow();
      Object.assign(this, inputs);
      this.#finishAct();
    },
    type: (field, text) => {
      const value = readNumber(text);
      const problem = value === null ? notANumber(field, text) : this.#problemWith({ [field]: value });
      if (problem) this.#drafts.refuse(field, { text, problem });
      else if (value !== null) this.#actions.change({ [field]: value });
    },
    pick: (category: CategoryId, sessions) => {
      this.#takeWeekOnShow();
      this.#late.unsettle(category);
      const { [category]: _, ...others } = this.#picks;
      this.#picks = sessions === null ? others : { ...others, [category]: sessions };
      this.#finishAct();
    },
    ask: this.#why.ask,
    more: this.#more.want,
  };

  /** A person goes on from the week on show, also where the page has asked for one that cannot be. */
  #takeWeekOnShow(): void {
    if (this.#week.problems.length > 0 && !this.#late.planner) Object.assign(this, this.#week.plan?.inputs);
  }

  /** What is wrong with an input as it was typed, all else being as it is on show. */
  #problemWith(inputs: Partial<PlanInputs>): Problem | undefined {
    const outcome = this.#methods.planner?.plan({ ...this.#week.plan?.inputs, ...inputs });
    return outcome?.ok === false ? outcome.problems[0] : undefined;
  }

  #set(inputs: Partial<PlanInputs>, sessions: Partial<ByCategory<readonly number[]>>): void {
    Object.assign(this, inputs);
    this.#picks = sessions;
    this.requestUpdate();
  }

  #finishAct(): void {
    const before = this.#week.plan;
    this.#replan();
    this.requestUpdate();
    const { outcome, plan } = this.#week;
    this.#actPlan = plan;
    if (outcome?.ok !== true || plan === before || this.#late.isStopped) return;
    this.#status.tell(() => spokenPlan(this.#view()));
    this.dispatchEvent(new PlanChangeEvent(outcome.value));
  }

  #view(): View | null {
    const { words } = this.#language;
    const planner = this.#late.planner ?? this.#methods.planner;
    const { plan } = this.#week;
    if (!words || !planner || !plan) return null;
    return {
      panels: this.#panelsWanted().names,
      words,
      method: planner.method,
      plan,
      drafts: this.#drafts.all,
      asked: this.#why.asked,
      details: this.#more.details,
      act: this.#actions,
    };
  }

  protected override render(): TemplateResult {
    const view = this.#view();
    if (!view) return html`<slot></slot>`;
    return plannerTemplate(view, {
      names: this.#panelsWanted().names,
      label: this.label ?? this.#form.part?.label,
      isDisabled: this.matches(':disabled'),
      isStopped: this.#late.isStopped,
      method: this.#methods.problems,
      inputs: this.#inputProblems(),
      status: this.#late.isStopped ? '' : this.#status.text,
    });
  }
}
