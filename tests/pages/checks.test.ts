import { describe, expect, test } from 'vitest';
import { textOf } from './board-driving.js';
import {
  foreign,
  goTo,
  notOfTheTag,
  openByKeys,
  panelOf,
  showPanels,
  typeInField,
  widthOf,
} from './concrete-driving.js';
import { planOf } from './driving.js';
import { appears, copiedLink, settled, sheetOf } from './sheet-driving.js';
import { useBrowser } from './web.js';

const web = useBrowser();
const path = '/demo/consultation.html';
type Page = Awaited<ReturnType<typeof panelOf>>;

/** How many parts of the planner there are. */
const countOf = (page: Page, selector: string): Promise<number> =>
  page.$eval(
    'weekwright-planner',
    ({ shadowRoot }, wanted) => shadowRoot?.querySelectorAll(wanted).length ?? 0,
    selector,
  );

/** Opens the questions before the start, and answers the first: symptoms. */
async function tellSymptoms(page: Page): Promise<void> {
  await openByKeys(page, '.checks-start');
  await goTo(page, '.answers input');
  await page.keyboard.press('Space');
  await settled(page);
}

describe(`checks of ${path}`, () => {
  test('come with the page, on the days of the board, without a complaint', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'checks');
    await appears(page, '.board .days[data-state="laid"] .card');
    await settled(page);
    const plan = await planOf(page);
    expect(plan?.load?.days).toHaveLength(7);
    const known = plan?.checks.filter(({ level }) => level !== null) ?? [];
    expect(await countOf(page, '.check')).toBe(known.length);
    // Base at five hours has the shares of the season: 45 % of running minutes are hard, by common practice.
    expect(plan?.checks.find(({ id }) => id === 'hard-minutes')).toMatchObject({ level: 'look' });
    expect(await textOf(page, '.checks .lead')).toMatch(/^Worth a look: .*In line: \d+ of \d+ checks\.$/);
    expect(foreign(opened)).toEqual([]);
    expect(opened.requests.filter((url) => /\/weekwright-checks-[\w-]{6}\.js$/.test(url))).toHaveLength(1);
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });

  test('stop everything by keys alone, and bring it back, with nothing sent or stored', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'checks');
    await sheetOf(opened);
    const link = await copiedLink(page);
    const before = opened.requests.length;
    const stored = (): Promise<unknown> =>
      page.evaluate(async () => [
        ...[localStorage.length, sessionStorage.length, document.cookie, location.hash, history.length],
        (await indexedDB.databases()).length,
      ]);
    const rest = await stored();
    await tellSymptoms(page);
    expect(await planOf(page)).toBeNull();
    expect(await textOf(page, '.advice')).toMatch(/^Do not train now\./);
    expect(await countOf(page, '.split, .board, .sheet, .strength, .basis-panel, .check')).toBe(0);
    expect(await countOf(page, '.cautions')).toBe(1);
    await page.keyboard.press('Space');
    await settled(page);
    expect((await planOf(page))?.checks.length).toBeGreaterThan(0);
    await appears(page, '.sheet table, .sheet [role="grid"]');
    expect(await copiedLink(page)).toBe(link);
    expect([await stored(), notOfTheTag(opened, before)]).toEqual([rest, []]);
    await opened.close();
  });

  test('are told by keys: age and longest run, and a sheet has them as rows', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'checks');
    await sheetOf(opened);
    await typeInField(page, 'checks-age', '67');
    await typeInField(page, 'checks-run', '30');
    expect(await countOf(page, '.check[data-check="balance-days"]')).toBe(1);
    expect(await countOf(page, '.check[data-check="longest-run"]')).toBe(1);
    expect(await countOf(page, '[data-row="check:longest-run"]')).toBeGreaterThan(0);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });

  test('open every box, and never have to be scrolled sideways at 320 pixels', async () => {
    const opened = await web.open(path, { width: 320 });
    const page = await panelOf(opened, 'checks');
    expect(await widthOf(page)).toBeLessThanOrEqual(320);
    for (const box of ['start', 'load', 'own']) await openByKeys(page, `.checks-${box}`);
    expect(await widthOf(page)).toBeLessThanOrEqual(320);
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });
});

test('every state of the checks keeps to the strict policy', async () => {
  const opened = await web.open('/demo/strict.html');
  await showPanels(opened, 'split checks basis');
  const page = await panelOf(opened, 'checks');
  for (const box of ['load', 'own']) await openByKeys(page, `.checks-${box}`);
  await typeInField(page, 'checks-age', 'abc');
  await typeInField(page, 'checks-age', '16');
  await typeInField(page, 'checks-weeks', '300 0 420 240 0 600 360');
  await openByKeys(page, '.check');
  await openByKeys(page, '.basis-panel .box');
  await tellSymptoms(page);
  await page.$eval('weekwright-planner', async (planner) => {
    planner.checks = { age: 'old' };
    planner.lang = 'de';
    await planner.updateComplete;
  });
  await appears(page, '.problems');
  expect(opened.complaints).toEqual([]);
  expect(await opened.violations()).toEqual([]);
  await opened.close();
});
