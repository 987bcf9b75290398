// The board of a page, by hand.
import type { Page, TouchHandle } from 'puppeteer-core';
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
async function middleOf(page: Page, selector: string): Promise<Place> {
  const found = await inPlanner(page, selector);
  const box = await found.boundingBox();
  if (!box) throw new Error(`${selector} cannot be seen`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Brings something of the first planner into the middle of the window. */
async function scrollTo(page: Page, selector: string): Promise<void> {
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

export const days = [0, 1, 2, 3, 4, 5, 6] as const;

/** A card by kind and day, and where it could go. */
export interface Move {
  readonly from: string;
  readonly to: string;
  readonly day: number;
}

/** A card that is alone on its day, and the nearest other day on which it fits. */
export async function somewhereElse(page: Page): Promise<Move> {
  const { days: laid, wishes } = await weekOf(page);
  const day = days.findLast((each) => (laid?.[each] ?? []).length === 1) ?? 0;
  const [card] = laid?.[day] ?? [];
  if (!card) throw new Error('there is no card alone on its day');
  const free = days.filter((each) => each !== day && (wishes.days[each] ?? 0) >= card.minutes);
  const [other] = free
    .filter((each) => !laid?.[each]?.some(({ category }) => category === card.category))
    .sort((one, next) => Math.abs(one - day) - Math.abs(next - day));
  if (other === undefined) throw new Error('there is no other day');
  return { from: `${card.category} ${String(day)}`, to: `${card.category} ${String(other)}`, day: other };
}

export const cardAt = (key: string): string => `.card[data-key="${key}"]`;
export const dayAt = (day: number): string => `.day[data-day="${String(day)}"]`;

/** Puts a finger on something, moves it to the name of a day, and leaves it there. */
export async function carryByFinger(page: Page, part: string, day: string): Promise<TouchHandle> {
  await scrollTo(page, part);
  const [from, to] = [await middleOf(page, part), await middleOf(page, `${day} h4`)];
  const touch = await page.touchscreen.touchStart(from.x, from.y);
  for (const way of [0.1, 0.5, 1]) await touch.move(from.x + way * (to.x - from.x), from.y + way * (to.y - from.y));
  await settled(page);
  return touch;
}

/** Takes a card up with the mouse, and holds it over a day. */
export async function drag(page: Page, { from, day }: Move): Promise<void> {
  await scrollTo(page, cardAt(from));
  const [start, end] = [await middleOf(page, cardAt(from)), await middleOf(page, dayAt(day))];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(end.x, end.y, { steps: 8 });
  await settled(page);
}
