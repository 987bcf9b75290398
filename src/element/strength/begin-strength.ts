import type { StrengthRequest } from '../../plan/strength/wishes.js';
import type { Outcome } from '../../problem.js';
import { equipmentIds, type EquipmentId } from '../../training/method/strength-rules.js';
import type { ConcretePage } from '../concrete/concrete-panel.js';
import { givenRequest } from '../concrete/given-request.js';

const nothing = 'none';

/** What a page wants of strength: its property, and the equipment of its attribute. */
export function beginStrength({ given, text }: ConcretePage): Outcome<StrengthRequest> {
  const wanted = givenRequest('strength', given);
  if (!wanted.ok || text == null) return wanted;
  const words = text.split(/\s+/).filter((word) => word !== '');
  const equipment = equipmentIds.filter((id) => words.includes(id));
  const isKnown = (word: string): boolean => word === nothing || equipment.some((id: EquipmentId) => id === word);
  const problems = words.filter((word) => !isKnown(word)).map((value) => unknownEquipment(value));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: { ...wanted.value, equipment } };
}

const unknownEquipment = (value: string) =>
  ({ path: 'equipment', value, code: 'not-one-of', allowed: { choices: [...equipmentIds, nothing] } }) as const;
