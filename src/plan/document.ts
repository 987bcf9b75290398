import type { ByCategory, EventId, LevelId, PhaseId, Status, Text } from '../training/method/ids.js';
import type { Provenance } from '../training/method/provenance.js';
import type { Derivation } from '../sheet/derivation.js';
import type { CheckResult, PlanLoad } from './checks/document.js';
import type { ChecksRequest } from './checks/wishes.js';
import type { Notice } from './notice.js';
import type { PlanSeason } from './season/document.js';
import type { PlanRunning } from './running/document.js';
import type { RunningRequest } from './running/wishes.js';
import type { SeasonRequest } from './season/wishes.js';
import type { PlanStrength } from './strength/document.js';
import type { StrengthRequest } from './strength/wishes.js';
import type { PlanWeek } from './week/document.js';
import type { WeekRequest } from './week/wishes.js';

export { noticeCodes, type Notice, type NoticeCode } from './notice.js';

// The comments on `Plan` and what is in it are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** What is known of the runner's week. */
export interface PlanInputs {
  /** Hours a week. */
  readonly hours: number;
  readonly phase: PhaseId;
  readonly level: LevelId;
  readonly event: EventId;
  /** Most minutes of strength a week above six hours. */
  readonly strengthCap: number;
}

/** A question to the planner: inputs (the method's starting values where left out) and sessions already picked. */
export interface PlanRequest extends Partial<PlanInputs> {
  /** Durations in minutes picked for a category; kept where they are still among the category's options. */
  readonly sessions?: Partial<ByCategory<readonly number[]>> | undefined;
  /** The days of the week, and what is wanted of them; sessions are laid on days where it is given. */
  readonly week?: WeekRequest | undefined;
  /** The season that the week is part of. */
  readonly season?: SeasonRequest | undefined;
  /** What is known of the runner's pace and heart; running is made concrete where it is given. */
  readonly running?: RunningRequest | undefined;
  /** What there is for strength; its sessions are filled where it is given. */
  readonly strength?: StrengthRequest | undefined;
  /** What is told for checks; the plan is held against what is known where it is given. */
  readonly checks?: ChecksRequest | undefined;
}

/** What a rule did to this week. Minutes are exact. */
export interface RuleOutcome {
  /** The rule of the method. */
  readonly id: string;
  readonly kind: 'change' | 'notice';
  /** False where the rule is switched off. */
  readonly enabled: boolean;
  /** True where the rule changed its quantity, or had something to say. */
  readonly acted: boolean;
  /** The quantity it acts on; null for a notice. */
  readonly on: string | null;
  /** The quantity that gives or takes the difference; null where none does. */
  readonly to: string | null;
  /** The quantity `on` before the rule; null for a notice, or where it has no number. */
  readonly before: number | null;
  /** The quantity `on` after the rule. */
  readonly after: number | null;
  readonly status: Status;
}

/** Why a quantity is what it is, and how well that is founded. */
export type PlanDerivation = Derivation & Provenance;

/** A week of training, and why it is so. */
export interface Plan {
  /** What the document is. */
  readonly format: 'weekwright-plan';
  /** The version of the format. */
  readonly version: 1;
  /** The method by which the plan was made. */
  readonly method: { readonly id: string; readonly name: Text };
  readonly inputs: PlanInputs;
  /** The division in use: shares of the week by category, and how well they are founded. */
  readonly split: { readonly id: string; readonly shares: ByCategory<number>; readonly status: Status };
  /** Exact minutes a week. */
  readonly minutes: ByCategory<number>;
  /** Minutes a week in whole steps (5 by default), adding up to `total.rounded`. */
  readonly rounded: ByCategory<number>;
  /** All minutes of the week. */
  readonly total: { readonly exact: number; readonly rounded: number };
  /** Ways to cut a category's minutes into sessions, best first: lists of minutes. Empty where there are no minutes. */
  readonly options: ByCategory<readonly (readonly number[])[]>;
  /** The option in use: as laid on the days, where days are given; else the one picked, else the best. */
  readonly sessions: ByCategory<readonly number[]>;
  /** Every rule of the method, in the method's order. */
  readonly rules: readonly RuleOutcome[];
  /** What the runner should know. */
  readonly notices: readonly Notice[];
  /** Why each quantity is what it is, by quantity id. */
  readonly derivations: Readonly<Record<string, PlanDerivation>>;
  /** Sessions on days; null while no days are given. */
  readonly week: PlanWeek | null;
  /** The weeks up to an event; null while no season is asked for. */
  readonly season: PlanSeason | null;
  /** Paces, distances and heart rates; null while they are not asked for. */
  readonly running: PlanRunning | null;
  /** Strength sessions by movements and sets; null while they are not asked for. */
  readonly strength: PlanStrength | null;
  /** How hard the week is; null while nothing was checked. */
  readonly load: PlanLoad | null;
  /** The plan held against published guidance; empty while nothing was checked. */
  readonly checks: readonly CheckResult[];
}
