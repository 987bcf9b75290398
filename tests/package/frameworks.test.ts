import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createPlanner, planWeek, type Outcome, type Plan } from '../../src/core.js';
import { typeHours } from '../pages/driving.js';
import { startBrowser } from '../tools/browser-page.mjs';
import { buildPage, openPage, writePage } from './framework-pages.js';
import { shownFiles } from './readme-text.js';

const built = [
  ['React', 'react', 'production'],
  ['React in its strict mode for developers', 'react', 'development'],
  ['Vue', 'vue', 'production'],
  ['Svelte', 'svelte', 'production'],
] as const;

const pages = [
  ['a tag and a script', 'html/index.html'],
  ...built.map(([name, framework, mode]) => [name, `${framework}/built-${mode}/index.html`] as const),
] as const;

let web: Awaited<ReturnType<typeof startBrowser>>;
let said: readonly (readonly [string, string])[];
beforeAll(async () => {
  for (const framework of ['html', 'react', 'vue', 'svelte']) writePage(framework);
  web = await startBrowser();
  said = await Promise.all(
    built.map(async ([name, framework, mode]) => [name, await buildPage(framework, mode)] as const),
  );
}, 300_000);
afterAll(() => web.close());

const strengthIn = (plan: Outcome<Plan>): number => (plan.ok ? plan.value.rounded.strength : NaN);

/** Minutes of strength in a week of so many hours, by the built-in method. */
const strengthOf = (hours: number): number => strengthIn(planWeek({ hours }));

/** The same by the method that README.md shows. */
async function harbourStrengthOf(hours: number): Promise<number> {
  const planner = await createPlanner(JSON.parse(shownFiles['harbour.json'] ?? ''));
  return planner.ok ? strengthIn(planner.value.plan({ hours })) : NaN;
}

/** What stands on the page: on the planner, and in the state of the framework. */
const look = (page: Page) =>
  page.evaluate(async () => {
    const planner = document.querySelector('weekwright-planner');
    await planner?.updateComplete;
    const inside = <Found extends Element>(selector: string) => planner?.shadowRoot?.querySelector<Found>(selector);
    return {
      hours: inside<HTMLInputElement>('#hours')?.value,
      answer: inside('[part="answer"]')?.textContent.trim(),
      method: planner?.plan?.method?.id,
      heard: document.querySelector('p')?.textContent.replace('Minutes of strength so far:', '').trim(),
    };
  });

const press = (page: Page, name: string) => page.locator(`::-p-aria([name="${name}"][role="button"])`).click();
const answering = (strength: number): unknown => expect.stringContaining(`${strength} minutes of strength`);

test('vite has no complaint about a page for visitors', () => {
  expect(said.filter(([name, text]) => !name.includes('developers') && text !== '')).toEqual([]);
});

describe.each(pages)('a page with %s', (_, path) => {
  /** Drives the page; nothing that happens on it may make the console complain. */
  async function drive(steps: (page: Page) => Promise<void>): Promise<void> {
    const { page, complaints } = await openPage(web, path);
    const first = { hours: '7.5', answer: answering(strengthOf(7.5)), heard: '' };
    await expect.poll(() => look(page)).toMatchObject(first);
    await steps(page);
    expect(complaints).toEqual([]);
    await page.close();
  }

  test('shows the hours of its state, and hears nothing when a script changes them', () =>
    drive(async (page) => {
      await press(page, 'Five hours');
      await expect.poll(() => look(page)).toMatchObject({ hours: '5', answer: answering(strengthOf(5)), heard: '' });
    }));

  test('hears once what a person changes, and its state follows', () =>
    drive(async (page) => {
      await typeHours(page, '6');
      await expect.poll(() => look(page)).toMatchObject({ hours: '6', heard: String(strengthOf(6)) });
      await press(page, 'Five hours');
      await expect.poll(() => look(page)).toMatchObject({ hours: '5', heard: String(strengthOf(6)) });
      await typeHours(page, '8');
      await expect.poll(async () => (await look(page)).heard).toBe(`${strengthOf(6)}, ${strengthOf(8)}`);
    }));

  test('hands over a method as it is, and takes the planner away and back', () =>
    drive(async (page) => {
      const byHarbour = { method: 'harbour-group', hours: '7.5', answer: answering(await harbourStrengthOf(7.5)) };
      await press(page, 'Harbour group');
      await expect.poll(() => look(page)).toMatchObject({ ...byHarbour, heard: '' });
      await press(page, 'Away or back');
      await expect.poll(() => page.$('weekwright-planner')).toBeNull();
      await press(page, 'Away or back');
      await expect.poll(() => look(page)).toMatchObject({ ...byHarbour, heard: '' });
      await typeHours(page, '6');
      await expect.poll(async () => (await look(page)).heard).toBe(String(await harbourStrengthOf(6)));
    }));
});
