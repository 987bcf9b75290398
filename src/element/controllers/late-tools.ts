import type { CSSResult, LitElement } from 'lit';
import type { PlanInputs } from '../../plan/document.js';
import type { RunningRequest } from '../../plan/running/wishes.js';
import type { Scenario } from '../../plan/scenarios/document.js';
import type { StrengthRequest } from '../../plan/strength/wishes.js';
import type { WeekAsked } from '../../plan/week/week-maker.js';
import type { Board } from '../board/board.js';
import type { ChecksDesk } from '../checks/checks-desk.js';
import type { ConcretePanel } from '../concrete/concrete-panel.js';
import type { RecordDesk } from '../record/record-desk.js';
import type { Season } from '../season/season.js';
import type { Sheet } from '../sheet/sheet.js';
import type { View } from '../view.js';
import type { LatePanel, LatePanelController } from './late-panel-controller.js';
import type { DetailsController } from './details-controller.js';

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

/** Panels that hold something of the plan. */
export type LateOnes = {
  readonly sheet: LatePanelController<Sheet>;
  readonly week: LatePanelController<Board>;
  readonly season: LatePanelController<Season>;
  readonly running: LatePanelController<ConcretePanel<RunningRequest>>;
  readonly strength: LatePanelController<ConcretePanel<StrengthRequest>>;
  readonly checks: LatePanelController<ChecksDesk>;
  readonly record: LatePanelController<RecordDesk>;
};

/** What of a scenario the planner and its panels show. */
export type ShownScenario = Pick<Scenario, 'inputs' | 'sessions' | 'week' | 'season'>;

/** What a planner gives to a panel that has come. */
export interface LateTools extends LateSeat {
  /** Adds styles that came with a chunk. */
  readonly adopt: (styles: readonly CSSResult[]) => void;
  readonly late: LateOnes;
  /** The scenario that was put on show last, if any was. */
  readonly shown: () => ShownScenario | null;
  /** Puts a scenario on show, with its days and its season, as a person's act. */
  readonly put: (scenario: ShownScenario) => void;
  /** True where a panel that can opens links and files itself: no other does it for all. */
  readonly isOpener: () => boolean;
}

/** What the file of a panel offers. */
export interface LateModule<P extends LatePanel> {
  readonly load: (tools: LateTools) => { readonly panel: P; readonly styles: readonly CSSResult[] };
}
