import type { KeptPlan } from '../../exchange/kept-file.js';
import type { HandoutTexts, PlanFile } from '../../plan/file/document.js';
import type { Told } from '../../plan/handout/concrete-plan.js';
import type { WeekPlanner } from '../../plan/record/planned-week.js';
import type { Problem } from '../../problem.js';
import type { Values } from '../../words/phrases.js';
import type { FullView } from '../controllers/late-panel-controller.js';
import type { FieldDesk } from '../fields/field-view.js';
import type { KeptPlans } from '../keep/kept-plans.js';
import type { NotShown } from './put.js';
import type { PaperId } from './print/papers.js';

/** What a person chooses of a handout. */
export interface HandoutChoices {
  readonly what: 'week' | 'season';
  /** The Monday of the week. */
  readonly start: string;
  readonly paper: PaperId;
  readonly ink: 'black' | 'colour';
  /** False where sessions have the whole day in a calendar. */
  readonly isTimed: boolean;
  /** When sessions begin, and the first of two on a day: `18:00`. */
  readonly usual: string;
  readonly early: string;
  /** True where a file or a link leaves out what is told of the runner, and the record. */
  readonly isBare: boolean;
}

/** What can be changed in the panel: choices, what is written on the handout, and what the plan is called. */
export type HandoutChange = Partial<HandoutChoices & HandoutTexts & { readonly name: string }>;

/** What came of the last act. */
export interface HandoutMessage {
  readonly key: string;
  readonly values?: Values;
  readonly problems?: readonly Problem[];
  /** What of an opened plan the page does not show. */
  readonly notShown?: readonly NotShown[];
  /** What could not be copied, for copying by hand. */
  readonly text?: string;
  /** What was saved: a page around a frame may have forbidden it without a word. */
  readonly copy?: string;
}

/** What the templates of the panel read of it, and what people can do. */
export interface HandoutDesk extends FieldDesk<HandoutChange> {
  /** Whom the page names, until somebody types another. */
  readonly texts: HandoutTexts;
  /** What the plan is called. */
  readonly name: string;
  readonly choices: HandoutChoices;
  readonly message: HandoutMessage | null;
  /** True where the page lets people keep plans on this device. */
  readonly mayKeep: boolean;
  readonly kept: KeptPlans;
  /** Plans of a file that has several, to choose from. */
  readonly offered: readonly KeptPlan[];
  /** True where a plan was open before the one that was opened last. */
  readonly canGoBack: boolean;
  say(message: HandoutMessage | null): void;
  /** Everything that a person has set. */
  collect(): PlanFile | null;
  /** Opens the text of a file; what was open before is one step away. */
  open(text: string): Promise<void>;
  /** Opens a file from a disk. */
  openFile(file: File): Promise<void>;
  goBack(): Promise<void>;
  isOpen(box: string): boolean;
  toggle(box: string, isOpen: boolean): void;
  update(): void;
}

/** All that the templates of the panel read. */
export interface HandoutView extends FullView {
  readonly host: HTMLElement;
  readonly desk: HandoutDesk;
  readonly weeks: WeekPlanner;
  readonly told: Told;
}
