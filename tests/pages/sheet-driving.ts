// The what-if sheet of a page, by hand.
import type { Page } from 'puppeteer-core';
import { inPlanner } from './driving.js';
import type { OpenPage } from './web.js';

type Key = 'Enter' | 'Escape' | 'ArrowRight' | 'Delete';

/** Until something is there in the first planner of a page; the browser's own waiting sees no change in a shadow root. */
export async function appears(page: Page, selector: string): Promise<void> {
  await page.waitForFunction(
    (wanted) => Boolean(document.querySelector('weekwright-planner')?.shadowRoot?.querySelector(wanted)),
    { polling: 50, timeout: 15_000 },
    selector,
  );
}

/** Until the first planner of a page has its sheet. */
export async function sheetOf({ page }: Pick<OpenPage, 'page'>): Promise<Page> {
  await appears(page, '.grid');
  return page;
}

/** Until the first planner shows what it was last told. */
export async function settled(page: Page): Promise<void> {
  await page.$eval('weekwright-planner', (planner) => planner.updateComplete);
}

/** Gives the focus to something of the planner, and presses keys there. */
export async function pressOn(page: Page, selector: string, ...keys: readonly Key[]): Promise<void> {
  const control = await inPlanner(page, selector);
  await control.evaluate((element) => {
    if (element instanceof HTMLElement) element.focus();
  });
  for (const key of keys) await page.keyboard.press(key);
  await settled(page);
}

/** Presses the button of the toolbar with this text. */
export async function pressTool(page: Page, name: string): Promise<void> {
  await page.$eval(
    'weekwright-planner',
    (planner, text) => {
      const buttons = [...(planner.shadowRoot?.querySelectorAll<HTMLElement>('.toolbar button') ?? [])];
      const button = buttons.find(({ textContent }) => textContent.trim() === text);
      if (!button) throw new Error(`there is no button ${text}`);
      button.click();
    },
    name,
  );
  await settled(page);
}

/** Types a value or a formula over a cell, and waits until it is taken. */
export async function putOver(page: Page, cell: string, formula: string): Promise<void> {
  await pressOn(page, cell, 'Enter');
  await appears(page, '.grid .detail');
  await typeInto(page, '#formula-here', formula);
  await page.keyboard.press('Enter');
  await page.waitForFunction(
    () => !document.querySelector('weekwright-planner')?.shadowRoot?.querySelector('.grid .detail'),
    { polling: 50, timeout: 15_000 },
  );
  await settled(page);
}

export async function typeInto(page: Page, selector: string, text: string): Promise<void> {
  const field = await inPlanner(page, selector);
  await field.evaluate((element) => {
    if (element instanceof HTMLInputElement) element.select();
  });
  await field.type(text);
}

/** Everything that the grid of quantities says, row by row. */
export async function gridText(page: Page): Promise<string[]> {
  return page.$eval('weekwright-planner', (planner) =>
    [...(planner.shadowRoot?.querySelectorAll('.grid tr') ?? [])].map(({ textContent }) =>
      textContent.replace(/\s+/g, ' ').trim(),
    ),
  );
}

/** The message under the toolbar; '' where there is none. */
export async function messageOf(page: Page): Promise<string> {
  return page.$eval('weekwright-planner', ({ renderRoot }) =>
    [...renderRoot.querySelectorAll('.message')]
      .map(({ textContent }) => textContent.replace(/\s+/g, ' ').trim())
      .join(' ')
      .trim(),
  );
}

/** Copies the link of the sheet, and gives the text that came onto the clipboard. */
export async function copiedLink(page: Page): Promise<string> {
  await page.evaluate(() => {
    Object.defineProperty(navigator.clipboard, 'write', {
      configurable: true,
      value: async ([item]: readonly ClipboardItem[]) => {
        const blob = await item?.getType('text/plain');
        Object.assign(globalThis, { copiedText: await blob?.text() });
      },
    });
  });
  await pressTool(page, 'Copy link');
  const text = await page.waitForFunction(() => {
    const copied: unknown = Reflect.get(globalThis, 'copiedText');
    return typeof copied === 'string' && copied;
  });
  return String(await text.jsonValue());
}
