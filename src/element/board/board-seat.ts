import type { LitElement } from 'lit';
import type { Scenario } from '../../plan/scenarios/document.js';
import type { WeekAsked } from '../../plan/week/week-maker.js';

/** What a planner lets its board do. */
export interface BoardSeat {
  readonly host: LitElement;
  /** The lengths picked for kinds elsewhere on the planner. */
  readonly picks: () => WeekAsked['picks'];
  /** The scenario that was put on show last, if any was. */
  readonly shown: () => Pick<Scenario, 'week'> | null;
  /** Plans again, as a person's act. */
  readonly finish: () => void;
  /** Plans again: a week that was looked for is there. */
  readonly arrive: () => void;
}
