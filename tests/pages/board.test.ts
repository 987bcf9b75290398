import type { Page } from 'puppeteer-core';
import { describe, expect, test } from 'vitest';
import {
  type Move,
  askMuch,
  boardOf,
  cardAt,
  carryByFinger,
  dayAt,
  days,
  drag,
  focusOf,
  somewhereElse,
  textOf,
  typeMinutes,
  weekArrives,
  weekOf,
} from './board-driving.js';
import { inPlanner } from './driving.js';
import { appears, copiedLink, pressOn, pressTool, settled, sheetOf } from './sheet-driving.js';
import { useBrowser } from './web.js';

const web = useBrowser();
const pages = ['/demo/blog.html', '/demo/consultation.html'] as const;

/** That a card lies where it was put, and stays there. */
async function expectMoved(page: Page, { to, day }: Move): Promise<void> {
  await weekArrives(page);
  const { wishes, state } = await weekOf(page);
  expect(wishes.pinned.map((pin) => [`${pin.category} ${String(pin.day)}`, pin.day])).toEqual([[to, day]]);
  expect(state).toBe('laid');
  await appears(page, `${cardAt(to)}[data-state="pinned"]`);
}

describe.each(pages)('the board of %s', (path) => {
  test('comes with the page: the week is laid, without a complaint', async () => {
    const opened = await web.open(path);
    const page = await boardOf(opened);
    const { origin } = new URL(page.url());
    const week = await weekOf(page);
    const cards = await page.$$('weekwright-planner >>> .card');
    expect(cards).toHaveLength((week.days ?? []).flat().length);
    expect(await textOf(page, '.board .verdict')).toContain(
      `This week costs ${String(week.cost)}; no week costs less.`,
    );
    for (const url of opened.requests) expect(url.startsWith(`${origin}/`) || url.startsWith('data:'), url).toBe(true);
    expect(opened.requests.filter((url) => /\/weekwright-board-[\w-]{6}\.js$/.test(url))).toHaveLength(1);
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });

  test('a session is moved by Tab and keys alone, from the top of the page', async () => {
    const opened = await web.open(path);
    const page = await boardOf(opened);
    const move = await somewhereElse(page);
    for (let press = 0; press < 200 && (await focusOf(page)) !== move.from; press += 1)
      await page.keyboard.press('Tab');
    expect(await focusOf(page)).toBe(move.from);
    await page.keyboard.press('Space');
    await settled(page);
    expect(await textOf(page, '.board [role="status"]')).toMatch(/^Picked up: /);
    const steps = move.day - Number(move.from.at(-1));
    for (let step = 0; step < Math.abs(steps); step += 1) {
      await page.keyboard.press(steps > 0 ? 'ArrowRight' : 'ArrowLeft');
      await settled(page);
    }
    expect(await textOf(page, `${dayAt(move.day)} .carried`)).toMatch(/\d|…/);
    await page.keyboard.press('Space');
    await expectMoved(page, move);
    expect(await focusOf(page)).toBe(move.to);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });

  test('a session is dragged with the mouse', async () => {
    const opened = await web.open(path);
    const page = await boardOf(opened);
    const move = await somewhereElse(page);
    await drag(page, move);
    expect(await textOf(page, `${dayAt(move.day)}[data-over="true"] .carried`)).toMatch(/\d|…/);
    await page.mouse.up();
    await expectMoved(page, move);
    await inPlanner(page, '#board-tools[hidden]');
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });

  test('a session is dragged by its grip with a finger on a phone; elsewhere the finger scrolls', async () => {
    const opened = await web.open(path, { width: 360 });
    await opened.page.setViewport({ width: 360, height: 1400, hasTouch: true });
    const page = await boardOf(opened);
    const move = await somewhereElse(page);
    const over = (): Promise<number> =>
      page.$$('weekwright-planner >>> .day[data-over="true"]').then(({ length }) => length);
    const byGrip = await carryByFinger(page, `${cardAt(move.from)} .grip`, dayAt(move.day));
    expect(await over()).toBe(1);
    await byGrip.end();
    await expectMoved(page, move);
    const elsewhere = await carryByFinger(page, `${cardAt(move.to)} strong`, dayAt(Number(move.from.at(-1))));
    expect(await over()).toBe(0);
    await elsewhere.end();
    await expectMoved(page, move);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });

  test('never has to be scrolled sideways, whatever is open, at 320 pixels', async () => {
    const opened = await web.open(path, { width: 320 });
    const page = await boardOf(opened);
    const move = await somewhereElse(page);
    const widest = (): Promise<number> => page.evaluate(() => document.documentElement.scrollWidth);
    expect(await widest()).toBeLessThanOrEqual(320);
    await pressOn(page, cardAt(move.from), 'Enter');
    await inPlanner(page, '#board-tools:not([hidden])');
    expect(await widest(), 'tools of a card').toBeLessThanOrEqual(320);
    await pressOn(page, '#day-6-name', 'Enter');
    await pressOn(page, '#board-tools .acts button:nth-child(2)', 'Enter');
    await appears(page, '.proposal');
    expect(await widest(), 'a proposal').toBeLessThanOrEqual(320);
    await pressOn(page, '.proposal .acts button', 'Enter');
    for (const day of days) await typeMinutes(page, day, String(5 * day));
    await appears(page, '.conflict');
    expect(await widest(), 'a conflict').toBeLessThanOrEqual(320);
    await opened.close();
  });

  test('a week that takes long is solved in a worker from the page itself', async () => {
    const opened = await web.open(path);
    const page = await boardOf(opened);
    await askMuch(page);
    await weekArrives(page);
    expect((await weekOf(page)).state).toBe('laid');
    const worker = opened.requests.find((url) => /\/weekwright-week-worker\.js$/.test(url));
    expect((await fetch(worker ?? page.url())).headers.get('content-type')).toMatch(/javascript/);
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });
});

