import type { Page } from 'puppeteer-core';
import { describe, expect, test } from 'vitest';
import { inPlanner, planOf } from './driving.js';
import {
  appears,
  copiedLink,
  gridText,
  messageOf,
  pressOn,
  pressTool,
  putOver,
  sheetOf,
  typeInto,
} from './sheet-driving.js';
import { useBrowser } from './web.js';

const web = useBrowser();
const path = '/demo/consultation.html';
const refused = 'The link cannot be opened; nothing was changed:';

/** Three scenarios, one with a name and an override, and the link to them. */
async function buildSheet(): Promise<{ href: string; grid: string[]; close: () => Promise<void> }> {
  const opened = await web.open(path);
  const page = await sheetOf(opened);
  await pressTool(page, 'Add a scenario');
  await pressOn(page, '.inputs-table td:last-child input[type="range"]', 'ArrowRight');
  await typeInto(page, '.inputs-table th:last-child .typed', 'Bad week, “maybe”');
  await page.keyboard.press('Enter');
  await pressTool(page, 'Add a scenario');
  await putOver(page, '.grid td[data-row="strength_minutes"][data-column="b"]', 'weekly_minutes / 4');
  const href = await copiedLink(page);
  return { href, grid: await gridText(page), close: opened.close };
}

const withHash = (hash: string): string => `${path}#${hash}`;
const hashOf = (href: string): string => new URL(href).hash.slice(1);

/** What a page with a link says, and its grid. */
async function opens(
  hash: string,
): Promise<{ page: Page; message: string; grid: string[]; close: () => Promise<void> }> {
  const opened = await web.open(withHash(hash));
  const page = await sheetOf(opened);
  await appears(page, '.message p');
  expect(opened.complaints).toEqual([]);
  return { page, message: await messageOf(page), grid: await gridText(page), close: opened.close };
}

describe('a link to a sheet', () => {
  test('opens with the same scenarios, names, overrides and numbers', async () => {
    const built = await buildSheet();
    expect(built.grid.join()).toContain('Bad week, “maybe”');
    // A quarter of 5 hours 15 minutes.
    expect(built.grid.join()).toMatch(/Strength 90 78\.8 −11\.3, set by hand/);
    expect(built.href).toMatch(/\/demo\/consultation\.html#weekwright=1\.[\w-]+$/);
    const opened = await opens(hashOf(built.href));
    expect(opened.message).toBe('The plan comes from the link.');
    expect(opened.grid).toEqual(built.grid);
    expect(await planOf(opened.page)).toMatchObject({ inputs: { hours: 5 } });
    await opened.close();
    await built.close();
  });

  test('opens where the address changes to it', async () => {
    const built = await buildSheet();
    const opened = await web.open(path);
    const page = await sheetOf(opened);
    expect(await gridText(page)).not.toEqual(built.grid);
    await page.evaluate((hash) => {
      location.hash = hash;
    }, hashOf(built.href));
    await appears(page, '.message p');
    expect(await gridText(page)).toEqual(built.grid);
    await pressTool(page, 'Undo');
    expect((await gridText(page)).join(), 'what was there before is one step away').not.toContain('Bad week');
    await opened.close();
    await built.close();
  });

  test('is shown for copying by hand where the browser does not let the page copy', async () => {
    const opened = await web.open(path);
    const page = await sheetOf(opened);
    await page.evaluate(() => {
      Object.defineProperty(navigator.clipboard, 'write', { value: () => Promise.reject(new Error('not allowed')) });
    });
    await pressTool(page, 'Copy link');
    await appears(page, '.message textarea');
    const field = await inPlanner(page, '.message textarea');
    const text = await field.evaluate((element) => (element instanceof HTMLTextAreaElement ? element.value : ''));
    expect(text).toMatch(/#weekwright=1\.[\w-]+$/);
    expect(await messageOf(page)).toContain('copy it by hand');
    const again = await opens(hashOf(text));
    expect(again.message).toBe('The plan comes from the link.');
    await again.close();
    await opened.close();
  });
});

describe('a link that cannot be opened says why and changes nothing:', () => {
  const cases: Readonly<Record<string, { readonly hash: () => Promise<string>; readonly why: RegExp }>> = {
    'a broken one': { hash: () => Promise.resolve('weekwright=1.abc'), why: /damaged|whole|broken|incomplete/i },
    'a newer one': { hash: () => Promise.resolve('weekwright=3.abc'), why: /newer/i },
    'one cut off': {
      hash: async () => {
        const { href, close } = await buildSheet();
        await close();
        return hashOf(href).slice(0, -20);
      },
      why: /damaged|whole|broken|incomplete/i,
    },
    'one made with another method': {
      hash: async () => {
        const opened = await web.open(path);
        const page = await sheetOf(opened);
        const club = (await (await fetch(new URL('/demo/club-method.json', page.url()))).json()) as unknown;
        await page.$eval(
          'weekwright-planner',
          async (planner, method) => {
            planner.method = method;
            await planner.updateComplete;
          },
          club,
        );
        await page.waitForFunction(
          () => document.querySelector('weekwright-planner')?.plan?.method.id === 'lamplighters-thursday',
        );
        const href = await copiedLink(page);
        await opened.close();
        return hashOf(href);
      },
      why: /lamplighters-thursday/,
    },
  };

  test.each(Object.entries(cases))('%s', async (_, { hash, why }) => {
    const plain = await web.open(path);
    const before = await gridText(await sheetOf(plain));
    await plain.close();
    const opened = await opens(await hash());
    expect(opened.message).toContain(refused);
    expect(opened.message.replace(refused, '')).toMatch(why);
    expect(opened.grid).toEqual(before);
    expect(await planOf(opened.page)).toMatchObject({ inputs: { hours: 5, phase: 'base' } });
    await opened.close();
  });

  test('one that the address changes to, after something was done', async () => {
    const opened = await web.open(path);
    const page = await sheetOf(opened);
    await pressTool(page, 'Add a scenario');
    const before = await gridText(page);
    await page.evaluate(() => {
      location.hash = 'weekwright=1.abc';
    });
    await appears(page, '.message .wrong');
    expect(await gridText(page)).toEqual(before);
    await opened.close();
  });
});

test('an anchor of the page is no link to a sheet', async () => {
  const opened = await web.open(withHash('planner'));
  const page = await sheetOf(opened);
  expect(await messageOf(page)).toBe('');
  await opened.close();
});
