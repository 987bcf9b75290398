import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { choose, choosePanels, linesOf, paste, previewed, shownBy } from './builder-driving.js';
import { useBrowser, type OpenPage } from './web.js';

const web = useBrowser();
let open: OpenPage;

const path = '/demo/builder.html';
const club = readFileSync(new URL('../../demo/club-method.json', import.meta.url), 'utf8');

const start = async (look = {}) => {
  open = await web.open(path, look);
  await choose(open.page, 'folder', '/dist/embed/');
};
const texts = (selector: string) => open.page.$$eval(selector, (all) => all.map((each) => each.textContent));
const textOf = (selector: string) => open.page.$eval(selector, (each) => each.textContent);

afterEach(() => open.close());

/** Much of what can be chosen, with marks that HTML and addresses have a use for. */
const chooseMuch = async () => {
  const { page } = open;
  await choosePanels(page, 'split', 'week', 'handout');
  await choose(page, 'lang', 'de');
  await choose(page, 'scheme', 'dark');
  await choose(page, 'colours', 'own');
  await choose(page, 'ground', '#123020');
  await choose(page, 'text', '#fafafa');
  await choose(page, 'hours', '6.5');
  await choose(page, 'phase', 'base');
  await choose(page, 'level', 'trained');
  await choose(page, 'event', 'marathon');
  await choose(page, 'strength-cap', '100');
  await choose(page, 'day', '90');
  await choose(page, 'contact', `"Ida" & 'Bo' <b> #1 + 2 %`);
  await choose(page, 'keep', false);
};

/** What is shown of all that: expected from the choices, not from the lines. */
const much = {
  attributes: {
    lang: 'de',
    panels: 'split week handout',
    hours: '6.5',
    phase: 'base',
    level: 'trained',
    event: 'marathon',
    'strength-cap': '100',
    days: '90,0,0,0,0,0,0',
    contact: `"Ida" & 'Bo' <b> #1 + 2 %`,
    storage: 'none',
  },
  ground: 'rgb(18, 48, 32)',
};

describe('the lines, pasted into an empty page,', () => {
  test('show what the preview shows, as a tag', async () => {
    await start();
    await chooseMuch();
    await previewed(open.page);
    const preview = await shownBy(open.page, '#stage weekwright-planner');
    expect(preview).toMatchObject({ ...much, scheme: 'dark' });
    await paste(open, await linesOf(open.page));
    expect(await shownBy(open.page, 'body > weekwright-planner')).toEqual(preview);
    expect(open.complaints).toEqual([]);
  });

  test('show what the preview shows, as a frame of its own height', async () => {
    await start();
    await choose(open.page, 'output', 'frame');
    await chooseMuch();
    await previewed(open.page);
    const preview = await shownBy(open.page, '#stage weekwright-planner');
    const { lang: _, ...attributes } = much.attributes;
    expect(preview).toMatchObject({ ...much, attributes, scheme: 'dark' });
    await paste(open, await linesOf(open.page));
    expect(await shownBy(open.page, 'body > weekwright-planner')).toEqual(preview);
    await open.page.waitForFunction(() => (document.querySelector('iframe')?.clientHeight ?? 0) > 1000, {
      polling: 50,
    });
    expect(open.complaints).toEqual([]);
  });

  test('keep the height of the frame where no script is wanted', async () => {
    await start();
    await choose(open.page, 'output', 'frame');
    await choose(open.page, 'fits', false);
    await choosePanels(open.page, 'split', 'week');
    await previewed(open.page);
    await shownBy(open.page, '#stage weekwright-planner');
    await new Promise((resolve) => setTimeout(resolve, 1000));
    expect(await open.page.$eval('#stage iframe', (frame) => frame.clientHeight)).toBe(900);
    await paste(open, await linesOf(open.page));
    expect(await open.page.$eval('iframe', (frame) => frame.clientHeight)).toBe(900);
    expect(await open.page.$$('script')).toEqual([]);
  });

  test('have a method of one’s own', async () => {
    await start();
    await choose(open.page, 'method', club);
    await previewed(open.page);
    const preview = await shownBy(open.page, '#stage weekwright-planner');
    await open.page.waitForFunction(() => document.querySelector('#method-advice')?.textContent, { polling: 50 });
    expect(await texts('#method-advice li')).toEqual(['The method can be used: Lamplighters, Thursday group.']);
    await paste(open, await linesOf(open.page));
    // The empty page has no scheme; the builder has both.
    expect(await shownBy(open.page, 'body > weekwright-planner')).toEqual({ ...preview, scheme: 'normal' });
    const id = await open.page.$eval('weekwright-planner', ({ plan }) => plan?.method.id);
    expect(id).toBe('lamplighters-thursday');
  });
});

