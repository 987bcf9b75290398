import { nothing, render, type ReactiveController } from 'lit';
import type { Plan } from '../../plan/document.js';
import type { Planner } from '../../plan/planner.js';
import { cardsOf, type Card } from '../../plan/week/cards.js';
import type { Pupil } from '../../plan/scenarios/makers.js';
import { createWeekMaker } from '../../plan/week/create-week-maker.js';
import type { PlanWeek } from '../../plan/week/document.js';
import type { WeekMaker } from '../../plan/week/week-maker.js';
import { weekRules } from '../../plan/week/week-problem-of.js';
import type { WeekRequest, WeekWishes } from '../../plan/week/wishes.js';
import type { Problem } from '../../problem.js';
import type { CategoryId } from '../../training/method/ids.js';
import type { Method } from '../../training/method/document.js';
import type { FullView, LatePanel } from '../controllers/late-panel-controller.js';
import { boardPanel } from './board-panel.js';
import { cardKey } from './card.js';
import type { BoardSeat } from './board-seat.js';
import type { BoardDesk, Carrying, Opened, Proposal } from './board-view.js';
import { readDays } from './days-attribute.js';
import { DayDrafts } from './day-drafts.js';
import { PatientSolver } from './patient-solver.js';
import { lateStyles } from '../late.styles.js';
import { boardStyles } from './board.styles.js';
import { cardStyles } from './card.styles.js';
import { boxesStyles } from './boxes.styles.js';

const styles = [lateStyles, boardStyles, cardStyles, boxesStyles];

/** What the week begins with. */
interface Beginning {
  readonly days: string | null;
  readonly method: Method;
  readonly request: WeekRequest;
  readonly problems: readonly Problem[];
}

