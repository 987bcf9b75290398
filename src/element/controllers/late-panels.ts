import type { PlanRequest } from '../../plan/document.js';
import { inputNames } from '../../plan/inputs.js';
import type { Planner } from '../../plan/planner.js';
import type { Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import type { CategoryId } from '../../training/method/ids.js';
import type { Basis } from '../basis/basis.js';
import type { HandoutDesk } from '../handout/handout-desk.js';
import { isPlainObject } from '../is-plain-object.js';
import type { PanelName } from '../panels.js';
import type { PlanMaker } from '../week.js';
import { LatePanelController, type LatePanel, type PageSays } from './late-panel-controller.js';
import type { LateModule, LateOnes, LateSeat, LateTools, ShownScenario } from './late-tools.js';

/** The panels that are fetched where a page shows them, and what they have to do with each other. */
export class LatePanels {
  readonly #seat: LateSeat;
  readonly #late: LateOnes & {
    readonly basis: LatePanelController<Basis>;
    readonly handout: LatePanelController<HandoutDesk>;
  };
  /** The scenario that was put on show last: panels that come after it begin with what it wishes. */
  #shown: ShownScenario | null = null;
  /** The panels on show. */
  #names: readonly string[] = [];
  #hasAnswers = false;

  constructor(seat: LateSeat) {
    this.#seat = seat;
    const late = <P extends LatePanel>(name: PanelName, load: () => Promise<LateModule<P>>): LatePanelController<P> =>
      new LatePanelController(seat.host, seat.more, {
        place: `[part=${name}]`,
        view: seat.view,
        load: async () => {
          const module = await load();
          return () => module.load(this.#tools);
        },
      });
    this.#late = {
      sheet: late('sheet', () => import('../sheet/sheet.js')),
      week: late('week', () => import('../board/board.js')),
      season: late('season', () => import('../season/season.js')),
      running: late('running', () => import('../running/running.js')),
      strength: late('strength', () => import('../strength/strength.js')),
      checks: late('checks', () => import('../checks/checks.js')),
      basis: late('basis', () => import('../basis/basis.js')),
      record: late('record', () => import('../record/record.js')),
      handout: late('handout', () => import('../handout/handout.js')),
    };
  }

  /** What each of them gets when it is there. */
  get #tools(): LateTools {
    return {
      ...this.#seat,
      adopt: (styles) => {
        this.#seat.more.adopt(styles);
      },
      late: this.#late,
      shown: () => this.#shown,
      put: (scenario) => {
        this.hold(scenario);
        this.#seat.show(scenario.inputs, scenario.sessions);
      },
      // The handout opens links and files for all of them.
      isOpener: () => !this.#names.includes('handout'),
    };
  }

  /** Takes over the days and the season of a scenario that is put on show; panels that come later begin with it. */
  hold(scenario: ShownScenario): void {
    this.#shown = scenario;
    this.#late.week.panel?.take(scenario.week);
    this.#late.season.panel?.take(scenario.season);
  }

  /** What a person has set on panels is as the page says it again. */
  reset(): void {
    this.#shown = null;
    for (const panel of this.panels) panel?.reset?.();
  }

  /** Fetches the panels on show. */
  want(names: readonly string[]): void {
    this.#names = names;
    for (const [name, panel] of Object.entries(this.#late)) if (names.includes(name)) panel.want();
  }

  /** Settles when every panel shows what the planner shows. */
  get ready(): Promise<unknown> {
    return Promise.all(Object.values(this.#late).map(({ ready }) => ready));
  }

  /** The planner of the scenario on show; null where there are no scenarios. */
  get planner(): Planner | null {
    return this.#late.sheet.panel?.planner ?? null;
  }

  /** True where what a runner has answered allows no plan at all. */
  get isStopped(): boolean {
    const { panel } = this.#late.checks;
    // Until the answers of a page can be read, any of them stops.
    return this.#names.includes('checks') && (panel ? panel.isStopped : this.#hasAnswers);
  }

  get problems(): readonly Problem[] {
    return this.panels.flatMap((panel) => panel?.problems ?? []);
  }

  /** What is asked of the planner: what the page or a person has set, and of what panels are there for. */
  request(page: PageSays, method: Method): PlanRequest {
    const { checks } = page;
    this.#hasAnswers = isPlainObject(checks) && 'answers' in checks;
    for (const panel of this.panels) panel?.hear?.(page);
    const week = this.#late.week.panel?.request(page.days, method);
    const season = this.#late.season.panel?.request(page);
    const given = inputNames.map((name) => [name, page[name]] as const);
    const inputs: object = Object.fromEntries(given.filter(([, value]) => value !== undefined && value !== null));
    return { ...inputs, sessions: this.#seat.picks(), ...(week ? { week } : {}), ...(season ? { season } : {}) };
  }

  /** Lengths are picked for a kind elsewhere: those settled on the board no longer count. */
  unsettle(category: CategoryId): void {
    this.#late.week.panel?.unsettle(category);
  }

  /** Makes plans with a planner, through the scenarios where there are any. */
  maker(planner: Planner): PlanMaker {
    const panels = this.panels;
    const sheet = this.#late.sheet.panel;
    for (const panel of panels) panel?.instruct?.(planner, sheet);
    return {
      versions: panels.map((panel) => panel?.version),
      plan: (by, request) => {
        const outcome = sheet?.plan(by, request) ?? by.plan(request);
        if (!outcome.ok) return outcome;
        return {
          ok: true,
          value: panels.reduce((plan, panel) => panel?.complete?.(plan, by.method) ?? plan, outcome.value),
        };
      },
    };
  }

  /** Those that are there, each at its place. */
  get panels(): readonly (LatePanel | null)[] {
    return Object.values<LatePanelController<LatePanel>>(this.#late).map(({ panel }) => panel);
  }
}
