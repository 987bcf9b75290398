import { describe, expect, test } from 'vitest';
import { textOf } from './board-driving.js';
import { inPlanner, planOf } from './driving.js';
import {
  openSeasonBox,
  pressPicture,
  seasonBoxes,
  seasonOf,
  seasonPageOf,
  typeInSeason,
  weeksUpTo,
} from './season-driving.js';
import { appears, settled, copiedLink, pressOn, sheetOf } from './sheet-driving.js';
import { useBrowser } from './web.js';

const web = useBrowser();
const path = '/demo/club.html';

describe(`the season of ${path}`, () => {
  test('comes with the page: the way to its event, without a complaint', async () => {
    const opened = await web.open(path);
    const page = await seasonPageOf(opened);
    const { origin } = new URL(page.url());
    // 2 May 2027 is a Sunday.
    expect(await textOf(page, '.season-panel .lead')).toMatch(
      /^Half marathon on Sunday, May 2, 2027: 16 weeks, from 4 hours a week to 6 hours in week \d+, the last 2 weeks a taper\.$/,
    );
    expect((await seasonOf(page)).wishes.start).toBe('2027-01-11');
    for (const url of opened.requests) expect(url.startsWith(`${origin}/`) || url.startsWith('data:'), url).toBe(true);
    expect(opened.requests.filter((url) => /\/weekwright-season-[\w-]{6}\.js$/.test(url))).toHaveLength(1);
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });

  test('is not fetched by a page that has none', async () => {
    const opened = await web.open('/demo/blog.html');
    await appears(opened.page, '.board .card');
    expect(opened.requests.filter((url) => /weekwright-season-[\w-]{6}\.js$/.test(url))).toEqual([]);
    await opened.close();
  });

  test('is read, changed and put on the planner by keys alone', async () => {
    const opened = await web.open(path);
    const page = await seasonPageOf(opened);
    await pressOn(page, '#season-reading', 'ArrowRight', 'ArrowRight', 'ArrowRight');
    expect(await textOf(page, '#season-week-title')).toMatch(/^Week 4 of 16, Feb 1 – 7, 2027$/);
    await pressOn(page, '.season-week > button.act', 'Enter');
    expect((await planOf(page))?.inputs.hours).toBe((await seasonOf(page)).weeks[3]?.hours);
    await typeInSeason(page, 'season-weeks', '12');
    expect(await weeksUpTo(page)).toBe(12);
    await typeInSeason(page, 'season-weeks', '0');
    expect(await textOf(page, '#season-weeks-hint')).toMatch(/0; allowed: 1 to 104\.$/);
    expect(await weeksUpTo(page)).toBe(12);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });

  test('is read by a press on its picture, with the mouse and with a finger', async () => {
    const opened = await web.open(path);
    const page = await seasonPageOf(opened);
    // The middle of the ninth of eighteen weeks.
    await pressPicture(page, 8.5 / 18);
    expect(await textOf(page, '#season-week-title')).toMatch(/^Week 9 of 16/);
    await opened.page.setViewport({ width: 360, height: 800, hasTouch: true });
    // A screen that is touched from now on is loaded anew, and stands still once everything is there.
    await opened.page.reload({ waitUntil: 'networkidle0' });
    await appears(page, '.season-chart .sweep-plot');
    await settled(page);
    const plot = await inPlanner(page, '.season-chart .sweep-plot');
    await plot.evaluate((element) => {
      if (element instanceof Element) element.scrollIntoView({ block: 'center', behavior: 'instant' });
    });
    const box = await plot.boundingBox();
    if (!box) throw new Error('the picture cannot be seen');
    await page.touchscreen.tap(box.x + (2.5 / 18) * box.width, box.y + box.height / 2);
    await appears(page, '#season-reading[aria-valuetext^="Jan 25"]');
    expect(await textOf(page, '#season-week-title')).toMatch(/^Week 3 of 16/);
    await opened.close();
  });

  test('opens every box, and never has to be scrolled sideways at 320 pixels', async () => {
    const opened = await web.open(path, { width: 320 });
    const page = await seasonPageOf(opened);
    const widest = (): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth);
    expect(await widest()).toBeLessThanOrEqual(320);
    for (const box of seasonBoxes) {
      await openSeasonBox(page, box);
      expect(await widest(), box).toBeLessThanOrEqual(320);
    }
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });

  test('a holiday is set by hand, and what follows is laid again', async () => {
    const opened = await web.open(path);
    const page = await seasonPageOf(opened);
    await pressOn(page, '#season-reading', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight');
    await openSeasonBox(page, 'hand');
    await typeInSeason(page, 'season-week-hours', '0');
    const { weeks } = await seasonOf(page);
    expect([weeks[4]?.hours, weeks[5]?.why.reason]).toEqual([0, 'way-back']);
    await pressOn(page, '.season-hand button.act', 'Enter');
    expect((await seasonOf(page)).wishes.byHand).toEqual([]);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });
});

test('a link carries the season: its weeks, and what was set by hand', async () => {
  const opened = await web.open('/demo/consultation.html');
  await opened.page.$eval('weekwright-planner', (planner) => {
    planner.setAttribute('panels', 'split season sheet');
    planner.setAttribute('event-date', '2027-05-02');
  });
  const page = await seasonPageOf(opened);
  await sheetOf(opened);
  await typeInSeason(page, 'season-weeks', '12');
  await openSeasonBox(page, 'hand');
  await typeInSeason(page, 'season-week-hours', '2');
  const season = await seasonOf(page);
  expect(season.wishes.byHand).toHaveLength(1);
  const { hash } = new URL(await copiedLink(page));
  const other = await web.open(`/demo/consultation.html${hash}`);
  await other.page.$eval('weekwright-planner', (planner) => {
    planner.setAttribute('panels', 'split season sheet');
  });
  await sheetOf(other);
  await seasonPageOf(other);
  expect(await seasonOf(other.page)).toEqual(season);
  expect(other.complaints).toEqual([]);
  await other.close();
  await opened.close();
});

test('every state of the season keeps to the strict policy', async () => {
  const opened = await web.open('/demo/strict.html');
  await opened.page.$eval('weekwright-planner', (planner) => {
    planner.setAttribute('event-date', '2027-05-02');
    planner.setAttribute('panels', 'split season sheet');
  });
  const page = await seasonPageOf(opened);
  await sheetOf(opened);
  await openSeasonBox(page, 'hand');
  for (const box of seasonBoxes.slice(1)) await openSeasonBox(page, box);
  await typeInSeason(page, 'season-weeks', 'abc');
  await typeInSeason(page, 'season-weeks', '6');
  await typeInSeason(page, 'season-week-hours', '9');
  await pressPicture(page, 0.4);
  await pressOn(page, '.season-notes button', 'Enter');
  await pressOn(page, '.season-later button.act', 'Enter');
  await pressOn(page, '.season-week > button.act', 'Enter');
  expect(opened.complaints).toEqual([]);
  expect(await opened.violations()).toEqual([]);
  await opened.close();
});
