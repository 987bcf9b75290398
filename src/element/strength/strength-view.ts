import type { PlanStrength } from '../../plan/strength/document.js';
import type { StrengthRequest } from '../../plan/strength/wishes.js';
import type { ConcreteView } from '../concrete/concrete-panel.js';

/** All that the templates of strength sessions read. */
export interface StrengthView extends ConcreteView<StrengthRequest> {
  readonly strength: PlanStrength;
}
