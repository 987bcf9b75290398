// Paces and strength of a page, by hand.
import type { Page } from 'puppeteer-core';
import { inPlanner, planOf } from './driving.js';
import { appears, settled, typeInto } from './sheet-driving.js';
import type { OpenPage } from './web.js';

export type ConcreteName = 'running' | 'strength' | 'checks';

/** Until the first planner of a page has its panel. */
export async function panelOf({ page }: { readonly page: Page }, name: ConcreteName): Promise<Page> {
  await appears(page, `.${name} .lead`);
  return page;
}

/** What the plan of the first planner has of running and strength. */
export async function concreteOf(page: Page) {
  const plan = await planOf(page);
  if (!plan) throw new Error('the planner has no plan');
  return { running: plan.running, strength: plan.strength };
}

/** Gives the focus to something of the first planner. */
export async function goTo(page: Page, selector: string): Promise<void> {
  const control = await inPlanner(page, selector);
  await control.evaluate((element) => {
    if (element instanceof HTMLElement) element.focus();
  });
}

/** Types over a field, and leaves it by Enter. */
export async function typeInField(page: Page, id: string, text: string): Promise<void> {
  await goTo(page, `#${id}`);
  await typeInto(page, `#${id}`, text);
  await page.keyboard.press('Enter');
  await settled(page);
}

/** Opens something that opens, by keys, and waits for what is in it. */
export async function openByKeys(page: Page, selector: string): Promise<void> {
  await goTo(page, `${selector} > summary`);
  await page.keyboard.press('Enter');
  await appears(page, `${selector}[open] > :nth-child(2)`);
}

/** Asks a planner for panels, as the page's own script would. */
export async function showPanels({ page }: Pick<OpenPage, 'page'>, panels: string): Promise<void> {
  await page.$eval(
    'weekwright-planner',
    (planner, names) => {
      planner.setAttribute('panels', names);
    },
    panels,
  );
}

/** Requests that are for none of our own files. */
export function foreign({ page, requests }: Pick<OpenPage, 'page' | 'requests'>): string[] {
  const { origin } = new URL(page.url());
  return requests.filter((url) => !url.startsWith(`${origin}/`) && !url.startsWith('data:'));
}

/** Requests for the tag, its parts and the methods of the page since a page was loaded. */
export function notOfTheTag({ requests }: Pick<OpenPage, 'requests'>, before: number): string[] {
  return requests.slice(before).filter((url) => !/\/weekwright[\w.-]*\.js$/.test(url));
}

/** How wide a page is. */
export const widthOf = (page: Page): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth);

/** What has the focus in the first planner: an id, else the text of it. */
export function focusedIn(page: Page): Promise<string> {
  return page.$eval('weekwright-planner', ({ shadowRoot }) => {
    const focused = shadowRoot?.activeElement;
    return focused ? focused.id || focused.textContent.replace(/\s+/g, ' ').trim() : '';
  });
}
