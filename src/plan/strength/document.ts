import type { PatternId, RoleId } from '../../training/method/strength-rules.js';
import type { StrengthWishes } from './wishes.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** A movement of a session with its sets. */
export interface Exercise {
  readonly movement: string;
  readonly pattern: PatternId;
  readonly role: RoleId;
  readonly sets: number;
  /** Sets that it would have with more time. */
  readonly wishedSets: number;
  /** Repetitions of a set, on each side where it has sides; null where it is held. */
  readonly repetitions: number | null;
  /** Seconds of a set that is held; null where repetitions are counted. */
  readonly seconds: number | null;
  readonly eachSide: boolean;
  /** How hard it should feel, 0 to 10. */
  readonly effort: number;
  /** Repetitions that one could still do at the end of a set; null where they are not counted. */
  readonly inHand: number | null;
  /** Seconds of rest that it needs between two of its sets. */
  readonly rest: number;
  /** Share of the heaviest weight that can be lifted once, as a part of 1; null where no weight is put on it. */
  readonly share: number | null;
  /** Null where no set has told what can be lifted. */
  readonly kilograms: number | null;
  /** The weights to go on with when more repetitions are managed; null where `kilograms` is. */
  readonly next: { readonly least: number; readonly most: number } | null;
}

/** One movement, or two that take turns. */
export interface StrengthBlock {
  readonly exercises: readonly Exercise[];
  /** Seconds of rest after a set, or after a turn of both; sets that only one of them has left follow its own rest. */
  readonly rest: number;
  /** All of it, what leads over to the next one included. */
  readonly seconds: number;
}

/** A strength session that fits into its minutes. Times are in seconds. */
export interface StrengthSession {
  /** The minutes that there are. */
  readonly minutes: number;
  /** The minutes that the plan has for it. */
  readonly plannedMinutes: number;
  /** 0 for Monday to 6 for Sunday; null while sessions are not laid on days. */
  readonly day: number | null;
  /** Legs are spared where a hard run falls on the day or follows soon. */
  readonly legs: 'full' | 'spared';
  readonly warmUp: number;
  /** In the order in which they are done. */
  readonly blocks: readonly StrengthBlock[];
  readonly coolDown: number;
  /** Warm-up, blocks and cool-down; never more than the minutes. */
  readonly seconds: number;
  /** What is left of the minutes. */
  readonly spare: number;
  /** What did not fit, the most important first. */
  readonly leftOut: readonly { readonly pattern: PatternId; readonly movement: string }[];
  /** Landings of all jumps. */
  readonly landings: number;
}

/** The heaviest weight that can be lifted once, in kilograms. */
export interface StrengthMaximum {
  readonly movement: string;
  /** By Epley's equation. */
  readonly epley: number;
  /** By Brzycki's. */
  readonly brzycki: number;
  /** The one that weights are worked out from: the lower. */
  readonly used: number;
}

/** What there is to say of strength. */
export const strengthNoticeCodes = [
  'one-session',
  'many-sessions',
  'few-main',
  'many-landings',
  'no-weights',
  'not-heavy',
  'form-out-of-reach',
  'no-movement',
  'legs-spared',
  'no-days',
  'under-18',
  'from-65',
  'nothing-fits',
] as const;
export type StrengthNoticeCode = (typeof strengthNoticeCodes)[number];

export interface StrengthNotice {
  readonly code: StrengthNoticeCode;
  /** Good to know, or mind your health. */
  readonly level: 'note' | 'caution';
  /** The session it is about, from 0. */
  readonly session?: number;
  readonly movement?: string;
  readonly pattern?: PatternId;
  readonly values: Readonly<Record<string, number>>;
}

/** The strength sessions of a week. */
export interface PlanStrength {
  readonly wishes: StrengthWishes;
  /** The stage of the method in use. */
  readonly stage: string;
  readonly sessions: readonly StrengthSession[];
  readonly maxima: readonly StrengthMaximum[];
  readonly notices: readonly StrengthNotice[];
}
