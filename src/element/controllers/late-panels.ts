import type { LitElement } from 'lit';
import type { PlanInputs, PlanRequest } from '../../plan/document.js';
import type { Planner } from '../../plan/planner.js';
import type { Scenario } from '../../plan/scenarios/document.js';
import type { PlannedScenario } from '../../plan/scenarios/scenario-planner.js';
import type { WeekAsked } from '../../plan/week/week-maker.js';
import type { Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import type { CategoryId } from '../../training/method/ids.js';
import type { SeasonAttributes } from '../season/season-attributes.js';
import type { Seat } from '../sheet/seat.js';
import type { View } from '../view.js';
import type { PlanMaker } from '../week.js';
import type { DetailsController } from './details-controller.js';
import { LatePanelController } from './late-panel-controller.js';

/** What the planner lets its late panels see and do. */
export interface LateSeat {
  readonly host: LitElement;
  readonly more: DetailsController;
  readonly view: () => View | null;
  readonly picks: () => WeekAsked['picks'];
  /** Puts a scenario on the planner, as a person's act. */
  readonly show: (inputs: PlanInputs, sessions: WeekAsked['picks']) => void;
  /** Plans again, as a person's act. */
  readonly finish: () => void;
  /** Plans again: what was looked for is there. */
  readonly arrive: () => void;
}

/** What a page may say to the panels that are fetched. */
interface LateAttributes extends SeasonAttributes {
  readonly days: string | null | undefined;
}

/** The panels that are fetched where a page shows them, and what they have to do with each other. */
export class LatePanels {
  readonly #sheet;
  readonly #board;
  readonly #season;
  /** The scenario that the sheet put on show last: panels that come after it begin with what it wishes. */
  #shown: Scenario | null = null;

  constructor({ host, more, view, picks, show, finish, arrive }: LateSeat) {
    const adopt: Seat['adopt'] = (adopted) => {
      more.adopt(adopted);
    };
    this.#sheet = new LatePanelController(host, more, {
      place: '.sheet',
      view,
      load: async () => {
        const { Sheet, styles } = await import('../sheet/sheet.js');
        const showAll: Seat['show'] = (scenario) => {
          this.#shown = scenario;
          this.#board.panel?.take(scenario.week);
          this.#season.panel?.take(scenario.season);
          show(scenario.inputs, scenario.sessions);
        };
        return { styles, panel: new Sheet({ host, adopt, show: showAll }) };
      },
    });
    this.#board = new LatePanelController(host, more, {
      place: '.board',
      view,
      load: async () => {
        const { Board, styles } = await import('../board/board.js');
        const panel = new Board({ host, picks, finish, arrive });
        if (this.#shown?.week) panel.take(this.#shown.week);
        return { styles, panel };
      },
    });
    this.#season = new LatePanelController(host, more, {
      place: '.season-panel',
      view,
      load: async () => {
        const { Season, styles } = await import('../season/season.js');
        const scenarios = (): readonly PlannedScenario[] => this.#sheet.panel?.scenarios ?? [];
        const settle = (): void => {
          this.#sheet.panel?.settle();
        };
        const panel = new Season({ host, adopt, show, finish, settle, scenarios });
        if (this.#shown?.season) panel.take(this.#shown.season);
        return { styles, panel };
      },
    });
  }

  /** Fetches the panels on show. */
  want(names: readonly string[]): void {
    if (names.includes('sheet')) this.#sheet.want();
    if (names.includes('week')) this.#board.want();
    if (names.includes('season')) this.#season.want();
  }

  /** Settles when every panel shows what the planner shows. */
  get ready(): Promise<unknown> {
    return Promise.all([this.#sheet.ready, this.#board.ready, this.#season.ready]);
  }

  /** The planner of the scenario on show; null where there are no scenarios. */
  get planner(): Planner | null {
    return this.#sheet.panel?.planner ?? null;
  }

  get problems(): readonly Problem[] {
    return [...(this.#board.panel?.problems ?? []), ...(this.#season.panel?.problems ?? [])];
  }

  /** What is asked of the days of the week and of the season, where their panels are there. */
  request(
    { days, eventDate, mostHours, season: given }: LateAttributes,
    method: Method,
  ): Pick<PlanRequest, 'week' | 'season'> {
    const week = this.#board.panel?.request(days, method);
    const season = this.#season.panel?.request({ eventDate, mostHours, season: given });
    return { ...(week ? { week } : {}), ...(season ? { season } : {}) };
  }

  /** Lengths are picked for a kind elsewhere: those settled on the board no longer count. */
  unsettle(category: CategoryId): void {
    this.#board.panel?.unsettle(category);
  }

  /** Makes plans with a planner, through the scenarios where there are any. */
  maker(planner: Planner): PlanMaker {
    const sheet = this.#sheet.panel;
    const board = this.#board.panel;
    const season = this.#season.panel;
    board?.teach(planner, sheet);
    season?.teach(planner, sheet);
    return {
      versions: [sheet?.version, board?.version, season?.version],
      plan: (by, request) => sheet?.plan(by, request) ?? by.plan(request),
    };
  }
}
