import { concreteStyles } from '../concrete/concrete.styles.js';
import { lateStyles } from '../late.styles.js';
import { RecordDesk, type RecordSeat } from './record-desk.js';
import { recordStyles } from './record.styles.js';

const styles = [lateStyles, concreteStyles, recordStyles];

/** The record of a planner; fetched where a page shows it. */
export const load = (seat: RecordSeat) => ({ styles, panel: new RecordDesk(seat) });
