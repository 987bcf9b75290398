import { html, LitElement, type PropertyValues, type TemplateResult } from 'lit';
import type { Plan, PlanInputs } from '../plan.js';
import type { Problem } from '../problem.js';
import type { ByCategory, CategoryId } from '../training/method/ids.js';
import { hasNotes } from '../words/acted-rules.js';
import { readNumber } from '../words/read-number.js';
import { baseStyles } from './base.styles.js';
import { DetailsController } from './controllers/details-controller.js';
import { DraftsController } from './controllers/drafts-controller.js';
import { LanguageController } from './controllers/language-controller.js';
import { MethodController } from './controllers/method-controller.js';
import { LatePanels } from './controllers/late-panels.js';
import { StatusController } from './controllers/status-controller.js';
import { notANumber } from './inputs/not-a-number.js';
import { numberAttribute } from './number-attribute.js';
import { panels, readPanels } from './panels.js';
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
 * @attr lang - The language to speak, English or German; that of the page around it where left out.
 *
 * @slot - Shown until the planner is ready, and where scripts do not run: a small table, a sentence, a link.
 * @slot method - A `<script type="application/json">` with the coach's own method.
 *
 * @fires {PlanChangeEvent} plan-change - A person changed something; `detail` is the whole plan, as plain data.
 *
 * @csspart planner - The whole planner.
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
 * @cssproperty [--weekwright-radius=12px] - Rounding of the planner's corners.
 * @cssproperty [--weekwright-slow] - Colour of slow running; this and the next four 3 : 1 against the ground.
 * @cssproperty [--weekwright-tempo] - Colour of tempo running.
 * @cssproperty [--weekwright-intervals] - Colour of intervals.
 * @cssproperty [--weekwright-cross] - Colour of cross-training.
 * @cssproperty [--weekwright-strength] - Colour of strength.
 */
export class WeekwrightPlanner extends LitElement {
  static override styles = [baseStyles, ...Object.values(panels).flatMap((panel) => panel.styles)];

  static override properties = {
    hours: { converter: numberAttribute },
    phase: {},
    level: {},
    event: {},
    strengthCap: { attribute: 'strength-cap', converter: numberAttribute },
    days: {},
    eventDate: { attribute: 'event-date' },
    mostHours: { attribute: 'most-hours', converter: numberAttribute },
    season: { attribute: false },
    race: {},
    running: { attribute: false },
    equipment: {},
    strength: { attribute: false },
    checks: { attribute: false },
    contact: {},
    storage: {},
    panels: {},
    method: { attribute: false },
    methodSrc: { attribute: 'method-src' },
  };

  static override get observedAttributes(): string[] {
    return [...super.observedAttributes, 'lang'];
  }

  /** Hours a week, 0.5 to 20 with the built-in method. The method's starting value where left out, as for all inputs. */
  declare hours: number | null | undefined;
  /** `off-season`, `base`, `build`, `peak`, `taper` or `recovery`. */
  declare phase: string | null | undefined;
  /** `new`, `developing`, `trained` or `elite`. */
  declare level: string | null | undefined;
  /** `none`, `5k`, `10k`, `half-marathon`, `marathon` or `longer`. */
  declare event: string | null | undefined;
  /** Most minutes of strength in a week of more than six hours, 90 to 120 with the built-in method. */
  declare strengthCap: number | null | undefined;
  /** Minutes available on each day to begin with, Monday first: `60,0,45,60,0,90,120`. For the panel `week`. */
  declare days: string | null | undefined;
  /** The day of the event: `2027-04-11`. For the panel `season`, as the next two. */
  declare eventDate: string | null | undefined;
  /** The most hours a week ever; the method's usual most where left out. */
  declare mostHours: number | null | undefined;
  /** What is wanted of the season beyond that, as in the request of a plan; see shared/schema/plan.schema.json. */
  declare season: unknown;
  /** A recent race, its distance and its time: `10k 45:00`; also `21.1km 1:39:00`. For the panel `running`. */
  declare race: string | null | undefined;
  /** What is known of the runner beyond that, as in the request of a plan; see shared/schema/plan.schema.json. */
  declare running: unknown;
  /** What there is to train with, of `band`, `dumbbells` and `barbell`, or `none`. For the panel `strength`. */
  declare equipment: string | null | undefined;
  /** What is wanted of strength beyond that, as in the request of a plan. */
  declare strength: unknown;
  /** What is told for checks, as in the request of a plan. For the panel `checks`. */
  declare checks: unknown;
  /** Whom to ask, as a line on what is handed over: a coach, a clinic. For the panel `handout`, as the next one. */
  declare contact: string | null | undefined;
  /** `none` forbids people to keep plans on their device; nothing is kept unless they ask for it. */
  declare storage: string | null | undefined;
  /** The panels to show, of `split`, `week`, `running`, `strength`, `checks`, `season`, `record`, `handout`, `sheet`, `basis`; `split` where left out. */
  declare panels: string | null | undefined;
  /** A coach's own method as plain data; see shared/schema/method.schema.json. */
  declare method: unknown;
  /** The address of a coach's own method, on the page's own origin. */
  declare methodSrc: string | null | undefined;

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
      Object.assign(this, inputs);
      this.#picks = sessions;
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
  /** The plan that the last act made. */
  #actPlan: Plan | null = null;
  readonly #week = new Week();

  /** The plan on show; null until the planner is ready, and where a runner's answers allow none. */
  get plan(): Plan | null {
    return this.#late.isStopped ? null : this.#week.plan;
  }

  /** What is wrong with the attributes and with the method, if anything. */
  get problems(): readonly Problem[] {
    return [...this.#methods.problems, ...this.#inputProblems()];
  }

  override attributeChangedCallback(name: string, old: string | null, value: string | null): void {
    super.attributeChangedCallback(name, old, value);
    if (name === 'lang' && this.isConnected) this.#language.refresh();
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
    await this.#methods.ready;
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
    return [...this.#panelsWanted().problems, ...this.#late.problems, ...this.#week.problems];
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
      isStopped: this.#late.isStopped,
      method: this.#methods.problems,
      inputs: this.#inputProblems(),
      status: this.#late.isStopped ? '' : this.#status.text,
    });
  }
}