test('a link carries the week: days, what stays, and all', async () => {
  const opened = await web.open('/demo/consultation.html');
  const page = await sheetOf(opened);
  await boardOf(opened);
  await typeMinutes(page, 0, '75');
  await pressOn(page, '#day-5-name', 'Enter');
  await pressOn(page, '#board-tools .acts button', 'Enter');
  await weekArrives(page);
  const { wishes, days: laid, cost } = await weekOf(page);
  expect([wishes.days[0], wishes.free]).toEqual([75, [5]]);
  const { hash } = new URL(await copiedLink(page));
  const other = await web.open(`/demo/consultation.html${hash}`);
  await sheetOf(other);
  await boardOf(other);
  await weekArrives(other.page);
  expect(await weekOf(other.page)).toMatchObject({ wishes, days: laid, cost });
  expect(other.complaints).toEqual([]);
  await other.close();
  await opened.close();
});

test('every state of the board keeps to the strict policy, a week that takes long among them', async () => {
  const opened = await web.open('/demo/strict.html');
  await opened.page.$eval('weekwright-planner', (planner) => {
    planner.setAttribute('panels', 'split week sheet');
  });
  const page = await boardOf(opened);
  await sheetOf(opened);
  const move = await somewhereElse(page);
  await drag(page, move);
  await page.mouse.up();
  await expectMoved(page, move);
  await pressTool(page, 'Undo');
  await weekArrives(page);
  await pressOn(page, cardAt(move.from), 'Enter');
  await pressOn(page, '#day-6-name', 'Enter');
  await typeMinutes(page, 0, 'abc');
  for (const day of days) await typeMinutes(page, day, String(5 * day));
  await appears(page, '.conflict button');
  await pressOn(page, '.conflict button', 'Enter');
  await weekArrives(page);
  await askMuch(page);
  await weekArrives(page);
  expect((await weekOf(page)).state).toBe('laid');
  expect(opened.complaints).toEqual([]);
  expect(await opened.violations()).toEqual([]);
  await opened.close();
});
