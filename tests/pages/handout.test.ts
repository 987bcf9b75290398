import type { Page } from 'puppeteer-core';
import { expect, test } from 'vitest';
import { useBrowser } from './web.js';

const web = useBrowser();

/** What a frame would print, as a document of its own. */
interface Printed {
  readonly styles: string;
  readonly body: string;
  readonly font: string;
}

/** Frames do not print from now on: headless browsers are done with it before anybody could look. */
const keepFromPrinting = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const own = Object.getOwnPropertyDescriptor(HTMLIFrameElement.prototype, 'contentWindow');
    Object.defineProperty(HTMLIFrameElement.prototype, 'contentWindow', {
      configurable: true,
      get(this: HTMLIFrameElement): Window | null {
        const view = own?.get?.call(this) as Window | null;
        if (view) view.print = (): void => undefined;
        return view;
      },
    });
  });

/** Shows panels of the planner on a page, and waits until all of them are there. */
const show = (page: Page, shown: Readonly<Record<string, unknown>>): Promise<void> =>
  page.$eval(
    'weekwright-planner',
    async (planner, given) => {
      Object.assign(planner, given);
      await planner.updateComplete;
    },
    shown,
  );

/** Does something with an element of the planner, and waits for what comes of it. */
const press = (page: Page, selector: string): Promise<void> =>
  page.$eval(
    'weekwright-planner',
    async (planner, wanted) => {
      const found = planner.renderRoot.querySelector<HTMLElement>(wanted);
      if (!found) throw new Error(`there is no ${wanted}`);
      found.click();
      await planner.updateComplete;
      await new Promise((resolve) => setTimeout(resolve, 150));
      await planner.updateComplete;
    },
    selector,
  );

async function printed(page: Page): Promise<Printed> {
  await press(page, '.handout .main');
  return page.$eval('weekwright-planner', (planner) => {
    const inner = planner.renderRoot.querySelector<HTMLIFrameElement>('.print-frame')?.contentDocument;
    if (!inner) throw new Error('nothing is printed');
    const rules = inner.adoptedStyleSheets.flatMap(({ cssRules }) => [...cssRules].map(({ cssText }) => cssText));
    return { styles: rules.join('\n'), body: inner.body.innerHTML, font: inner.body.style.fontFamily };
  });
}

/** The sizes of the pages of a PDF, in points. */
async function pagesOf({ styles, body, font }: Printed, from: Page): Promise<string[]> {
  const page = await from.browser().newPage();
  await page.setContent(`<!doctype html><style>${styles}</style><body>${body}</body>`);
  await page.evaluate((family) => {
    document.body.style.fontFamily = family;
  }, font);
  const text = Buffer.from(await page.pdf({ preferCSSPageSize: true })).toString('latin1');
  await page.close();
  return Array.from(text.matchAll(/\/MediaBox\s*\[([^\]]*)\]/g), ([, box = '']) => box.trim());
}

const week = { panels: 'week running strength handout', days: '120,120,120,120,120,240,240', race: '10k 45:00' };
const full = { ...week, hours: 12, phase: 'peak', level: 'elite', event: 'longer', lang: 'de' };

const choose = (page: Page, field: string, index: number): Promise<void> =>
  page.$eval(
    'weekwright-planner',
    async (planner, id, chosen) => {
      const select = planner.renderRoot.querySelector<HTMLSelectElement>(id);
      if (!select) throw new Error(`there is no ${id}`);
      select.selectedIndex = chosen;
      select.dispatchEvent(new Event('change'));
      await planner.updateComplete;
    },
    field,
    index,
  );

test.each([
  ['A4', 0, 594.96, 841.92],
  ['Letter', 1, 612, 792],
] as const)('the fullest week is one page of %s, whole', async (_, paper, width, height) => {
  const { page, complaints, close } = await web.open('/demo/strict.html');
  await keepFromPrinting(page);
  await show(page, full);
  await choose(page, '#handout-paper', paper);
  const sheets = await pagesOf(await printed(page), page);
  expect(sheets).toHaveLength(1);
  const [, , right = 0, top = 0] = (sheets[0] ?? '').split(/\s+/).map(Number);
  expect(Math.abs(right - width)).toBeLessThan(1.5);
  expect(Math.abs(top - height)).toBeLessThan(1.5);
  expect(complaints).toEqual([]);
  await close();
});

test.each([16, 54])('a season of %i weeks is two pages', async (weeks) => {
  const { page, close } = await web.open('/demo/strict.html');
  await keepFromPrinting(page);
  const season = { date: '2027-12-05', weeks };
  await show(page, { panels: 'season handout', season, hours: 4, mostHours: 8, event: 'marathon' });
  await choose(page, '#handout-what', 1);
  expect(await pagesOf(await printed(page), page)).toHaveLength(2);
  await close();
});

test('everything that is handed over keeps to the strict policy, and asks for nothing but our own files', async () => {
  const { page, complaints, violations, close } = await web.open('/demo/strict.html');
  await keepFromPrinting(page);
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await show(page, { ...week, panels: `split record ${week.panels}`, lang: 'de' });
  await page.$eval('weekwright-planner', (planner) => {
    for (const box of planner.renderRoot.querySelectorAll<HTMLDetailsElement>('.handout details, .record details'))
      box.open = true;
  });
  const name = 'weekwright-planner >>> #handout-name';
  await (await page.waitForSelector(name))?.type('Ida\n');
  await printed(page);
  const buttons = await page.$eval(
    'weekwright-planner',
    (planner) => planner.renderRoot.querySelectorAll('.handout .toolbar .act').length,
  );
  for (let index = 2; index <= buttons; index += 1) await press(page, `.handout .toolbar .act:nth-child(${index})`);
  await press(page, '.record input[type="checkbox"]');
  await press(page, '.handout-keep button');
  const kept = (): Promise<string[]> =>
    page.evaluate(async () => (await indexedDB.databases()).flatMap((each) => each.name ?? []));
  expect(await kept()).toEqual(['weekwright']);
  await press(page, '.handout-keep .kept ~ p button:nth-of-type(2)');
  await press(page, '.handout-keep .kept ~ p button:nth-of-type(2)');
  expect(await kept()).toEqual([]);
  const origin = new URL(page.url()).origin;
  expect(asked.filter((url) => !url.startsWith(origin) && !/^(blob|data):/.test(url))).toEqual([]);
  expect(complaints).toEqual([]);
  expect(await violations()).toEqual([]);
  await close();
});
