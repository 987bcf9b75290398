import type { PlanLoad } from '../../plan/checks/document.js';
import type { ChecksRequest } from '../../plan/checks/wishes.js';
import type { ConcreteView } from '../concrete/concrete-panel.js';

/** All that the templates of checks read. */
export interface ChecksView extends ConcreteView<ChecksRequest> {
  readonly load: PlanLoad;
}
