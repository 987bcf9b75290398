import type { SeasonPage } from './season/season-page.js';
import { collapsed } from './text.js';

/** What reaches out of the planner, but for what is scrolled in a box of its own. */
export function misfits(page: SeasonPage, panel: string): string[] {
  const frame = page.element.getBoundingClientRect();
  const visible = page
    .all(`${panel} *:not(option)`)
    .filter((each) => each.checkVisibility() && !each.closest('.visually-hidden, .scroll > *'));
  return visible
    .filter((each) => {
      const { left, right } = each.getBoundingClientRect();
      return left < frame.left - 1 || right > frame.right + 1;
    })
    .map((each) => `${each.tagName} ${each.className} ${each.id} ${collapsed(each).slice(0, 40)}`);
}

/** Text that is wider or higher than what holds it, and cut off there. */
export function clipped(page: SeasonPage, panel: string): string[] {
  const holders = page.all(`${panel} :is(p, li, label, summary, h3, h4, td, th, legend, select, span)`);
  return holders
    .filter((each) => each.checkVisibility() && !each.closest('.visually-hidden, .run-strip'))
    .filter((each) => getComputedStyle(each).overflow !== 'visible' && each.scrollWidth > each.clientWidth + 1)
    .map((each) => `${each.tagName} ${each.className} ${collapsed(each).slice(0, 40)}`);
}