/** The board of a planner, on which sessions lie on their days; fetched where a page shows it. */
export class Board implements BoardDesk, LatePanel, ReactiveController {
  carrying: Carrying | null = null;
  opened: Opened | null = null;
  proposal: Proposal | null = null;
  /** What a listener is told. */
  message = '';
  readonly drafts = new DayDrafts();
  readonly #seat: BoardSeat;
  /** Weeks of the planner and its scenarios; and weeks that are tried out, as a card moves. */
  readonly #solver = new PatientSolver(() => {
    this.#arrive();
  }, 6);
  readonly #trials = new PatientSolver(() => {
    this.update();
  }, 8);
  readonly #trialMaker = createWeekMaker(this.#trials.solve);
  #maker: WeekMaker = createWeekMaker(this.#solver.solve);
  /** What a person has wished; null while it is what the page or the method begins with. */
  #own: WeekRequest | null = null;
  #begun: Beginning | null = null;
  /** The last week that was laid: shown while the next is being looked for. */
  #last: PlanWeek | null = null;
  #view: FullView | null = null;
  #container: HTMLElement | null = null;
  #focus: string | null = null;

  constructor(seat: BoardSeat) {
    this.#seat = seat;
    seat.host.addController(this);
  }

  hostConnected(): void {
    this.update();
  }

  hostDisconnected(): void {
    this.#trials.stop();
    // What was left is asked for again once the planner is back.
    if (this.#solver.stop()) this.#maker = createWeekMaker(this.#solver.solve);
  }

  /** Another whenever a week has arrived that was looked for. */
  get version(): unknown {
    return this.#maker;
  }

  /** Makes a planner, and the scenarios beside it, know of weeks. */
  instruct(planner: Planner, scenarios: Pupil | null): void {
    planner.learnWeeks(this.#maker);
    scenarios?.teach({ week: this.#maker });
  }

  /** What is asked of the week: a person's wishes, else the days of the page, else the method's first template. */
  request(days: string | null | undefined, method: Method): WeekRequest {
    this.#begin(days ?? null, method);
    return this.#own ?? this.#begun?.request ?? { days: firstTemplate(method) };
  }

  /** What is wrong with the days of the page. */
  get problems(): readonly Problem[] {
    return this.#begun?.problems ?? [];
  }

  #begin(days: string | null, method: Method): void {
    if (this.#begun?.days === days && this.#begun.method === method) return;
    // What was taken over before the page was asked goes on.
    const isOther = this.#begun !== null && days !== null && days !== this.#begun.days;
    const read = days === null ? null : readDays(days, method);
    const minutes = read?.ok ? read.value : firstTemplate(method);
    this.#begun = { days, method, request: { days: minutes }, problems: read?.ok === false ? read.problems : [] };
    if (isOther) this.#own = null;
  }

  /** Takes over wishes that were set elsewhere. */
  take(week: WeekRequest | null): void {
    this.#own = week;
  }

  get drafted(): readonly Problem[] {
    return this.drafts.problems;
  }

  reset(): void {
    this.drafts.clear();
    this.#own = null;
    this.#last = null;
    this.opened = null;
    this.proposal = null;
    this.message = '';
  }

  /** Lengths settled for a kind no longer count. */
  unsettle(category: CategoryId): void {
    const { [category]: settled, ...sessions } = this.#own?.sessions ?? {};
    if (this.#own && settled) this.#own = { ...this.#own, sessions };
  }

  /** Makes a person's wishes the planner's, and closes what is no longer there. */
  act(wishes: WeekWishes): void {
    this.#own = wishes;
    this.proposal = null;
    this.#seat.finish();
  }

  /** Shows a week laid again, to be taken or left. */
  propose(proposal: Proposal): void {
    this.proposal = proposal;
    this.update();
  }

  update(): void {
    this.#seat.host.requestUpdate();
  }

  /** What the week would be with other wishes, by the plan on show. */
  tryOut(wishes: WeekWishes): PlanWeek | null {
    const { plan, method } = this.#view ?? {};
    return plan && method ? this.#trialMaker.lay(method, plan, { picks: this.#seat.picks(), week: wishes }).week : null;
  }

  /** The week on show; the one before it while it is being looked for. */
  #weekOf({ week }: Pick<Plan, 'week'>): PlanWeek | null {
    if (week?.state === 'laid') this.#last = week;
    if (week?.state === 'looking' && this.#last) return { ...this.#last, wishes: week.wishes, state: 'looking' };
    return week;
  }

  open(opened: Opened | null): void {
    const isSame = this.opened?.category === opened?.category && this.opened?.day === opened?.day;
    this.opened = isSame ? null : opened;
    if (this.opened) this.focusOn('#board-tools-title');
    this.update();
  }

  /** Where the focus goes once the board is rendered. */
  focusOn(selector: string): void {
    this.#focus = selector;
  }

  /** The card that an element stands for. */
  cardByKey(key: string): Card | undefined {
    const week = this.#view?.plan.week;
    return week ? cardsOf(week).find((card) => cardKey(card) === key) : undefined;
  }

  say(message: string): void {
    this.message = message;
    this.update();
  }

  outdate(): void {
    // All is rendered at once.
  }

  render(container: HTMLElement, view: FullView): boolean {
    this.#view = view;
    this.#container = container;
    const week = this.#weekOf(view.plan);
    render(week ? boardPanel({ ...view, board: this, week }) : nothing, container, { host: this.#seat.host });
    this.#moveFocus();
    return false;
  }

  #moveFocus(): void {
    if (this.#focus === null) return;
    const target = this.#container?.querySelector<HTMLElement>(this.#focus);
    this.#focus = null;
    target?.focus({ preventScroll: true });
    target?.scrollIntoView({ block: 'nearest' });
  }

  /** A week that took long is there: whoever planned with it plans again. */
  #arrive(): void {
    this.#maker = createWeekMaker(this.#solver.solve);
    this.#seat.arrive();
  }
}

function firstTemplate(method: Method): readonly number[] {
  return weekRules(method).templates[0]?.minutes ?? [60, 60, 60, 60, 60, 60, 60];
}

/** The board, as the planner fetches it; it begins with the days of the scenario on show. */
export function load(seat: BoardSeat) {
  const panel = new Board(seat);
  const week = seat.shown()?.week;
  if (week) panel.take(week);
  return { styles, panel };
}
