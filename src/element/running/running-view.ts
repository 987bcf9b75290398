import type { PlanRunning } from '../../plan/running/document.js';
import type { RunningRequest } from '../../plan/running/wishes.js';
import type { ConcreteView } from '../concrete/concrete-panel.js';

/** All that the templates of paces and runs read. */
export interface RunningView extends ConcreteView<RunningRequest> {
  readonly running: PlanRunning;
}
