import type { CDPSession, Page } from 'puppeteer-core';
import { describe, expect, test } from 'vitest';
import { askedAgain, inPlanner, planOf } from './driving.js';
import {
  appears,
  copiedLink,
  gridText,
  pressOn,
  pressTool,
  putOver,
  settled,
  sheetOf,
  typeInto,
} from './sheet-driving.js';
import { useBrowser } from './web.js';

const web = useBrowser();
const part = (name: string): RegExp => new RegExp(`/weekwright-${name}-[\\w-]+\\.js$`);
const parts = { sheet: part('sheet'), questions: part('question-boxes'), parser: part('compile'), link: part('link') };
const count = (requests: readonly string[], name: RegExp): number => requests.filter((url) => name.test(url)).length;

/** Asks all three questions. */
async function askAll(page: Page): Promise<void> {
  for (const [place, answer] of ['#sweep-reading', '#back-wanted', '.influence'].entries()) {
    await pressOn(page, `.question:nth-of-type(${place + 1}) > summary`, 'Enter');
    await appears(page, answer);
  }
  await settled(page);
}

/** All that a person does with a sheet. */
async function driveSheet(page: Page): Promise<void> {
  await pressTool(page, 'Add a scenario');
  await pressOn(page, '.inputs-table td:last-child input[type="range"]', 'ArrowRight', 'ArrowRight');
  await putOver(page, '.grid td[data-row="strength_minutes"][data-column="b"]', 'weekly_minutes / 5');
  await putOver(page, '.grid td[data-row="tempo_share"][data-column="b"]', '0.2');
  await pressOn(page, '.grid td[data-row="strength_minutes"][data-column="b"]', 'Enter');
  await pressOn(page, '#formula-here', 'Escape');
  await askAll(page);
  await pressOn(page, '.sweep-table summary', 'Enter');
  await pressTool(page, 'Undo');
  await pressTool(page, 'Redo');
}

