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
import { planOf } from './driving.js';
import { appears, copiedLink, pressOn, settled, sheetOf } from './sheet-driving.js';
import { useBrowser } from './web.js';

const web = useBrowser();
const path = '/demo/consultation.html';
type Page = Awaited<ReturnType<typeof panelOf>>;

/** The movements of all sessions by name. */
const movementsOf = (page: Page): Promise<string[]> =>
  page.$eval('weekwright-planner', ({ shadowRoot }) =>
    [...(shadowRoot?.querySelectorAll('.exercise > summary b') ?? [])].map(({ textContent }) => textContent.trim()),
  );

/** Opens every movement, and waits for what is in the last one. */
async function openMovements(page: Page): Promise<void> {
  await page.$eval('weekwright-planner', ({ shadowRoot }) => {
    for (const summary of shadowRoot?.querySelectorAll<HTMLElement>('.exercise > summary') ?? []) summary.click();
  });
  await settled(page);
  await appears(page, '.strength-session:last-child li:nth-last-child(2) select');
}

describe(`strength of ${path}`, () => {
  test('comes with the page: a session for each of the plan, without a complaint', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'strength');
    const planned = (await planOf(page))?.sessions.strength ?? [];
    const { strength } = await concreteOf(page);
    expect(planned.length).toBeGreaterThan(0);
    expect(strength?.sessions.map(({ minutes }) => minutes).sort()).toEqual([...planned].sort());
    for (const { seconds, minutes } of strength?.sessions ?? []) expect(seconds).toBeLessThanOrEqual(60 * minutes);
    // Base, for somebody developing: shared/methods/default.json.
    expect(await textOf(page, '.strength .lead')).toMatch(/^General preparation: sessions of .*minutes/);
    expect(foreign(opened)).toEqual([]);
    expect(opened.requests.filter((url) => /\/weekwright-strength-[\w-]{6}\.js$/.test(url))).toHaveLength(1);
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });

  test('is laid on the days of the board', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'strength');
    await appears(page, '.board .days[data-state="laid"] .card');
    await settled(page);
    expect(await textOf(page, '.strength .lead')).toMatch(/ on \w+day/);
    await opened.close();
  });

  test('is set and read by keys alone: equipment, minutes, a movement and its form, a weight', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'strength');
    await settled(page);
    const before = opened.requests.length;
    await goTo(page, '.equipment label:nth-of-type(3) input');
    await page.keyboard.press('Space');
    await settled(page);
    expect((await concreteOf(page)).strength?.wishes.equipment).toEqual(['band', 'dumbbells', 'barbell']);
    await page.keyboard.press('Tab');
    expect(await focusedIn(page)).toBe('strength-minutes');
    await typeInField(page, 'strength-minutes', '20');
    expect(await textOf(page, '.strength .lead')).toMatch(/^General preparation: sessions of 20 minutes/);
    expect(await textOf(page, '.strength-session')).toContain('Left out for want of time: ');
    await pressOn(page, '.strength-minutes button.act', 'Enter');
    expect((await concreteOf(page)).strength?.wishes.minutes).toBeNull();

    await openByKeys(page, '.exercise');
    await page.keyboard.press('Tab');
    const [movement] = await movementsOf(page);
    await page.keyboard.press('ArrowUp');
    await settled(page);
    expect((await movementsOf(page))[0]).not.toBe(movement);

    await openByKeys(page, '.strength-lifted');
    await page.keyboard.press('Tab');
    const field = await focusedIn(page);
    expect(field).toMatch(/-kilograms$/);
    await typeInField(page, field, '30');
    await typeInField(page, field.replace('kilograms', 'repetitions'), '10');
    // Epley 1985: 30 × (1 + 10 / 30); Brzycki 1993: 30 × 36 / 27.
    expect(await textOf(page, '.lifted li')).toContain('Heaviest single 40 kg.');
    expect(notOfTheTag(opened, before)).toEqual([]);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  });

  test('opens everything, and never has to be scrolled sideways at 320 pixels', async () => {
    const opened = await web.open(path, { width: 320 });
    const page = await panelOf(opened, 'strength');
    expect(await widthOf(page)).toBeLessThanOrEqual(320);
    for (const box of ['lifted', 'basis']) await openByKeys(page, `.strength-${box}`);
    await openMovements(page);
    expect(await widthOf(page)).toBeLessThanOrEqual(320);
    expect([opened.complaints, await opened.violations()]).toEqual([[], []]);
    await opened.close();
  });

  test('has nothing that axe finds on the page, dark and light, with everything open', async () => {
    for (const scheme of ['light', 'dark'] as const) {
      const opened = await web.open(path, { scheme });
      const page = await panelOf(opened, 'strength');
      for (const box of ['lifted', 'basis']) await openByKeys(page, `.strength-${box}`);
      await openMovements(page);
      expect(
        (await opened.axe()).filter((line) => /strength|exercise|lifted/.test(line)),
        scheme,
      ).toEqual([]);
      await opened.close();
    }
  });

  test('leaves nothing in the link of the sheet', async () => {
    const opened = await web.open(path);
    const page = await panelOf(opened, 'strength');
    await sheetOf(opened);
    const before = await copiedLink(page);
    await openByKeys(page, '.strength-lifted');
    await typeInField(page, 'strength-age', '38');
    await typeInField(page, 'strength-minutes', '25');
    expect((await concreteOf(page)).strength?.wishes).toMatchObject({ age: 38, minutes: 25 });
    expect(await copiedLink(page)).toBe(before);
    await opened.close();
  });
});

test('every state of strength keeps to the strict policy', async () => {
  const opened = await web.open('/demo/strict.html');
  await showPanels(opened, 'split strength running');
  const page = await panelOf(opened, 'strength');
  await panelOf(opened, 'running');
  await openMovements(page);
  for (const box of ['lifted', 'basis']) await openByKeys(page, `.strength-${box}`);
  await typeInField(page, 'strength-minutes', 'abc');
  await typeInField(page, 'strength-minutes', '20');
  await typeInField(page, 'strength-age', '16');
  await goTo(page, '.equipment input');
  await page.keyboard.press('Space');
  await settled(page);
  await pressOn(page, '.strength-minutes button.act', 'Enter');
  await page.$eval('weekwright-planner', async (planner) => {
    planner.equipment = 'kettle';
    planner.lang = 'de';
    await planner.updateComplete;
  });
  await appears(page, '.problems');
  expect(opened.complaints).toEqual([]);
  expect(await opened.violations()).toEqual([]);
  await opened.close();
});
