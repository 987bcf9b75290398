import { basisBox } from './basis-box.js';
import { seasonBoxesStyles } from './boxes.styles.js';
import { compareBox } from './compare-box.js';
import { handBox } from './hand-box.js';
import { laterBox } from './later-box.js';
import { reachBox } from './reach-box.js';
import { seasonTable } from './season-table.js';
import type { SeasonBoxes } from './season-view.js';
import { shapeBox } from './shape-box.js';

export const styles = [seasonBoxesStyles];

/** What is in the boxes under the season; fetched when one is opened. */
export const boxes: NonNullable<SeasonBoxes['boxes']> = {
  hand: handBox,
  table: seasonTable,
  shape: shapeBox,
  reach: reachBox,
  later: laterBox,
  compare: compareBox,
  basis: basisBox,
};
