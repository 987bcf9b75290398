import { paperStyles } from './paper.styles.js';
import { seasonSheetStyles } from './season-sheet.styles.js';
import { sheetHeadStyles } from './sheet-head.styles.js';

/** All that a sheet is dressed in, on the screen and on paper. */
export const sheetStyles = [paperStyles, sheetHeadStyles, seasonSheetStyles];
