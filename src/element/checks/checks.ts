import { checksPart } from '../../plan/checks/checks-part.js';
import { screen } from '../../training/checks/screening.js';
import type { ConcreteSeat } from '../concrete/concrete-panel.js';
import { concreteStyles } from '../concrete/concrete.styles.js';
import { lateStyles } from '../late.styles.js';
import { answersOf } from './answers.js';
import { beginChecks } from './begin-checks.js';
import { ChecksDesk } from './checks-desk.js';
import { checksPanel } from './checks-panel.js';
import { checksStyles } from './checks.styles.js';

const styles = [lateStyles, concreteStyles, checksStyles];

/** The checks of a planner; fetched where a page shows them. */
export const load = (seat: ConcreteSeat) => ({
  styles,
  panel: new ChecksDesk(
    seat,
    {
      part: checksPart,
      panel: checksPanel,
      says: ({ checks }) => ({ given: checks, text: null }),
      begin: beginChecks,
      ask: (request) => request,
      told: (problem) => problem,
      stops: (desk) => screen(answersOf(desk)).stops,
    },
    {},
  ),
});
