import type { Dose, EquipmentId, Movement, PatternId, Stage, StrengthRules } from '../method/strength-rules.js';
import { chooseMovement } from './choose-movement.js';
import type { Pairable } from './pair-up.js';

/** A movement that a session would have, if there is time for it. */
export interface Candidate extends Pairable {
  readonly pattern: PatternId;
  readonly movement: Movement;
  readonly dose: Dose;
  /** Sets that it has where there is time for all. */
  readonly mostSets: number;
}

/** What candidates are made from. */
export interface CandidateGround {
  readonly rules: Pick<StrengthRules, 'patterns'>;
  readonly movements: readonly Movement[];
  readonly stage: Stage;
  readonly equipment: readonly EquipmentId[];
  readonly forms: Readonly<Partial<Record<PatternId, string>>>;
}

/**
 * The movements for a list of patterns, most important first, without those that the stage leaves out and those for
 * which there is no form. Where legs are spared there are no jumps, and main lifts have their least sets.
 */
export function candidates(
  patterns: readonly PatternId[],
  legs: 'full' | 'spared',
  ground: CandidateGround,
): readonly Candidate[] {
  return patterns.flatMap((pattern) => {
    const kind = ground.rules.patterns.find(({ id }) => id === pattern);
    const dose = kind && ground.stage.doses[kind.role];
    const movement = formOf(pattern, ground);
    if (!kind || !dose || !movement || (legs === 'spared' && kind.role === 'jump')) return [];
    const mostSets = legs === 'spared' && kind.role === 'main' ? dose.sets.least : dose.sets.most;
    return [{ pattern, movement, dose, mostSets, role: kind.role, area: kind.area }];
  });
}

/** The form of a pattern that is used; null where there is none. */
export function formOf(
  pattern: PatternId,
  { movements, stage, equipment, forms }: Omit<CandidateGround, 'rules'>,
): Movement | null {
  return chooseMovement(pattern, { movements, equipment, grade: stage.grade, wished: forms[pattern] });
}
