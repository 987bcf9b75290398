import { concreteStyles } from '../concrete/concrete.styles.js';
import type { LateTools } from '../controllers/late-tools.js';
import { lateStyles } from '../late.styles.js';
import { RecordDesk } from './record-desk.js';
import { recordStyles } from './record.styles.js';

const styles = [lateStyles, concreteStyles, recordStyles];

/** The record of a planner; fetched where a page shows it. */
export const load = (tools: LateTools) => ({
  styles,
  panel: new RecordDesk({ ...tools, week: () => tools.late.week.panel }),
});
