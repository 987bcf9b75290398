import type { LitElement } from 'lit';
import type { PlanInputs, PlanRequest } from '../../plan/document.js';
import { inputNames } from '../../plan/inputs.js';
import type { Planner } from '../../plan/planner.js';
import type { Scenario } from '../../plan/scenarios/document.js';
import type { PlannedScenario } from '../../plan/scenarios/scenario-planner.js';
import type { WeekAsked } from '../../plan/week/week-maker.js';
import type { RunningRequest } from '../../plan/running/wishes.js';
import type { StrengthRequest } from '../../plan/strength/wishes.js';
import type { Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import type { CategoryId } from '../../training/method/ids.js';
import type { Board } from '../board/board.js';
import type { ChecksDesk } from '../checks/checks-desk.js';
import type { ConcretePanel } from '../concrete/concrete-panel.js';
import type { Basis } from '../basis/basis.js';
import { isPlainObject } from '../is-plain-object.js';
import type { HandoutAttributes, HandoutDesk } from '../handout/handout-desk.js';
import type { RecordDesk } from '../record/record-desk.js';
import type { Season } from '../season/season.js';
import type { Sheet } from '../sheet/sheet.js';
import type { SeasonAttributes } from '../season/season-attributes.js';
import type { Seat } from '../sheet/seat.js';
import type { View } from '../view.js';
import type { PlanMaker } from '../week.js';
import type { DetailsController } from './details-controller.js';
import { LatePanelController, type LatePanel, type LateParts } from './late-panel-controller.js';

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
interface LateAttributes extends SeasonAttributes, HandoutAttributes, Record<keyof PlanInputs, unknown> {
  readonly days: string | null | undefined;
  readonly race: string | null | undefined;
  readonly running: unknown;
  readonly equipment: string | null | undefined;
  readonly strength: unknown;
  readonly checks: unknown;
}

/** The panels that are fetched where a page shows them, and what they have to do with each other. */
export class LatePanels {
  readonly #late: {
    readonly sheet: LatePanelController<Sheet>;
    readonly week: LatePanelController<Board>;
    readonly season: LatePanelController<Season>;
    readonly running: LatePanelController<ConcretePanel<RunningRequest>>;
    readonly strength: LatePanelController<ConcretePanel<StrengthRequest>>;
    readonly checks: LatePanelController<ChecksDesk>;
    readonly basis: LatePanelController<Basis>;
    readonly record: LatePanelController<RecordDesk>;
    readonly handout: LatePanelController<HandoutDesk>;
  };
  /** The scenario that the sheet put on show last: panels that come after it begin with what it wishes. */
  #shown: Scenario | null = null;
  /** The panels on show. */
  #names: readonly string[] = [];
  #hasAnswers = false;
  readonly #picks: LateSeat['picks'];

  constructor({ host, more, view, picks, show, finish, arrive }: LateSeat) {
    this.#picks = picks;
    const adopt: Seat['adopt'] = (adopted) => {
      more.adopt(adopted);
    };
    // The handout opens links and files for all of them.
    const isAlone = (): boolean => !this.#names.includes('handout');
    const late = <P extends LatePanel>(place: string, load: LateParts<P>['load']): LatePanelController<P> =>
      new LatePanelController(host, more, { place, view, load });
    this.#late = {
      sheet: late('.sheet', async () => {
        const { Sheet, styles } = await import('../sheet/sheet.js');
        const showAll: Seat['show'] = (scenario) => {
          this.#shown = scenario;
          this.#late.week.panel?.take(scenario.week);
          this.#late.season.panel?.take(scenario.season);
          show(scenario.inputs, scenario.sessions);
        };
        return { styles, panel: new Sheet({ host, adopt, show: showAll, opensLinks: isAlone }) };
      }),
      week: late('.board', async () => {
        const { Board, styles } = await import('../board/board.js');
        const panel = new Board({ host, picks, finish, arrive });
        if (this.#shown?.week) panel.take(this.#shown.week);
        return { styles, panel };
      }),
      season: late('.season-panel', async () => {
        const { Season, styles } = await import('../season/season.js');
        const scenarios = (): readonly PlannedScenario[] => this.#late.sheet.panel?.scenarios ?? [];
        const settle = (): void => {
          this.#late.sheet.panel?.settle();
        };
        const panel = new Season({ host, adopt, show, finish, settle, scenarios });
        if (this.#shown?.season) panel.take(this.#shown.season);
        return { styles, panel };
      }),
      running: late('.running', async () => (await import('../running/running.js')).load({ host, finish })),
      strength: late('.strength', async () => (await import('../strength/strength.js')).load({ host, finish })),
      checks: late('.checks', async () => (await import('../checks/checks.js')).load({ host, finish })),
      basis: late('.basis-panel', async () => (await import('../basis/basis.js')).load()),
      record: late('.record', async () =>
        (await import('../record/record.js')).load({ host, week: () => this.#late.week.panel, takesFiles: isAlone }),
      ),
      handout: late('.handout', async () =>
        (await import('../handout/handout.js')).load({ host, adopt, picks, show, late: this.#late }),
      ),
    };
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
    return Object.values<LatePanelController<LatePanel>>(this.#late).flatMap(({ panel }) => panel?.problems ?? []);
  }

  /** What is asked of the planner: what the page or a person has set, and of what panels are there for. */
  request(page: LateAttributes, method: Method): PlanRequest {
    const { days, eventDate, mostHours, season: wished, race, running, equipment, strength, checks } = page;
    this.#late.handout.panel?.take(page);
    this.#late.running.panel?.take(running, race);
    this.#late.strength.panel?.take(strength, equipment);
    this.#hasAnswers = isPlainObject(checks) && 'answers' in checks;
    this.#late.checks.panel?.take(checks, null);
    const week = this.#late.week.panel?.request(days, method);
    const season = this.#late.season.panel?.request({ eventDate, mostHours, season: wished });
    const given = inputNames.map((name) => [name, page[name]] as const);
    const inputs: object = Object.fromEntries(given.filter(([, value]) => value !== undefined && value !== null));
    return { ...inputs, sessions: this.#picks(), ...(week ? { week } : {}), ...(season ? { season } : {}) };
  }

  /** Lengths are picked for a kind elsewhere: those settled on the board no longer count. */
  unsettle(category: CategoryId): void {
    this.#late.week.panel?.unsettle(category);
  }

  /** Makes plans with a planner, through the scenarios where there are any. */
  maker(planner: Planner): PlanMaker {
    const sheet = this.#late.sheet.panel;
    const board = this.#late.week.panel;
    const season = this.#late.season.panel;
    board?.teach(planner, sheet);
    season?.teach(planner, sheet);
    this.#late.checks.panel?.teach(sheet);
    const concrete = [this.#late.running.panel, this.#late.strength.panel, this.#late.checks.panel];
    return {
      versions: [sheet?.version, board?.version, season?.version, ...concrete.map((panel) => panel?.version)],
      plan: (by, request) => {
        const outcome = sheet?.plan(by, request) ?? by.plan(request);
        if (!outcome.ok) return outcome;
        const value = concrete.reduce((plan, panel) => panel?.complete(plan, by.method) ?? plan, outcome.value);
        return { ok: true, value };
      },
    };
  }
}
