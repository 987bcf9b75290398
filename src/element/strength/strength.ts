import { strengthPart } from '../../plan/strength/strength-part.js';
import type { StrengthRequest } from '../../plan/strength/wishes.js';
import { ConcretePanel, type ConcreteSeat } from '../concrete/concrete-panel.js';
import { concreteStyles } from '../concrete/concrete.styles.js';
import { lateStyles } from '../late.styles.js';
import { beginStrength } from './begin-strength.js';
import { strengthPanel } from './strength-panel.js';
import { strengthStyles } from './strength.styles.js';

const styles = [lateStyles, concreteStyles, strengthStyles];

/** The strength sessions of a planner; fetched where a page shows them. */
export const load = (seat: ConcreteSeat) => ({
  styles,
  panel: new ConcretePanel<StrengthRequest>(
    seat,
    {
      part: strengthPart,
      panel: strengthPanel,
      says: ({ strength, equipment }) => ({ given: strength, text: equipment }),
      begin: beginStrength,
      ask: (request) => request,
      told: (problem) => problem,
    },
    {},
  ),
});
