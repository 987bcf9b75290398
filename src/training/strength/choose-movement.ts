import type { EquipmentId, Movement, PatternId } from '../method/strength-rules.js';

/** What a form of a pattern is chosen from. */
export interface Choice {
  readonly movements: readonly Movement[];
  readonly equipment: readonly EquipmentId[];
  /** Most grade by itself. */
  readonly grade: number;
  /** The id of the form that is wished for. */
  readonly wished?: string | undefined;
}

/** True where all that a movement needs is there. */
export function isAtHand(movement: Movement, equipment: readonly EquipmentId[]): boolean {
  return movement.equipment.every((each) => equipment.includes(each));
}

/**
 * The form of a pattern: the wished one if its equipment is there, else the hardest up to the grade, else the easiest
 * that there is equipment for; null where there is none.
 */
export function chooseMovement(pattern: PatternId, { movements, equipment, grade, wished }: Choice): Movement | null {
  const forms = movements.filter((each) => each.pattern === pattern && isAtHand(each, equipment)).sort(byGrade);
  const asWished = forms.find(({ id }) => id === wished);
  const hardest = forms.filter((each) => each.grade <= grade).at(-1);
  return asWished ?? hardest ?? forms[0] ?? null;
}

const byGrade = (one: Movement, other: Movement): number => one.grade - other.grade;
