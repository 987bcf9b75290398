import { render, type CSSResult, type LitElement } from 'lit';
import type { PlanInputs } from '../../plan/document.js';
import type { Planner } from '../../plan/planner.js';
import type { Pupil } from '../../plan/scenarios/makers.js';
import type { Scenario } from '../../plan/scenarios/document.js';
import type { PlannedScenario } from '../../plan/scenarios/scenario-planner.js';
import { pickedIn } from '../../plan/season/acts.js';
import { createSeasonMaker } from '../../plan/season/create-season-maker.js';
import type { PlanSeason, SeasonWeek } from '../../plan/season/document.js';
import { readSeason } from '../../plan/season/read-season.js';
import type { SeasonRequest } from '../../plan/season/wishes.js';
import type { WeekAsked } from '../../plan/week/week-maker.js';
import type { Problem } from '../../problem.js';
import { datesOf } from '../../words/season/dates.js';
import type { FullView, LatePanel } from '../controllers/late-panel-controller.js';
import { draftProblems } from '../parts/draft-problems.js';
import type { Draft } from '../view.js';
import { Beginning } from './beginning.js';
import { BoxDesk } from './box-desk.js';
import type { SeasonAttributes } from './season-attributes.js';
import { noSeason } from './no-season.js';
import { seasonPanel } from './season-panel.js';
import { today } from '../today.js';
import type { TypedField } from '../fields/field-view.js';
import { weekHoursField, type SeasonDesk, type SeasonQuestion } from './season-view.js';
import { lateStyles } from '../late.styles.js';
import { chartStyles } from '../chart/chart.styles.js';
import { chartBandsStyles } from '../chart/chart-bands.styles.js';
import { seasonStyles } from './season.styles.js';

const styles = [lateStyles, chartStyles, chartBandsStyles, seasonStyles];

/** What a planner lets its season do. */
interface SeasonSeat {
  readonly host: LitElement;
  /** Adds styles that came with a chunk. */
  readonly adopt: (styles: readonly CSSResult[]) => void;
  /** Puts a week on the planner, as a person's act. */
  readonly show: (inputs: PlanInputs, sessions: WeekAsked['picks']) => void;
  /** Plans again, as a person's act. */
  readonly finish: () => void;
  /** The scenario that was put on show last, if any was. */
  readonly shown: () => Pick<Scenario, 'season'> | null;
  /** The sheet beside it, where the page has one. */
  readonly late: { readonly sheet: { readonly panel: ScenarioHolder | null } };
}

/** What a season needs of the sheet. */
interface ScenarioHolder {
  readonly scenarios: readonly PlannedScenario[];
  /** The next act is a step of its own. */
  settle(): void;
}

/** The season of a planner; fetched where a page shows it. */
export class Season implements SeasonDesk, LatePanel {
  reading: string | null = null;
  drafts: ReadonlyMap<string, Draft> = new Map();
  question: SeasonQuestion = { quantity: 'strength_minutes', wanted: '90', later: 3 };
  readonly boxDesk: BoxDesk;
  message = '';
  planner: Planner | null = null;
  readonly #seat: SeasonSeat;
  readonly #maker = createSeasonMaker();
  readonly #beginning = new Beginning();
  /** What a person has wished; null while it is what the page begins with. */
  #own: SeasonRequest | null = null;
  #view: FullView | null = null;
  /** The last request that a season came of: acts go on from it. */
  #good: SeasonRequest | null = null;
  #hasStepped = false;

  constructor(seat: SeasonSeat) {
    this.#seat = seat;
    const update = (): void => {
      this.#update();
    };
    this.boxDesk = new BoxDesk(update, seat.adopt);
  }

  /** Never another: a season is worked out at once. */
  get version(): unknown {
    return this.#maker;
  }

