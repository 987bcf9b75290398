import type { TemplateResult } from 'lit';
import type { PlannedScenario } from '../../plan/scenarios/scenario-planner.js';
import type { PlanSeason, SeasonWeek } from '../../plan/season/document.js';
import type { SeasonRequest } from '../../plan/season/wishes.js';
import type { Planner } from '../../plan/planner.js';
import type { FullView } from '../controllers/late-panel-controller.js';
import type { FieldDesk } from '../fields/field-view.js';

/** The field with the hours of the week that is read: it is another with every week. */
export const weekHoursField = 'season-week-hours';

/** What a person asks of the season. */
export interface SeasonQuestion {
  readonly quantity: string;
  /** What it is to reach, as it was typed. */
  readonly wanted: string;
  /** Weeks by which the season would begin later. */
  readonly later: number;
}

/** What can be opened: the hand of a week, and what is under the season. */
export type BoxId = 'hand' | 'table' | 'shape' | 'reach' | 'later' | 'compare' | 'basis';

/** Which boxes are open, and what is in them once that is fetched. */
export interface SeasonBoxes {
  readonly boxes: Readonly<Record<BoxId, (view: SeasonView) => TemplateResult>> | null;
  isOpen(id: BoxId): boolean;
  toggle(id: BoxId, isOpen: boolean): void;
}

/** What the templates of the season read of it, and what people can do. */
export interface SeasonDesk extends FieldDesk<SeasonRequest> {
  /** The Monday of the week that is read. */
  readonly reading: string | null;
  readonly question: SeasonQuestion;
  readonly boxDesk: SeasonBoxes;
  /** What a listener is told. */
  readonly message: string;
  /** The planner of the week on show. */
  readonly planner: Planner | null;
  /** Every scenario, worked out; empty where there is no sheet. */
  readonly scenarios: readonly PlannedScenario[];
  /** An act that is a step of its own for undo: a button, not a slider. */
  step(request: SeasonRequest): void;
  /** The season with another request, without showing it; null where it cannot be. */
  tryOut(request: SeasonRequest): PlanSeason | null;
  /** Reads another week. */
  read(start: string): void;
  /** Puts a week on the planner. */
  show(week: SeasonWeek): void;
  /** Asks another question; `answer` gives what a listener is told, once. */
  ask(question: Partial<SeasonQuestion>, answer?: () => string): void;
}

/** All that the templates of the season read. */
export interface SeasonView extends FullView {
  readonly desk: SeasonDesk;
  readonly season: PlanSeason;
  /** What the season was asked for. */
  readonly request: SeasonRequest;
}
