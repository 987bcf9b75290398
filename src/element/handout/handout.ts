import { concreteStyles } from '../concrete/concrete.styles.js';
import { lateStyles } from '../late.styles.js';
import { HandoutDesk } from './handout-desk.js';
import type { HandoutSeat } from './handout-seat.js';
import { handoutStyles } from './handout.styles.js';
import { sheetStyles } from './sheets/sheet-styles.js';

const styles = [lateStyles, concreteStyles, handoutStyles, ...sheetStyles];

/** What is handed over; fetched where a page shows it. */
export const load = (seat: HandoutSeat) => ({ styles, panel: new HandoutDesk(seat) });