  /** Makes a planner, and the scenarios beside it, know of seasons. */
  instruct(planner: Planner, scenarios: Pupil | null): void {
    planner.learnSeasons(this.#maker);
    scenarios?.teach({ season: this.#maker });
    this.planner = planner;
  }

  /** What is asked of the season: a person's wishes, else what the page says, else a season from today on. */
  request(page: SeasonAttributes): SeasonRequest {
    if (this.#beginning.take(page)) this.#own = null;
    return this.#own ?? this.#beginning.request;
  }

  /** What is wrong with what the page says. */
  get problems(): readonly Problem[] {
    return this.#beginning.problems;
  }

  get scenarios(): readonly PlannedScenario[] {
    return this.#seat.late.sheet.panel?.scenarios ?? [];
  }

  /** Takes over wishes that were set elsewhere. */
  take(season: SeasonRequest | null): void {
    this.#own = season;
    this.drafts = new Map();
  }

  get drafted(): readonly Problem[] {
    return draftProblems(this.drafts);
  }

  reset(): void {
    this.take(null);
    this.reading = null;
    this.message = '';
  }

  act(request: SeasonRequest, field?: TypedField): void {
    const { method, plan } = this.#view ?? {};
    if (!method || !plan) return;
    const read = readSeason(request, { method, inputs: plan.inputs });
    const [problem] = read.ok ? [] : read.problems;
    if (problem) {
      this.refuse(problem, field);
      return;
    }
    if (field) this.#forget(field.id);
    this.#own = request;
    this.message = '';
    this.#seat.finish();
  }

  refuse(problem: Problem, field?: TypedField): void {
    const named = field ? { ...problem, path: field.label } : problem;
    if (field) this.drafts = new Map(this.drafts).set(field.id, { text: field.text, problem: named });
    const { words, details } = this.#view ?? {};
    this.message = words && details ? details.sayProblem(words, named) : '';
    this.#update();
  }

  step(request: SeasonRequest): void {
    this.drafts = new Map();
    this.#hasStepped = true;
    this.#seat.late.sheet.panel?.settle();
    this.act(request);
    this.#seat.late.sheet.panel?.settle();
  }

  tryOut(request: SeasonRequest): PlanSeason | null {
    const { method, plan } = this.#view ?? {};
    if (!method || !plan || !this.planner) return null;
    const { inputs } = plan;
    const read = readSeason(request, { method, inputs });
    return read.ok ? this.#maker.carry(this.planner, { inputs, season: read.value }) : null;
  }

  read(start: string): void {
    this.reading = start;
    this.#forget(weekHoursField);
    this.#update();
  }

  show(week: SeasonWeek): void {
    const { plan, words } = this.#view ?? {};
    if (!plan?.season || !words) return;
    // From now on the hours of the planner are those of one week: the season keeps its own.
    this.#own = { ...this.#request, hours: plan.season.wishes.hours };
    this.reading = week.start;
    this.message = words.say('season.shown', { dates: datesOf(words).week(week.start) });
    this.#seat.late.sheet.panel?.settle();
    this.#seat.show({ ...plan.inputs, hours: week.hours, phase: week.phase }, pickedIn(plan.season, week));
    this.#seat.late.sheet.panel?.settle();
  }

  ask(question: Partial<SeasonQuestion>, answer = (): string => ''): void {
    this.question = { ...this.question, ...question };
    this.message = answer();
    this.#update();
  }

  outdate(): void {
    // All is rendered at once.
  }

  render(container: HTMLElement, view: FullView): boolean {
    this.#view = view;
    const { method, plan } = view;
    const asked = this.#own ?? this.#beginning.request;
    if (readSeason(asked, { method, inputs: plan.inputs }).ok) this.#good = asked;
    const content = plan.season
      ? seasonPanel({ ...view, desk: this, season: plan.season, request: this.#request })
      : noSeason(view.words, () => {
          this.step({ start: today() });
        });
    render(content, container, { host: this.#seat.host });
    if (this.#hasStepped) this.#keepFocus(container);
    return false;
  }

  get #request(): SeasonRequest {
    return this.#good ?? { start: today() };
  }

  /** The button that was pressed may be gone. */
  #keepFocus(container: HTMLElement): void {
    this.#hasStepped = false;
    const { renderRoot } = this.#seat.host;
    if (renderRoot instanceof ShadowRoot && renderRoot.activeElement === null)
      container.querySelector<HTMLElement>('#season-title')?.focus({ preventScroll: true });
  }

  #forget(id: string): void {
    const drafts = new Map(this.drafts);
    if (drafts.delete(id)) this.drafts = drafts;
  }

  #update(): void {
    this.#seat.host.requestUpdate();
  }
}

/** The season, as the planner fetches it; it begins with that of the scenario on show. */
export function load(seat: SeasonSeat) {
  const panel = new Season(seat);
  const season = seat.shown()?.season;
  if (season) panel.take(season);
  return { styles, panel };
}
