import { describe, expect, test } from 'vitest';
import { textOf } from './board-driving.js';
import {
  concreteOf,
  focusedIn,
  foreign,
  goTo,
  notOfTheTag,
  openByKeys,
  panelOf,
  showPanels,
  typeInField,
  widthOf,
} from './concrete-driving.js';
import { appears, settled } from './sheet-driving.js';
import { useBrowser } from './web.js';

const web = useBrowser();
const path = '/demo/blog.html';

/** Kilometres in 52:30 for ten, by Riegel PS. American Scientist 1981;69(3):285–290, to the second. */
const riegel = (metres: number): number => Math.round(3150 * (metres / 10_000) ** 1.06);
const clock = (seconds: number): string =>
  [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60]
    .filter((part, index) => index > 0 || part > 0)
    .map((part, index) => (index === 0 ? String(part) : String(part).padStart(2, '0')))
    .join(':');

/** The table of equal times, cell by cell. */
async function timesOf(page: Awaited<ReturnType<typeof panelOf>>): Promise<string[][]> {
  return page.$eval('weekwright-planner', ({ shadowRoot }) =>
    [...(shadowRoot?.querySelectorAll<HTMLTableRowElement>('.equal-times tbody tr') ?? [])].map((row) =>
      [...row.cells].map((cell) => cell.textContent.replace(/\s+/g, ' ').trim()),
    ),
  );
}

describe(`paces and runs of ${path}`, () => {
  test('come with the page, by its race, without a complaint', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'running');
    expect(await textOf(page, '.running .lead')).toMatch(
      /^Slow runs at \d:\d\d to \d:\d\d a kilometre: \d+ to \d+ km this week\.$/,
    );
    expect((await concreteOf(page)).running?.wishes.race).toEqual({ metres: 10_000, seconds: 3150, date: null });
    await appears(page, '.board .days[data-state="laid"] .card');
    await settled(page);
    // Laid on days, every run has one.
    expect(await textOf(page, '.runs .run-head b')).toMatch(/^(?:Mon|Wednes|Fri|Satur|Sun)day: /);
    expect(foreign(opened)).toEqual([]);
    expect(opened.requests.filter((url) => /\/weekwright-running-[\w-]{6}\.js$/.test(url))).toHaveLength(1);
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });

  test('are not fetched by a page that has none', async () => {
    const opened = await web.open('/demo/strict.html');
    await appears(opened.page, '.answer');
    expect(opened.requests.filter((url) => /weekwright-(?:running|strength)-/.test(url))).toEqual([]);
    await opened.close();
  });

  test('are told and read by keys alone: distance, time, boxes', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'running');
    await settled(page);
    const before = opened.requests.length;
    await goTo(page, '#running-distance');
    await page.keyboard.press('ArrowUp');
    await settled(page);
    // From 10 km to 5 km: the race waits for its time.
    expect((await concreteOf(page)).running?.wishes.race).toBeNull();
    await page.keyboard.press('Tab');
    expect(await focusedIn(page)).toBe('running-time');
    await page.keyboard.type('25:00');
    await page.keyboard.press('Tab');
    await settled(page);
    expect((await concreteOf(page)).running?.wishes.race).toMatchObject({ metres: 5000, seconds: 1500 });
    expect(await textOf(page, '.guides [data-category="slow"] .pace')).toMatch(/^\d:\d\d–\d:\d\d a kilometre$/);
    await typeInField(page, 'running-time', 'soon');
    expect(await textOf(page, '#running-time-hint')).toMatch(/a time such as 45:00 or 1:39:17\.$/);
    await openByKeys(page, '.running-heart');
    await page.keyboard.press('Tab');
    expect(await focusedIn(page)).toBe('running-age');
    await page.keyboard.type('40');
    await page.keyboard.press('Enter');
    await settled(page);
    // Tanaka H and others 2001: 208 − 0.7 × 40.
    expect(await textOf(page, '.running-heart')).toContain('Highest heart rate about 180');
    expect(notOfTheTag(opened, before)).toEqual([]);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });

  test('are worth by the law of endurance what its equation says', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'running');
    await openByKeys(page, '.running-equal');
    const law = (await timesOf(page)).map(([, , time]) => time);
    const metres = [1500, 1609.344, 3000, 5000, 10_000, 15_000, 21_097.5, 42_195];
    expect(law).toEqual(metres.map((each) => clock(riegel(each))));
    await opened.close();
  });

  test('open every box, and never have to be scrolled sideways at 320 pixels', async () => {
    const opened = await web.open(path, { width: 320 });
    const page = await panelOf(opened, 'running');
    expect(await widthOf(page)).toBeLessThanOrEqual(320);
    for (const box of ['heart', 'equal', 'basis']) await openByKeys(page, `.running-${box}`);
    await typeInField(page, 'running-age', '40');
    await typeInField(page, 'running-resting', '50');
    await typeInField(page, 'running-weight', '62.5');
    expect(await widthOf(page)).toBeLessThanOrEqual(320);
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });

  test('have nothing that axe finds on the page, dark and light, with everything open', async () => {
    for (const scheme of ['light', 'dark'] as const) {
      const opened = await web.open(path, { scheme });
      const page = await panelOf(opened, 'running');
      for (const box of ['heart', 'equal', 'basis']) await openByKeys(page, `.running-${box}`);
      await typeInField(page, 'running-age', '40');
      expect(await opened.axe(), scheme).toEqual([]);
      await opened.close();
    }
  });
});

test('every state of paces and runs keeps to the strict policy', async () => {
  const opened = await web.open('/demo/strict.html');
  await showPanels(opened, 'split running');
  const page = await panelOf(opened, 'running');
  await goTo(page, '#running-distance');
  for (let press = 0; press < 5; press += 1) await page.keyboard.press('ArrowDown');
  await settled(page);
  await typeInField(page, 'running-time', 'soon');
  await typeInField(page, 'running-time', '58:00');
  expect((await concreteOf(page)).running?.wishes.race).toMatchObject({ metres: 10_000, seconds: 3480 });
  for (const box of ['heart', 'equal', 'basis']) await openByKeys(page, `.running-${box}`);
  await typeInField(page, 'running-age', '16');
  await typeInField(page, 'running-weight', '60');
  // A strip gets the widths of its parts without a style attribute.
  const widths = await page.$eval('weekwright-planner', ({ shadowRoot }) =>
    [...(shadowRoot?.querySelectorAll('.run-strip span') ?? [])].map((part) => part.getBoundingClientRect().width),
  );
  expect(Math.min(...widths)).toBeGreaterThan(0);
  expect(new Set(widths.map(Math.round)).size).toBeGreaterThan(1);
  await page.$eval('weekwright-planner', async (planner) => {
    planner.race = 'fast';
    planner.lang = 'de';
    await planner.updateComplete;
  });
  await appears(page, '.problems');
  expect(opened.complaints).toEqual([]);
  expect(await opened.violations()).toEqual([]);
  await opened.close();
});
