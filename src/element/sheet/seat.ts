import type { CSSResult, LitElement } from 'lit';
import type { Scenario } from '../../plan/scenarios/document.js';

/** What a planner lets its sheet do. */
export interface Seat {
  readonly host: LitElement;
  /** Adds styles that came with a chunk. */
  readonly adopt: (styles: readonly CSSResult[]) => void;
  /** Puts a scenario on show, as a person's act. */
  readonly put: (scenario: Scenario) => void;
  /** True where the sheet opens links itself: no other panel does. */
  readonly isOpener: () => boolean;
}
