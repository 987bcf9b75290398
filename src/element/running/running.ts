import { runningPart } from '../../plan/running/running-part.js';
import type { RunningRequest } from '../../plan/running/wishes.js';
import { asTimes } from '../../words/running/as-times.js';
import { ConcretePanel, type ConcreteSeat } from '../concrete/concrete-panel.js';
import { concreteStyles } from '../concrete/concrete.styles.js';
import { lateStyles } from '../late.styles.js';
import { today } from '../today.js';
import { beginRunning } from './begin-running.js';
import { runningPanel } from './running-panel.js';
import { runningStyles } from './running.styles.js';

const styles = [lateStyles, concreteStyles, runningStyles];

/** Paces, distances and heart rates of a planner; fetched where a page shows them. */
export const load = (seat: ConcreteSeat) => ({
  styles,
  panel: new ConcretePanel<RunningRequest>(
    seat,
    {
      part: runningPart,
      panel: runningPanel,
      says: ({ running, race }) => ({ given: running, text: race }),
      begin: beginRunning,
      // Today matters only where a race was long ago.
      ask: (request) => (request.race?.date ? { today: today(), ...request } : request),
      told: (problem, { unit }) => asTimes(problem, unit ?? 'km'),
    },
    {},
  ),
});
