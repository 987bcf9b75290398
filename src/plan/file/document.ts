import type { DoneSession } from '../../training/record/done-session.js';
import type { ChecksWishes } from '../checks/wishes.js';
import type { RunningRequest } from '../running/wishes.js';
import type { ScenarioSheet } from '../scenarios/document.js';
import type { ScenarioDocument } from '../scenarios/scenario-document.js';
import type { StrengthRequest } from '../strength/wishes.js';

// The comments on `PlanFileDocument` and what is in it are published: `npm run compile` copies them into
// shared/schema/file.schema.json.

/** Most characters of a text that a person writes for a handout. */
export const handoutLimits = { runner: 60, contact: 200, note: 1000 } as const;

/** What a person writes on a handout. */
export interface HandoutTexts {
  /** Whom it is for. */
  readonly runner: string;
  /** Whom to ask: a line of the coach or the clinic. */
  readonly contact: string;
  /** A few words to go with it. */
  readonly note: string;
}

/** What is told for checks; answers to the questions before the start are never written down. */
export type ToldForChecks = { readonly [K in keyof ChecksWishes]?: ChecksWishes[K] | undefined };

/** Everything that a person has set on a planner, as one value that never changes: what a file and a link hold. */
export interface PlanFile {
  /** As the person calls it; empty while nobody has named it. */
  readonly name: string;
  readonly sheet: ScenarioSheet;
  /** The scenario on show, by its id. */
  readonly onShow: string;
  /** What is told of pace and heart; null where nothing is. */
  readonly running: RunningRequest | null;
  readonly strength: StrengthRequest | null;
  readonly checks: ToldForChecks | null;
  /** What was done, in the order of the dates. */
  readonly record: readonly DoneSession[];
  readonly handout: HandoutTexts;
}

/** A plan as a file: everything that a person has set, not what follows from it. */
export interface PlanFileDocument {
  /** What the document is. */
  readonly format: 'weekwright-file';
  /** The version of the format. */
  readonly version: 1;
  /** As the person calls it. */
  readonly name?: string | undefined;
  /** The scenarios side by side, at least one, with the id of their method. */
  readonly sheet: ScenarioDocument;
  /** The scenario on show, by its id; the reference where it is left out. */
  readonly onShow?: string | undefined;
  /** What is told of pace and heart. */
  readonly running?: RunningRequest | undefined;
  /** What there is for strength. */
  readonly strength?: StrengthRequest | undefined;
  /** What is told for checks. */
  readonly checks?: ToldForChecks | undefined;
  /** Sessions that were done. */
  readonly record?: readonly DoneSession[] | undefined;
  /** What a person writes on a handout. */
  readonly handout?: Partial<HandoutTexts> | undefined;
}
