// The season of a page, by hand.
import type { Page } from 'puppeteer-core';
import { inPlanner, planOf } from './driving.js';
import { appears, settled, typeInto } from './sheet-driving.js';

/** Until the first planner of a page has its season. */
export async function seasonPageOf({ page }: { readonly page: Page }): Promise<Page> {
  await appears(page, '#season-week-title');
  return page;
}

/** The season of the first planner. */
export async function seasonOf(page: Page) {
  const plan = await planOf(page);
  if (!plan?.season) throw new Error('the planner has no season');
  return plan.season;
}

/** Weeks up to the event. */
export const weeksUpTo = async (page: Page): Promise<number> =>
  (await seasonOf(page)).weeks.filter(({ weeksToGo }) => weeksToGo >= 0).length;

/** Types over a number of the season, and leaves the field by Enter. */
export async function typeInSeason(page: Page, id: string, text: string): Promise<void> {
  await typeInto(page, `#${id}`, text);
  await page.keyboard.press('Enter');
  await settled(page);
}

export type SeasonBox = 'hand' | 'table' | 'shape' | 'reach' | 'later' | 'basis';
export const seasonBoxes: readonly SeasonBox[] = ['hand', 'table', 'shape', 'reach', 'later', 'basis'];

/** Opens a box of the season by keys, and waits for what is in it. */
export async function openSeasonBox(page: Page, box: SeasonBox): Promise<void> {
  const summary = await inPlanner(page, `.season-${box} > summary`);
  await summary.evaluate((element) => {
    if (element instanceof HTMLElement) element.focus();
  });
  await page.keyboard.press('Enter');
  await appears(page, `.season-${box}[open] > :nth-child(2)`);
}

/** Presses the picture at a share of its width. */
export async function pressPicture(page: Page, at: number): Promise<void> {
  const plot = await inPlanner(page, '.season-chart .sweep-plot');
  await plot.evaluate((element) => {
    if (element instanceof Element) element.scrollIntoView({ block: 'center', behavior: 'instant' });
  });
  const box = await plot.boundingBox();
  if (!box) throw new Error('the picture cannot be seen');
  await page.mouse.click(box.x + at * box.width, box.y + box.height / 2);
  await settled(page);
}
