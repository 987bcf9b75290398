import type { CheckRules } from './check-rules.js';
import type { ByCategory, CategoryId, EventId, LevelId, PhaseId, Status, Text } from './ids.js';
import type { RunningRules } from './running-rules.js';
import type { SeasonRules } from './season-rules.js';
import type { StrengthRules } from './strength-rules.js';

// The comments here are published: `npm run compile` copies them into shared/schema/method.schema.json.

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
  /** How hard a usual session feels as a whole, 0 for rest to 10; as in the built-in method where left out. */
  readonly effort?: number | undefined;
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

/** What a layout breaks: named in plans by its id, with a cost, and a reason for whoever asks. */
interface ClashCommon {
  /** Unlike any other clash's. */
  readonly id: string;
  /** A whole number; the week with the least sum is the best. 0 switches the clash off. */
  readonly cost: number;
  readonly name: Text;
  /** What is said where it happens; {days}, {first}, {then}, {kind}, {by} and {cost} are filled in. */
  readonly says: Text;
  /** Why it is so, for whoever asks. */
  readonly reason: Text;
  readonly status: Status;
  readonly sources?: readonly string[] | undefined;
}

/** A kind of training, or `long`: the slow session that is longer than every other slow session of the week. */
export type ClashMember = CategoryId | 'long';

/** Sessions that should not follow each other; counted once for each day on which the first of them falls. */
export interface PairClash extends ClashCommon {
  readonly kind: 'pair';
  /** What comes first; one of these is enough. */
  readonly first: readonly ClashMember[];
  /** What follows; one of these is enough. */
  readonly then: readonly ClashMember[];
  /** Days from the first to what follows, from 0 (the same day) to 3; after Sunday comes Monday. */
  readonly days_apart: number;
}

/** Two sessions or more on one day, counted once a day; a step of the rounding by which a kind's sessions miss its rounded minutes; a session more or fewer than the kind's wished number. */
export interface CountClash extends ClashCommon {
  readonly kind: 'crowded-day' | 'missed-minutes' | 'session-count';
}

export type ClashRule = PairClash | CountClash;

/** Minutes on the seven days, to begin with. */
export interface DayTemplate {
  /** Unlike any other template's. */
  readonly id: string;
  readonly name: Text;
  /** Minutes available on each day, Monday first; 0 is a day off. */
  readonly minutes: readonly number[];
}

/** How sessions are laid on the days of a week. */
export interface WeekRules {
  /** Most sessions on one day, where a person does not say otherwise. */
  readonly sessions_a_day: number;
  /** Least days without a session, where a person does not say otherwise. */
  readonly rest_days: number;
  /** Kinds of which a day has one session at most, all of them together; no day has two sessions of one kind anyway. */
  readonly one_a_day: readonly CategoryId[];
  /** In which order the sessions of one day are done: every kind once. */
  readonly order_in_day: readonly CategoryId[];
  /** Hours that should lie between two sessions of one day, where life allows. */
  readonly hours_between: number;
  /** Why the order and the hours are so. */
  readonly order_reason: Text;
  readonly order_sources?: readonly string[] | undefined;
  /** What a week should not have, and what it costs. */
  readonly clashes: readonly ClashRule[];
  readonly templates: readonly DayTemplate[];
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
  /** How sessions are laid on the days; as in the built-in method where left out. */
  readonly week?: WeekRules | undefined;
  /** How a season is carried up to its event; as in the built-in method where left out. */
  readonly season?: SeasonRules | undefined;
  /** How running becomes paces, distances and heart rates; as in the built-in method where left out. */
  readonly running?: RunningRules | undefined;
  /** How minutes of strength become movements, sets and rest; as in the built-in method where left out. */
  readonly strength?: StrengthRules | undefined;
  /** How plans are held against what is known; as in the built-in method where left out. */
  readonly checks?: CheckRules | undefined;
}
