import type { ElementHandle, Page } from 'puppeteer-core';

/** Something inside the first planner of a page. */
export async function inPlanner(page: Page, selector: string): Promise<ElementHandle> {
  const found = await page.$(`weekwright-planner >>> ${selector}`);
  if (!found) throw new Error(`there is no ${selector} in the planner`);
  return found;
}

async function focus(page: Page, selector: string): Promise<void> {
  const control = await inPlanner(page, selector);
  await control.evaluate((element) => {
    if (element instanceof HTMLElement) element.focus();
  });
}

async function press(page: Page, ...keys: readonly ('ArrowRight' | 'ArrowLeft' | 'ArrowDown' | 'End' | 'Enter')[]) {
  for (const key of keys) await page.keyboard.press(key);
}

/** Moves every slider, opens every list, steps and types: all that a person does with the inputs. */
export async function driveInputs(page: Page): Promise<void> {
  for (const field of ['hours', 'phase', 'level', 'strengthCap']) {
    await focus(page, `input[type="range"][aria-labelledby="${field}-label"]`);
    await press(page, 'ArrowRight', 'ArrowRight', 'ArrowLeft', 'End', 'ArrowLeft');
  }
  await focus(page, 'select#event');
  await press(page, 'ArrowDown');
  await focus(page, '.week select');
  await press(page, 'ArrowDown');
  await focus(page, '.step');
  await press(page, 'Enter');
  await typeHours(page, '8');
}

/** Types over the hours and leaves the field by Enter. */
export async function typeHours(page: Page, text: string): Promise<void> {
  await focus(page, '#hours');
  await page.keyboard.down('Control');
  await page.keyboard.press('a');
  await page.keyboard.up('Control');
  await page.keyboard.type(text);
  await press(page, 'Enter');
  await settled(page);
}

/** What stands under the hours. */
export async function hoursNote(page: Page): Promise<string> {
  const note = await inPlanner(page, '#hours-hint');
  return note.evaluate((element) => element.textContent.trim());
}

/** Until the first planner shows what it was last told. */
async function settled(page: Page): Promise<void> {
  await page.$eval('weekwright-planner', (planner) => planner.updateComplete);
}

/** Asks why the strength is what it is, and waits for the answer. */
export async function askWhy(page: Page): Promise<string> {
  await focus(page, '.week .planned [data-quantity="strength_rounded"]');
  await press(page, 'Enter');
  await settled(page);
  const title = await inPlanner(page, '#why-title');
  return title.evaluate((element) => element.textContent.trim());
}

/** The plan of the first planner. */
export function planOf(page: Page) {
  return page.$eval('weekwright-planner', (planner) => planner.plan);
}

/** A week that takes long is solved in a worker of its own, each from this file: README, “Under a content policy”. */
const worker = /\/weekwright-week-worker\.js$/;

/** What was asked for a second time. */
export function askedAgain(requests: readonly string[]): string[] {
  return requests.filter((url, place) => requests.indexOf(url) !== place && !worker.test(url));
}
