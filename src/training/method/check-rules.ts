import type { Founded } from './founded.js';
import type { CategoryId, LevelId, PhaseId, Text } from './ids.js';

// The comments here are published: `npm run compile` copies them into shared/schema/method.schema.json.

/** What checks are about, in the order in which they are told. */
export const checkGroupIds = ['health', 'intensity', 'strength', 'load', 'progression', 'recovery'] as const;
export type CheckGroupId = (typeof checkGroupIds)[number];

/** What a check can measure. */
export const measureIds = [
  'activity_minutes',
  'hard_minutes_share',
  'hard_sessions_share',
  'hard_gap',
  'hours_rise',
  'load_rise',
  'longest_run_rise',
  'monotony_rise',
  'rest_days',
  'season_rise',
  'season_run_rise',
  'strain_rise',
  'strength_gap',
  'strength_minutes',
  'strength_sessions',
  'weekly_hours',
] as const;
export type MeasureId = (typeof measureIds)[number];

/** Edges that a method has as an input. */
export const edgeInputs = ['strength_cap'] as const;
export type CheckEdge = number | (typeof edgeInputs)[number];

/** For whom and when limits are; they are for all where nothing is said. */
export interface CheckScope {
  readonly levels?: readonly LevelId[] | undefined;
  readonly phases?: readonly PhaseId[] | undefined;
  /** In years, ends included; where the age is not told, only with `untold`. */
  readonly ages?:
    | { readonly least?: number | undefined; readonly most?: number | undefined; readonly untold?: boolean | undefined }
    | undefined;
  /** Only above so many hours a week. */
  readonly hours_above?: number | undefined;
}

/** What a measured value is held against, and what that rests on. */
export interface CheckLimits extends CheckScope, Founded {
  /** In line from `least` to `most`, ends included. */
  readonly in_line: { readonly least?: CheckEdge | undefined; readonly most?: CheckEdge | undefined };
  /** A caution below `below` or above `above`, these not included; a look is worth while between. */
  readonly caution?: { readonly below?: number | undefined; readonly above?: number | undefined } | undefined;
  /** What the source does not say. */
  readonly not_said: Text;
}

/** The plan held against one piece of guidance. */
export interface CheckRule {
  /** Unlike any other check's. */
  readonly id: string;
  readonly group: CheckGroupId;
  readonly measure: MeasureId;
  /** `false` switches the check off. */
  readonly enabled?: boolean | undefined;
  readonly name: Text;
  /** What was measured; the numbers are filled in. */
  readonly says: Text;
  /** What would bring it in line; {amount} is filled in. */
  readonly change: Text;
  /** The first that fits the runner is used; where none does, the check is not made. */
  readonly limits: readonly CheckLimits[];
}

/** The usual cautions, in the order in which they are told. */
export const cautionIds = [
  'pain',
  'bone',
  'warning-signs',
  'illness',
  'low-energy',
  'heat',
  'pregnancy',
  'under-18',
  'older',
  'new',
  'local',
] as const;
export type CautionId = (typeof cautionIds)[number];

/** What the questions before the start can lead to. */
export const adviceIds = ['stop', 'ask-first', 'ask-before-hard', 'stay-easy', 'start-easy', 'go'] as const;
export type AdviceId = (typeof adviceIds)[number];

/** The plan held against what is known. */
export interface CheckRules {
  /** How hard each kind is for the body, for guidelines in moderate and vigorous minutes. */
  readonly activity: Founded & {
    /** Multiples of the energy at rest; a kind that is left out counts as neither. */
    readonly kinds: readonly { readonly id: CategoryId; readonly multiple: number }[];
    /** Moderate from here on. */
    readonly moderate: number;
    /** Vigorous from here on. */
    readonly vigorous: number;
    /** Moderate minutes that a vigorous one counts for. */
    readonly vigorous_counts: number;
  };
  readonly list: readonly CheckRule[];
  /** Where studies and common practice differ, or where a number that people look for is left out. */
  readonly differences: readonly {
    readonly id: string;
    readonly name: Text;
    readonly text: Text;
    readonly sources: readonly string[];
  }[];
  /** A clinic’s own wording of the usual cautions; none can be left unsaid. */
  readonly cautions?: { readonly [K in CautionId]?: Text | undefined } | undefined;
  /** The questions before the start. Their logic cannot be changed, nor the stop switched off. */
  readonly screening: Founded & {
    /** A clinic's own wording of what they lead to. */
    readonly advice?: { readonly [K in AdviceId]?: Text | undefined } | undefined;
  };
}
