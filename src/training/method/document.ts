import type { ByCategory, CategoryId, EventId, LevelId, PhaseId, Status } from './ids.js';

// The comments here are published: `npm run compile` copies them into shared/schema/method.schema.json.

/** Words in a method: a coach's own text, or the key of a text in the locales (shared/locales). */
export type Text = string | { readonly key: string };

/** Range and starting value of a numeric input; `step` is the slider's, values between steps may be typed. */
export interface NumberInput {
  /** The least value that may be chosen. */
  readonly least: number;
  /** The largest value that may be chosen. */
  readonly most: number;
  /** What one step of the slider adds. */
  readonly step: number;
  /** The value before anybody chooses one. */
  readonly start: number;
}

/** The inputs of the week, with the ranges that this method allows. */
export interface MethodInputs {
  /** Hours a week. */
  readonly weekly_hours: NumberInput;
  /** The phase of the season. */
  readonly season_phase: { readonly start: PhaseId };
  /** How trained the runner is. */
  readonly athlete_level: { readonly start: LevelId };
  /** The event trained for. */
  readonly target_event: { readonly start: EventId };
  /** Minutes of strength a week above which the cap of the method holds it. */
  readonly strength_cap: NumberInput;
}

/** A kind of training: its name and the minutes of its shortest useful, typical and longest session. */
export interface Category {
  readonly id: CategoryId;
  readonly name: Text;
  /** Minutes of a session, in this order; the shortest and the longest are whole steps of the rounding. */
  readonly session: { readonly shortest: number; readonly typical: number; readonly longest: number };
  readonly status: Status;
}

/** Shares of the week by category, adding to 1. The first split whose `when` holds is used; the last has no `when`. */
export interface Split {
  /** How formulas name the split: `off_season` gives the quantities `split_off_season` and `off_season_slow_share`. */
  readonly id: string;
  readonly name: Text;
  /** A formula over the inputs; left out only in the last split, which is used where no other is. */
  readonly when?: string | undefined;
  /** The share of each category, adding to 1. */
  readonly shares: ByCategory<number>;
  readonly status: Status;
  /** Ids of entries in shared/evidence, where the status is `published` or an assumption leans on them. */
  readonly sources?: readonly string[] | undefined;
  /** Why it is so, for whoever asks. */
  readonly reason: Text;
}

interface RuleCommon {
  /** Unlike any other rule's. */
  readonly id: string;
  /** `false` switches the rule off; it stays listed. */
  readonly enabled?: boolean | undefined;
  readonly name: Text;
  /** A formula; the rule acts where it holds. */
  readonly when: string;
  /** What is said when the rule acts; {before}, {after}, {moved}, {on} and {to} are filled in. */
  readonly says: Text;
  /** Why it is so, for whoever asks. */
  readonly reason: Text;
  readonly status: Status;
  readonly sources?: readonly string[] | undefined;
}

/** A rule that changes one quantity; what it takes off (or adds) is handed on to (or taken from) the quantity `to`. */
export interface ChangeRule extends RuleCommon {
  readonly kind: 'change';
  /** The quantity that the rule acts on. `when` and `value` see it so far as `value`, and `to` so far as `other`. */
  readonly on: string;
  /** A formula: what the quantity becomes. */
  readonly value: string;
  /** The quantity that gets what is taken off, or gives what is added; nothing does where it is left out. */
  readonly to?: string | undefined;
  /** The minutes taken away are offered as one session every second week. */
  readonly every_second_week?: boolean | undefined;
}

/** A rule that changes nothing and says something. */
export interface NoticeRule extends RuleCommon {
  readonly kind: 'notice';
  /** How much weight the words have: good to know, or mind your health. */
  readonly level: 'note' | 'caution';
}

export type Rule = ChangeRule | NoticeRule;

/** A quantity of the coach's own, shown in the sheet and usable in formulas. */
export interface OwnQuantity {
  /** How formulas name it. */
  readonly id: string;
  readonly name: Text;
  /** mathjs expression syntax over inputs and other quantities. */
  readonly formula: string;
  readonly status: Status;
}

/** A coach's way of dividing a week among the kinds of training. */
export interface Method {
  /** What the document is. */
  readonly format: 'weekwright-method';
  /** The version of the format. */
  readonly version: 1;
  /** A short name for plans to refer to. */
  readonly id: string;
  readonly name: Text;
  readonly inputs: MethodInputs;
  /** Every kind of training once. */
  readonly categories: readonly Category[];
  /** The divisions of the week: the first whose condition holds is used, else the last. */
  readonly splits: readonly Split[];
  /** Whom a tie in rounding favours, first to last. */
  readonly tie_order: readonly CategoryId[];
  /** Which kinds give way, in proportion, when another is fixed by hand; all others where left out, or where none is left. */
  readonly gives_way?: readonly CategoryId[] | undefined;
  /** How exact minutes become minutes that people would plan. */
  readonly rounding: {
    /** Minutes become whole multiples of this. */
    readonly step: number;
    /** A session option may miss the exact minutes by this many minutes, or by `tolerance_share` of them. */
    readonly tolerance_minutes: number;
    /** A share of the exact minutes; of the two tolerances the larger one counts. */
    readonly tolerance_share: number;
  };
  /** Quantities of the coach's own. */
  readonly quantities?: readonly OwnQuantity[] | undefined;
  /** What changes the division, or says something about it, in this order. */
  readonly rules: readonly Rule[];
}
