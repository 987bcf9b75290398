import { faultsOf } from '../axe.js';
import type { PlannerPage } from '../planner-page.js';

/**
 * axe cannot tell the ground of what is scrolled away, lies under something, is hatched or has a bar behind it: for its
 * eyes nothing scrolls and nothing lies over anything else, and grounds are the darkest or longest that they can be.
 */
const plainly = new CSSStyleSheet();
plainly.replaceSync(`
  thead th { position: static !important }
  .menu .items { translate: 0 4em }
  .scroll, .columns-box, .import-unread, .p-scroll {
    overflow: visible !important;
    max-block-size: none !important;
    inline-size: max-content;
    background: var(--ground);
  }
  /* As wide as it is: columns of equal width have no end in Firefox where nothing bounds them. */
  .columns-box { inline-size: auto }
  .p-scroll { background: #fff }
  /* So high that no head of several rows reaches into the next one. */
  @media (min-width: 600px) { .p-days tr { block-size: 6em } }
  /* Text at the edge of its cell is outside by a hundred-thousandth of a pixel in Firefox. */
  .grid th { padding-inline-start: 1px !important }
  .bar { background: color-mix(in oklab, var(--accent) 30%, var(--ground)) }
  .bar::before, .grid td::before { content: none !important }
  .day[data-free='true'] { background: color-mix(in oklab, var(--line) 45%, transparent) !important }
  .grip { visibility: hidden }
  /* Half of the last number of an axis stands beyond its end. */
  .sweep-x:not(.choices) span { position: static !important; translate: none !important }
`);

/** Arrows, dots and single digits are no text to axe; their colour is that of the names and numbers beside them. */
const tooShort = /(?:only non-text characters|too short to determine if it is actual text content)$/;

/** What axe finds in a planner that is made plain for its eyes. */
export async function plainFaults(page: PlannerPage): Promise<string[]> {
  page.root.adoptedStyleSheets.push(plainly);
  const found = await faultsOf(page);
  page.root.adoptedStyleSheets.pop();
  return found.filter((line) => !tooShort.test(line));
}
