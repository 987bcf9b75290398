import type { ByCategory, CategoryId, EventId, LevelId, PhaseId, Status } from './ids.js';

/** Words in a method: a coach's own text, or the key of a text in the locales (shared/locales). */
export type Text = string | { readonly key: string };

/** Range and starting value of a numeric input; `step` is the slider's, values between steps may be typed. */
export interface NumberInput {
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly start: number;
}

/** The inputs of the week, with the ranges that this method allows. */
export interface MethodInputs {
  /** Hours a week. */
  readonly weekly_hours: NumberInput;
  readonly season_phase: { readonly start: PhaseId };
  readonly athlete_level: { readonly start: LevelId };
  readonly target_event: { readonly start: EventId };
  /** Minutes of strength a week above which the cap of the method holds it. */
  readonly strength_cap: NumberInput;
}

/** A kind of training: its name and the minutes of its shortest useful, typical and longest session. */
export interface Category {
  readonly id: CategoryId;
  readonly name: Text;
  readonly session: { readonly shortest: number; readonly typical: number; readonly longest: number };
  readonly status: Status;
}

/** Shares of the week by category, adding to 1. The first split whose `when` holds is used; the last has no `when`. */
export interface Split {
  readonly id: string;
  readonly name: Text;
  /** A formula over the inputs; left out only in the last split, which is used where no other is. */
  readonly when?: string | undefined;
  readonly shares: ByCategory<number>;
  readonly status: Status;
  /** Ids of entries in shared/evidence, where the status is `published` or an assumption leans on them. */
  readonly sources?: readonly string[] | undefined;
  readonly reason: Text;
}

interface RuleCommon {
  readonly id: string;
  /** `false` switches the rule off; it stays listed. */
  readonly enabled?: boolean | undefined;
  readonly name: Text;
  /** A formula; the rule acts where it holds. */
  readonly when: string;
  /** What is said when the rule acts; {before}, {after}, {moved}, {on} and {to} are filled in. */
  readonly says: Text;
  readonly reason: Text;
  readonly status: Status;
  readonly sources?: readonly string[] | undefined;
}

/** A rule that changes one quantity; what it takes off (or adds) is handed on to (or taken from) the quantity `to`. */
export interface ChangeRule extends RuleCommon {
  readonly kind: 'change';
  /** The quantity that the rule acts on. `when` and `value` see it so far as `value`, and `to` so far as `other`. */
  readonly on: string;
  readonly value: string;
  readonly to?: string | undefined;
  /** The minutes taken away are offered as one session every second week. */
  readonly every_second_week?: boolean | undefined;
}

/** A rule that changes nothing and says something. */
export interface NoticeRule extends RuleCommon {
  readonly kind: 'notice';
  readonly level: 'note' | 'caution';
}

export type Rule = ChangeRule | NoticeRule;

/** A quantity of the coach's own, shown in the sheet and usable in formulas. */
export interface OwnQuantity {
  readonly id: string;
  readonly name: Text;
  readonly formula: string;
  readonly status: Status;
}

/** A coach's way of dividing a week: the document in shared/schema/method.schema.json. */
export interface Method {
  readonly format: 'weekwright-method';
  readonly version: 1;
  readonly id: string;
  readonly name: Text;
  readonly inputs: MethodInputs;
  readonly categories: readonly Category[];
  readonly splits: readonly Split[];
  /** Whom a tie in rounding favours, first to last. */
  readonly tie_order: readonly CategoryId[];
  readonly rounding: {
    /** Minutes become whole multiples of this. */
    readonly step: number;
    /** A session option may miss the exact minutes by this many minutes ... */
    readonly tolerance_minutes: number;
    /** ... or by this share of them, whichever is more. */
    readonly tolerance_share: number;
  };
  readonly quantities?: readonly OwnQuantity[] | undefined;
  readonly rules: readonly Rule[];
}
