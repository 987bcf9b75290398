import { describe, expect, test } from 'vitest';
import { planOf, typeHours } from './driving.js';
import { goTo, openByKeys } from './concrete-driving.js';
import { settled } from './sheet-driving.js';
import { useBrowser, type OpenPage } from './web.js';

const web = useBrowser();
const path = '/demo/intake.html';
type Page = OpenPage['page'];

/** Presses a button of the page. */
async function press(page: Page, text: string): Promise<void> {
  const [button] = await page.$$(`::-p-xpath(//form//button[normalize-space()="${text}"])`);
  if (!button) throw new Error(`there is no button "${text}"`);
  await button.click();
  await settled(page);
}

const sent = (page: Page) =>
  page.$eval('.sent', (section) => ({
    isShown: section.checkVisibility(),
    runner: section.querySelector('.runner')?.textContent ?? '',
    text: section.querySelector('pre')?.textContent ?? '',
    hasFocus: section.contains(document.activeElement),
  }));

describe(path, () => {
  test('shows the plan that a runner sends, as it is on show, and the focus is there', async () => {
    const { page, complaints, requests, close } = await web.open(path);
    expect((await sent(page)).isShown).toBe(false);
    await typeHours(page, '6');
    const before = requests.length;
    await press(page, 'Send to the clinic');
    const { isShown, runner, text, hasFocus } = await sent(page);
    expect([isShown, runner, hasFocus]).toEqual([true, 'Wren Aldersey', true]);
    expect(JSON.parse(text)).toEqual(await planOf(page));
    expect(JSON.parse(text)).toMatchObject({ format: 'weekwright-plan', inputs: { hours: 6 } });
    expect([requests.length, complaints]).toEqual([before, []]);
    await close();
  });

  test('begins again with its own week, and shows nothing as sent', async () => {
    const { page, close } = await web.open(path);
    const before = await planOf(page);
    await typeHours(page, '6');
    await press(page, 'Send to the clinic');
    await press(page, 'Begin again');
    expect(await planOf(page)).toEqual(before);
    expect((await sent(page)).isShown).toBe(false);
    await close();
  });

  test('does not send a week that is half typed: the focus goes to what is wrong', async () => {
    const { page, close } = await web.open(path);
    await typeHours(page, 'soon');
    await press(page, 'Send to the clinic');
    expect((await sent(page)).isShown).toBe(false);
    const focused = await page.$eval('weekwright-planner', ({ shadowRoot }) => shadowRoot?.activeElement?.id);
    expect(focused).toBe('hours');
    await close();
  });

  test('does not send anything while answers leave no plan', async () => {
    const { page, close } = await web.open(path);
    await openByKeys(page, '.checks-start');
    await goTo(page, '.answers input');
    await page.keyboard.press('Space');
    await settled(page);
    expect(await planOf(page)).toBe(null);
    await press(page, 'Send to the clinic');
    const isHeld = await page.$eval('weekwright-planner', ({ validity }) => validity.valueMissing);
    expect([isHeld, (await sent(page)).isShown]).toEqual([true, false]);
    await close();
  });

  test('has a label that leads into the planner', async () => {
    const { page, close } = await web.open(path);
    await page.click('label[for="plan"]');
    const focused = await page.$eval('weekwright-planner', ({ shadowRoot }) => shadowRoot?.activeElement?.tagName);
    expect(focused).toMatch(/^(INPUT|BUTTON|SELECT)$/);
    const name = await page.$eval('weekwright-planner', ({ shadowRoot }) =>
      shadowRoot?.querySelector('[part="planner"]')?.getAttribute('aria-label'),
    );
    expect(name).toBe('Your training week');
    await close();
  });

  test.each(['light', 'dark'] as const)('axe finds nothing once something is sent, %s', async (scheme) => {
    const { page, axe, close } = await web.open(path, { width: 360, scheme });
    await press(page, 'Send to the clinic');
    expect(await axe()).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    await close();
  });

  test('is as it was when a browser comes back to it', async () => {
    const { page, close } = await web.open(path);
    await typeHours(page, '6');
    await press(page, 'Send to the clinic');
    await page.goto(new URL('/demo/index.html', page.url()).href);
    await page.goBack({ waitUntil: 'networkidle0' });
    await page.waitForFunction(() => document.querySelector('weekwright-planner')?.plan?.inputs.hours === 6);
    await close();
  });
});
