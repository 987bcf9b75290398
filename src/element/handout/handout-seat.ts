import type { CSSResult, LitElement } from 'lit';
import type { PlanInputs } from '../../plan/document.js';
import type { RunningRequest } from '../../plan/running/wishes.js';
import type { StrengthRequest } from '../../plan/strength/wishes.js';
import type { WeekAsked } from '../../plan/week/week-maker.js';
import type { Board } from '../board/board.js';
import type { ChecksDesk } from '../checks/checks-desk.js';
import type { ConcretePanel } from '../concrete/concrete-panel.js';
import type { RecordDesk } from '../record/record-desk.js';
import type { Season } from '../season/season.js';
import type { Sheet } from '../sheet/sheet.js';

/** A panel that is fetched, once it is there. */
interface Late<P> {
  readonly panel: P | null;
  /** Settles when the panel shows what the planner shows. */
  readonly ready: Promise<unknown>;
}

/** The panels whose content is handed over; without content where the page does not show them. */
export type LateOnes = {
  readonly sheet: Late<Sheet>;
  readonly week: Late<Board>;
  readonly season: Late<Season>;
  readonly running: Late<ConcretePanel<RunningRequest>>;
  readonly strength: Late<ConcretePanel<StrengthRequest>>;
  readonly checks: Late<ChecksDesk>;
  readonly record: Late<RecordDesk>;
};

/** What a planner lets its handout do. */
export interface HandoutSeat {
  readonly host: LitElement;
  /** Adds styles that came with a chunk. */
  readonly adopt: (styles: readonly CSSResult[]) => void;
  readonly late: LateOnes;
  readonly picks: () => WeekAsked['picks'];
  /** Puts a scenario on the planner, as a person's act. */
  readonly show: (inputs: PlanInputs, sessions: WeekAsked['picks']) => void;
}
