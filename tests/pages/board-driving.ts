// The board of a page, by hand.
import type { Page } from 'puppeteer-core';
import { inPlanner, planOf } from './driving.js';
import { appears, settled } from './sheet-driving.js';

/** Until the first planner of a page has its week on the days. */
export async function boardOf({ page }: { readonly page: Page }): Promise<Page> {
  await appears(page, '.board .days[data-state="laid"] .card');
  return page;
}

/** The week of the first planner. */
export async function weekOf(page: Page) {
  const plan = await planOf(page);
  if (!plan?.week) throw new Error('the planner has no week');
  return plan.week;
}

/** Until the week of the first planner is laid, or known not to fit. */
export async function weekArrives(page: Page): Promise<void> {
  await settled(page);
  await page.waitForFunction(
    () => {
      const week = document.querySelector('weekwright-planner')?.plan?.week;
      return week?.state === 'laid' || Boolean(week?.conflict);
    },
    { polling: 50, timeout: 20_000 },
  );
  await settled(page);
}

interface Place {
  readonly x: number;
  readonly y: number;
}

/** The middle of something of the first planner, in sight. */
export async function middleOf(page: Page, selector: string): Promise<Place> {
  const found = await inPlanner(page, selector);
  const box = await found.boundingBox();
  if (!box) throw new Error(`${selector} cannot be seen`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Brings something of the first planner into the middle of the window. */
export async function scrollTo(page: Page, selector: string): Promise<void> {
  const found = await inPlanner(page, selector);
  await found.evaluate((element) => {
    if (element instanceof Element) element.scrollIntoView({ block: 'center' });
  });
}

/** What has the focus in the first planner: the day and kind of a card, else an id or a tag. */
export function focusOf(page: Page): Promise<string> {
  return page.$eval('weekwright-planner', ({ shadowRoot }) => {
    const focused = shadowRoot?.activeElement;
    if (!(focused instanceof HTMLElement)) return '';
    return focused.dataset['key'] ?? (focused.id || focused.tagName);
  });
}

/** Text of something of the first planner, in one line; '' where it is not there. */
export function textOf(page: Page, selector: string): Promise<string> {
  return page.$eval(
    'weekwright-planner',
    ({ shadowRoot }, wanted) => (shadowRoot?.querySelector(wanted)?.textContent ?? '').replace(/\s+/g, ' ').trim(),
    selector,
  );
}

/** Types over the minutes of a day. */
export async function typeMinutes(page: Page, day: number, text: string): Promise<void> {
  const field = await inPlanner(page, `#day-${String(day)}`);
  await field.evaluate((element) => {
    if (element instanceof HTMLInputElement) element.select();
  });
  await field.type(text);
  await page.keyboard.press('Enter');
  await weekArrives(page);
}

/** Asks the first planner for a week that takes some hundred milliseconds to lay: many hours, and days that can be full. */
export async function askMuch(page: Page): Promise<void> {
  await page.$eval('weekwright-planner', (planner) => {
    Object.assign(planner, { hours: 16, phase: 'build', level: 'elite', days: '100,110,120,130,140,150,160' });
  });
  await settled(page);
  await choose(page, 'rest-days', 0);
  await choose(page, 'sessions-a-day', 2);
}

async function choose(page: Page, list: 'rest-days' | 'sessions-a-day', index: number): Promise<void> {
  const select = await inPlanner(page, `#board-${list}`);
  await select.evaluate((element, at) => {
    if (!(element instanceof HTMLSelectElement)) throw new Error('no list');
    element.selectedIndex = at;
    element.dispatchEvent(new Event('change', { bubbles: true }));
  }, index);
  await settled(page);
}
