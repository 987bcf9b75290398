import type { EquipmentId, PatternId } from '../../training/method/strength-rules.js';

// The comments here are published: `npm run compile` copies them into shared/schema/plan.schema.json.

/** What wishes may be: whole minutes, kilograms, years. */
export const strengthLimits = {
  minutes: { least: 5, most: 180 },
  kilograms: { least: 1, most: 500 },
  age: { least: 5, most: 110 },
} as const;

/** A set that a person has done of a movement, as heavy as that many repetitions allow. */
export interface LiftedSet {
  readonly movement: string;
  readonly kilograms: number;
  readonly repetitions: number;
}

/** What a person has and wants for strength. */
export interface StrengthWishes {
  /** What there is to train with. */
  readonly equipment: readonly EquipmentId[];
  /** Minutes that there are for a session, whatever is planned; null for the planned ones. */
  readonly minutes: number | null;
  /** Movements chosen for patterns, by pattern. */
  readonly forms: Readonly<Partial<Record<PatternId, string>>>;
  /** Sets that tell how much can be lifted, one a movement. */
  readonly lifted: readonly LiftedSet[];
  /** In years; null where it is not told. */
  readonly age: number | null;
}

/** Strength as it is asked for; the method's usual equipment where it is left out. */
export type StrengthRequest = { readonly [K in keyof StrengthWishes]?: StrengthWishes[K] | undefined };
