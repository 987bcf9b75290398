import type { Founded } from './founded.js';
import type { LevelId, PhaseId, Text } from './ids.js';

// The comments here are published: `npm run compile` copies them into shared/schema/method.schema.json.

/** What a movement trains, in the trade's plain words. */
export const patternIds = [
  'squat',
  'hinge',
  'single-leg',
  'straight-knee-calf',
  'bent-knee-calf',
  'hip-abduction',
  'trunk',
  'jump',
  'push',
  'pull',
] as const;
export type PatternId = (typeof patternIds)[number];

/** What movements can need; one that needs nothing needs none of these. */
export const equipmentIds = ['band', 'dumbbells', 'barbell'] as const;
export type EquipmentId = (typeof equipmentIds)[number];

/** What a pattern is for in a session: its sets and repetitions follow from it. */
export const roleIds = ['main', 'calf', 'support', 'jump'] as const;
export type RoleId = (typeof roleIds)[number];

/** A movement of the library. */
export interface Movement {
  /** Unlike any other movement's; one of a coach with the id of one of the library takes its place. */
  readonly id: string;
  readonly name: Text;
  /** How it is done, in a line. */
  readonly how: Text;
  readonly pattern: PatternId;
  /** 1 for the easiest form of the pattern to 5. */
  readonly grade: number;
  /** All that it needs. */
  readonly equipment: readonly EquipmentId[];
  /** True where one side is done after the other: twice the work. */
  readonly each_side: boolean;
  /** True where it is held, and counted in seconds. */
  readonly held: boolean;
  /** True where a weight is put on it that can be worked out from the heaviest one. */
  readonly loaded: boolean;
  /** What to mind, where there is something beyond the usual. */
  readonly cautions?: readonly Text[] | undefined;
}

/** Sets and repetitions of a role. */
export interface Dose {
  readonly sets: { readonly least: number; readonly most: number };
  readonly repetitions: number;
  /** Repetitions where no weight can be put on the movement; as many as with one where left out. */
  readonly unweighted?: number | undefined;
  /** Repetitions that one could still do at the end of a set; null where they are not counted: jumps. */
  readonly in_hand: number | null;
  /** Seconds of a movement that is held. */
  readonly seconds: number;
  /** Seconds of rest between two sets. */
  readonly rest: number;
  /** How hard it should feel, 0 to 10. */
  readonly effort: number;
}

/** What strength training is like in some phases, or for some runners; the first stage that fits is used. */
export interface Stage extends Founded {
  /** Unlike any other stage's. */
  readonly id: string;
  readonly name: Text;
  /** The phases in which it is used; in all where left out. */
  readonly phases?: readonly PhaseId[] | undefined;
  /** The levels for which it is used; for all where left out. */
  readonly levels?: readonly LevelId[] | undefined;
  /** Most grade of a movement by itself, 1 to 5. */
  readonly grade: number;
  /** True where two movements take turns, so that one rests while the other works. */
  readonly pairs: boolean;
  /** Null for a role that it leaves out. */
  readonly doses: Readonly<Record<RoleId, Dose | null>>;
}

/** How minutes of strength become movements, sets and rest. */
export interface StrengthRules {
  /** What there is to train with, where a person does not say otherwise. */
  readonly equipment: readonly EquipmentId[];
  readonly stages: readonly Stage[];
  /** Every pattern once: its role, and the part of the body; movements of one part do not take turns. */
  readonly patterns: readonly {
    readonly id: PatternId;
    readonly role: RoleId;
    readonly area: 'legs' | 'calves' | 'hips' | 'trunk' | 'upper';
  }[];
  /** Patterns of the sessions of a week by priority, the first list for the session with the heaviest legs; after the last list the first comes again. */
  readonly sessions: readonly (readonly PatternId[])[];
  /** In which order roles are done: every role once. */
  readonly order: readonly RoleId[];
  /** How long everything takes. */
  readonly time: Founded & {
    /** Its usual minutes, and the most that it takes of a short session, as a share of 1. */
    readonly warm_up: { readonly minutes: number; readonly most_share: number };
    readonly cool_down: { readonly minutes: number; readonly most_share: number };
    readonly seconds_a_repetition: number;
    /** Seconds from one movement, or pair, to the next. */
    readonly change_over: number;
    /** Seconds between the two movements of a pair. */
    readonly between: number;
  };
  /** Legs are spared on the day of a hard run and on the days before it. */
  readonly spared: Founded & { readonly days_before: number };
  /** The heaviest weight that can be lifted once, from a set. */
  readonly maximum: Founded & {
    /** Most repetitions of a set that tells it. */
    readonly most_repetitions: number;
    /** Repetitions that can be done with a share of it, as parts of 1; fewest repetitions first. */
    readonly table: readonly { readonly repetitions: number; readonly share: number }[];
    /** Weights come in steps of so many kilograms. */
    readonly step: number;
  };
  /** How much heavier, when one or two repetitions more are managed; parts of 1. */
  readonly progress: Founded & { readonly least: number; readonly most: number };
  /** Sessions a week, main lifts in one, and landings of jumps, as the reviews have them. */
  readonly dose: Founded & {
    readonly sessions: { readonly usual: number; readonly most: number };
    readonly main: { readonly least: number; readonly most: number };
    readonly landings: number;
  };
  /** Movements of the coach's own. */
  readonly movements?: readonly Movement[] | undefined;
}