describe('the builder', () => {
  test('writes every choice into the lines at once', async () => {
    await start();
    const steps: [name: string, value: string | boolean, found: string][] = [
      ['lang', 'fr', 'lang="fr"'],
      ['scheme', 'light', 'color-scheme: light'],
      ['hours', '5', 'hours="5"'],
      ['phase', 'peak', 'phase="peak"'],
      ['level', 'new', 'level="new"'],
      ['event', '10k', 'event="10k"'],
      ['strength-cap', '95', 'strength-cap="95"'],
      ['event-date', '2027-05-02', 'event-date="2027-05-02"'],
      ['contact', 'a "b" <c> & d', 'contact="a &quot;b&quot; &lt;c&gt; &amp; d"'],
      ['keep', false, 'storage="none"'],
      ['colours', 'own', '--weekwright-accent: #2b6449'],
      ['output', 'frame', 'contact=a+%22b%22+%3Cc%3E+%26+d'],
      ['fits', false, 'iframe'],
    ];
    for (const [name, value, found] of steps) {
      const before = await linesOf(open.page);
      await choose(open.page, name, value);
      const after = await linesOf(open.page);
      expect(after, name).toContain(found);
      expect(after, name).not.toBe(before);
    }
  });

  test('says what is wrong with a method, in the words of the planner', async () => {
    await start();
    const told = async (text: string) => {
      await choose(open.page, 'method', text);
      await previewed(open.page);
      await open.page.waitForFunction(() => document.querySelector('#method-advice')?.textContent, { polling: 50 });
      return texts('#method-advice li');
    };
    expect((await told('{ "format": ')).join()).toMatch(/not valid JSON/);
    expect((await told('{ "format": "weekwright-method", "version": 1 }')).join()).toMatch(/ is missing\./);
    await choose(open.page, 'method', '');
    await previewed(open.page);
    expect(await texts('#method-advice li')).toEqual([]);
  });

  test('tells where a frame reads a method from', async () => {
    await start();
    await choose(open.page, 'output', 'frame');
    expect(await open.page.$eval('#own-file', (each) => each.checkVisibility())).toBe(false);
    await choose(open.page, 'method', club);
    expect(await open.page.$eval('#own-file', (each) => each.checkVisibility())).toBe(true);
    await choose(open.page, 'method-address', '/plans/ours.json');
    expect(await linesOf(open.page)).toContain('method-src=%2Fplans%2Fours.json');
  });

  test('warns of colours that cannot be read', async () => {
    await start();
    await choose(open.page, 'colours', 'own');
    await choose(open.page, 'scheme', 'light');
    expect((await texts('#colour-advice li')).join()).not.toMatch(/too little|needs/);
    await choose(open.page, 'accent', '#ffee88');
    expect((await texts('#colour-advice li')).join()).toMatch(/Accent on ground: 1\.\d to 1, too little/);
  });

  test('copies the lines, or selects them where it may not', async () => {
    await start();
    const lines = await linesOf(open.page);
    await open.page.evaluate(() => {
      Object.defineProperty(navigator, 'clipboard', {
        configurable: true,
        value: { writeText: (text: string) => Promise.resolve(Object.assign(window, { copied: text })) },
      });
    });
    await open.page.click('#copy');
    await open.page.waitForFunction(() => document.querySelector('#status')?.textContent, { polling: 50 });
    expect(await textOf('#status')).toBe('Copied. Paste it into your page.');
    expect(await open.page.evaluate(() => Reflect.get(window, 'copied') as string)).toBe(lines);
    await choose(open.page, 'hours', '5');
    expect(await textOf('#status')).toBe('');
    await open.page.evaluate(() => {
      Object.defineProperty(navigator, 'clipboard', { value: { writeText: () => Promise.reject(new Error('no')) } });
    });
    await open.page.click('#copy');
    await open.page.waitForFunction(() => document.querySelector('#status')?.textContent, { polling: 50 });
    expect(await textOf('#status')).toMatch(/The lines are selected/);
    expect(await open.page.evaluate(() => getSelection()?.toString())).toBe(await linesOf(open.page));
    expect(await open.page.evaluate(() => document.activeElement?.id)).toBe('lines');
  });

  test('is walked through by keys alone', async () => {
    await start();
    const { keyboard } = open.page;
    const active = () =>
      open.page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.id);
    await open.page.evaluate(() => getSelection()?.removeAllRanges());
    await open.page.focus('.skip');
    const seen: (string | undefined)[] = [];
    for (let presses = 0; presses < 80 && seen.at(-1) !== 'copy'; presses += 1) {
      await keyboard.press('Tab');
      seen.push(await active());
    }
    for (const each of ['folder', 'lang', 'scheme', 'hours', 'Monday, minutes', 'contact', 'method', 'copy'])
      expect(seen).toContain(each);
    await keyboard.press('Tab');
    expect(await active()).toBe('lines');
  });

  test('moves panels by keys, says so, and keeps the focus', async () => {
    await start();
    await choosePanels(open.page, 'split', 'week');
    await open.page.focus('[aria-label="Move up: Sessions on their days"]');
    await open.page.keyboard.press('Enter');
    expect(await linesOf(open.page)).toContain('panels="week split"');
    expect(await textOf('#moved')).toBe('Sessions on their days is now 1 of 10.');
    expect(await open.page.evaluate(() => document.activeElement?.ariaLabel)).toBe('Move up: Sessions on their days');
    await open.page.keyboard.press('Enter');
    expect(await linesOf(open.page)).toContain('panels="week split"');
    await previewed(open.page);
    expect((await shownBy(open.page, '#stage weekwright-planner')).attributes).toEqual({ panels: 'week split' });
  });

  test.each([
    ['tag', 320],
    ['frame', 320],
    ['frame', 360],
    ['tag', 768],
    ['frame', 1280],
  ] as const)('as a %s never has to be scrolled sideways, %i pixels', async (output, width) => {
    await start({ width });
    await choose(open.page, 'output', output);
    await chooseMuch();
    await choose(open.page, 'method', club);
    await previewed(open.page);
    await shownBy(open.page, '#stage weekwright-planner');
    expect(await open.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
});

describe.each(['light', 'dark'] as const)('axe, %s,', (scheme) => {
  beforeEach(() => start({ scheme, width: 360 }));

  test('finds nothing before and after choosing', async () => {
    expect(await open.axe()).toEqual([]);
    await chooseMuch();
    await choose(open.page, 'output', 'frame');
    await choose(open.page, 'method', club);
    await previewed(open.page);
    expect(await open.axe()).toEqual([]);
    await open.page.setViewport({ width: 1280, height: 800 });
    expect(await open.axe()).toEqual([]);
  });
});
