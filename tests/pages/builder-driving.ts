import type { Page } from 'puppeteer-core';
import type { OpenPage } from './web.js';

/** Sets a field of the form as a person would leave it. */
export async function choose(page: Page, name: string, value: string | boolean): Promise<void> {
  await page.$eval(
    `#choices [name="${name}"]${typeof value === 'string' && (name === 'output' || name === 'colours') ? `[value="${value}"]` : ''}`,
    (field, to) => {
      if (field instanceof HTMLInputElement && (field.type === 'checkbox' || field.type === 'radio'))
        field.checked = to !== false;
      else Reflect.set(field, 'value', to);
      field.dispatchEvent(new Event('input', { bubbles: true }));
    },
    value,
  );
}

/** Ticks the panels wanted, and no other. */
export async function choosePanels(page: Page, ...names: readonly string[]): Promise<void> {
  await page.$$eval(
    '[name="panel"]',
    (boxes, wanted) => {
      for (const box of boxes as HTMLInputElement[]) box.checked = wanted.includes(box.value);
      boxes[0]?.dispatchEvent(new Event('input', { bubbles: true }));
    },
    names,
  );
}

export const linesOf = (page: Page): Promise<string> =>
  page.$eval('#lines', (lines) => (lines as HTMLTextAreaElement).value);

/** Until the preview is that of what is chosen. */
export async function previewed(page: Page): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, 500));
  await page.waitForFunction(() => document.querySelector<HTMLElement>('#stage')?.style.minBlockSize === '', {
    polling: 50,
  });
}

/** Makes a page of nothing but the lines, as somebody would who pastes them into an empty page. */
export async function paste({ page }: OpenPage, lines: string): Promise<void> {
  const address = new URL('/demo/pasted.html', page.url()).href;
  await page.setRequestInterception(true);
  page.on('request', (request) => {
    if (request.url() === address)
      void request.respond({
        contentType: 'text/html; charset=utf-8',
        body: `<!doctype html><title>x</title>${lines}`,
      });
    else void request.continue();
  });
  await page.goto(address, { waitUntil: 'networkidle0' });
}

/** What a planner shows, and what it is made of. */
export interface Shown {
  readonly attributes: Readonly<Record<string, string>>;
  readonly text: string;
  readonly ground: string;
  readonly scheme: string;
}

/** Reads the planner that a selector finds, in the page or in a frame of it. */
export async function shownBy(page: Page, selector: string): Promise<Shown> {
  const frameHandle = await page.$(selector.replace('weekwright-planner', 'iframe'));
  const place = (await frameHandle?.contentFrame()) ?? page;
  const found = frameHandle ? 'weekwright-planner' : selector;
  await place.waitForFunction(
    (at) => document.querySelector(at)?.shadowRoot?.querySelector('.planner'),
    { polling: 50 },
    found,
  );
  return place.$eval(found, async (planner) => {
    const tag = planner as HTMLElementTagNameMap['weekwright-planner'];
    await tag.updateComplete;
    // A week on days goes on being laid for a moment.
    for (
      let before = '';
      before !== tag.shadowRoot?.textContent;
      await new Promise((resolve) => setTimeout(resolve, 700))
    )
      before = tag.shadowRoot?.textContent ?? '';
    const root = tag.shadowRoot?.querySelector('.planner') ?? tag;
    const names = tag.getAttributeNames().filter((name) => name !== 'style');
    return {
      attributes: Object.fromEntries(names.map((name) => [name, tag.getAttribute(name) ?? ''])),
      text: root.textContent.replaceAll(/\s+/g, ' '),
      ground: getComputedStyle(root).backgroundColor,
      scheme: getComputedStyle(root).colorScheme,
    };
  });
}