describe('the parts of a planner', () => {
  test('a page without the sheet never fetches it, nor what it needs', async () => {
    const { page, requests, close } = await web.open('/demo/blog.html');
    await pressOn(page, 'input[type="range"]', 'ArrowRight');
    for (const name of [parts.sheet, parts.questions, parts.link]) expect(count(requests, name)).toBe(0);
    await close();
  });

  test('the sheet comes after the week, once; its questions and its link when they are wanted', async () => {
    const opened = await web.open('/demo/consultation.html');
    const page = await sheetOf(opened);
    const { requests, complaints, violations } = opened;
    const { origin } = new URL(page.url());
    expect(count(requests, parts.sheet)).toBe(1);
    const order = requests.map((url) => (parts.sheet.test(url) ? 'sheet' : url.replace(/.*\//, '')));
    expect(order.indexOf('weekwright.js')).toBeLessThan(order.indexOf('sheet'));
    for (const name of [parts.questions, parts.parser, parts.link]) expect(count(requests, name)).toBe(0);

    await driveSheet(page);
    await copiedLink(page);
    for (const name of Object.values(parts)) expect(count(requests, name), String(name)).toBe(1);
    // Nobody else is asked for anything.
    for (const url of requests) expect(url.startsWith(origin) || url.startsWith('data:'), url).toBe(true);
    expect(askedAgain(requests)).toEqual([]);
    expect(complaints).toEqual([]);
    expect(await violations()).toEqual([]);
    await opened.close();
  });

  test('the week is there before the sheet', async () => {
    const { page, close } = await web.open('/demo/blog.html');
    const hasWeek = await page.$eval('weekwright-planner', async (planner) => {
      planner.panels = 'split sheet';
      await Promise.resolve();
      const root = planner.shadowRoot;
      return { week: root?.querySelector('.week') !== null, grid: root?.querySelector('.grid') !== null };
    });
    expect(hasWeek).toEqual({ week: true, grid: false });
    await sheetOf({ page });
    await close();
  });

  test('a line that is cut before the sheet comes leaves a week that can be driven', async () => {
    const { page, close } = await web.open('/demo/blog.html');
    await page.setOfflineMode(true);
    await page.$eval('weekwright-planner', (planner) => {
      planner.panels = 'split sheet';
    });
    await settled(page);
    await pressOn(page, 'input[type="range"]', 'ArrowRight');
    expect(await planOf(page)).toMatchObject({ inputs: { hours: 4.25 } });
    expect(await page.$('weekwright-planner >>> .grid')).toBe(null);
    await page.setOfflineMode(false);
    await close();
  });
});

test('every state of the sheet keeps to the strict policy', async () => {
  const opened = await web.open('/demo/strict.html');
  await opened.page.$eval('weekwright-planner', (planner) => {
    planner.setAttribute('panels', 'split sheet');
  });
  const page = await sheetOf(opened);
  await driveSheet(page);
  await putOver(page, '.grid td[data-row="strength_minutes"][data-column="a"]', '500');
  await inPlanner(page, '.failures');
  await pressOn(page, '.grid td[data-row="strength_minutes"][data-column="a"]', 'Enter');
  await typeInto(page, '#formula-here', '2 * strenght_cap');
  await appears(page, '.formula-note mark');
  await copiedLink(page);
  await page.evaluate(() => {
    location.hash = 'weekwright=2.abc';
  });
  await appears(page, '.message .wrong');
  await page.$eval('weekwright-planner', async (planner) => {
    planner.lang = 'de';
    await planner.updateComplete;
  });
  expect(opened.complaints).toEqual([]);
  expect(await opened.violations()).toEqual([]);
  await opened.close();
});

test('what was done on a sheet is kept nowhere', async () => {
  const opened = await web.open('/demo/consultation.html');
  const page = await sheetOf(opened);
  const before = await gridText(page);
  await driveSheet(page);
  const kept = await page.evaluate(() => [localStorage.length, sessionStorage.length, document.cookie, location.hash]);
  expect(kept).toEqual([0, 0, '', '']);
  await page.reload({ waitUntil: 'networkidle0' });
  await sheetOf({ page });
  expect(await gridText(page)).toEqual(before);
  await opened.close();
});

/** What a page holds once everything that can go has gone. */
async function held(session: CDPSession): Promise<{ bytes: number; nodes: number; listeners: number }> {
  await session.send('HeapProfiler.collectGarbage');
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  const { nodes, jsEventListeners } = await session.send('Memory.getDOMCounters');
  return { bytes: usedSize, nodes, listeners: jsEventListeners };
}

test('planners with a sheet that come and go leave nothing behind', async () => {
  const opened = await web.open('/demo/consultation.html');
  const page = await sheetOf(opened);
  const session = await page.createCDPSession();
  await session.send('HeapProfiler.enable');
  const comeAndGo = (times: number): Promise<void> =>
    page.evaluate(async (count) => {
      for (let time = 0; time < count; time += 1) {
        const planner = document.createElement('weekwright-planner');
        planner.panels = 'split sheet';
        planner.hours = 0.5 + (time % 79) / 4;
        document.body.append(planner);
        await planner.updateComplete;
        while (!planner.shadowRoot?.querySelector('.grid')) {
          await new Promise((resolve) => setTimeout(resolve, 5));
          await planner.updateComplete;
        }
        const add = planner.shadowRoot.querySelector<HTMLElement>('.toolbar button');
        add?.click();
        await planner.updateComplete;
        planner.shadowRoot.querySelector<HTMLElement>('.grid td')?.click();
        await planner.updateComplete;
        planner.remove();
      }
    }, times);

  await comeAndGo(60);
  const before = await held(session);
  await comeAndGo(50);
  const after = await held(session);
  // A planner that is kept would bring some thousand nodes and a hundred listeners, fifty times.
  expect(after.nodes - before.nodes).toBeLessThan(2000);
  expect(after.listeners - before.listeners).toBeLessThan(100);
  expect(after.bytes / before.bytes).toBeLessThan(1.15);
  await opened.close();
}, 120_000);
