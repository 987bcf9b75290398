import { describe, expect, test } from 'vitest';
import { pagesWithPlanner } from './demo-pages.js';
import { askedAgain, askWhy, driveInputs, hoursNote, inPlanner, planOf, typeHours } from './driving.js';
import { useBrowser } from './web.js';

const web = useBrowser();

describe.each(pagesWithPlanner)('the planner of $path', ({ path }) => {
  test('asks for nothing but parts of its own while it is driven, and without a complaint', async () => {
    const { page, requests, complaints, violations, close } = await web.open(path);
    const { origin } = new URL(page.url());
    const before = requests.length;
    await driveInputs(page);
    expect((await planOf(page))?.inputs).toMatchObject({ hours: 8, phase: 'taper', level: 'trained' });
    // What a rule says comes with the details, and a week that takes long is solved in a worker.
    const foreign = requests.slice(before).filter((url) => !url.startsWith(`${origin}/weekwright-`));
    expect(foreign).toEqual([]);
    expect(complaints).toEqual([]);
    expect(await violations()).toEqual([]);
    await close();
  });

  // A page with a coach's own method has fetched them before: its rules may speak of anything.
  test('fetches its own parts, once, by the time that somebody asks why or types what is no number', async () => {
    const { page, requests, complaints, violations, close } = await web.open(path);
    const { origin } = new URL(page.url());
    const before = requests.length;
    expect(await askWhy(page)).toMatch(/^Why \d+ minutes of strength/);
    await typeHours(page, 'abc');
    expect(await hoursNote(page)).toBe('Hours a week is "abc"; it has to be a number.');
    const own = new RegExp(`^${origin}/weekwright-[\\w-]+\\.js$`);
    for (const url of requests.slice(before)) expect(url).toMatch(own);
    const parts = requests.filter((url) => own.test(url));
    expect(parts.length).toBeGreaterThan(0);
    expect(askedAgain(parts)).toEqual([]);
    expect(complaints).toEqual([]);
    expect(await violations()).toEqual([]);
    await close();
  });

  test('keeps nothing on the computer', async () => {
    const { page, close } = await web.open(path);
    await driveInputs(page);
    const kept = await page.evaluate(async () => ({
      local: localStorage.length,
      session: sessionStorage.length,
      cookies: document.cookie,
      databases: (await indexedDB.databases()).length,
      caches: (await caches.keys()).length,
    }));
    expect(kept).toEqual({ local: 0, session: 0, cookies: '', databases: 0, caches: 0 });
    await close();
  });
});

describe('a method at an address', () => {
  test('of the page is read', async () => {
    const { page, complaints, close } = await web.open('/demo/blog.html');
    const plan = await page.$eval('weekwright-planner', async (planner) => {
      planner.setAttribute('method-src', './club-method.json');
      await planner.updateComplete;
      return planner.plan;
    });
    expect(plan).toMatchObject({ method: { id: 'lamplighters-thursday' }, inputs: { hours: 4 } });
    expect(complaints).toEqual([]);
    await close();
  });

  test('of another origin is not asked for', async () => {
    const { page, requests, close } = await web.open('/demo/blog.html');
    const before = requests.length;
    const codes = await page.$eval('weekwright-planner', async (planner) => {
      planner.setAttribute('method-src', 'http://elsewhere.invalid/method.json');
      await planner.updateComplete;
      return planner.problems.map(({ code }) => code);
    });
    expect(codes).toEqual(['other-origin']);
    expect(requests.slice(before).filter((url) => url.includes('elsewhere'))).toEqual([]);
    await close();
  });
});

describe('a line that is cut after the first load', () => {
  test('leaves a planner that can be driven', async () => {
    const { page, close } = await web.open('/demo/blog.html');
    await page.setOfflineMode(true);
    await driveInputs(page);
    const button = await inPlanner(page, '.week .planned [data-quantity="strength_rounded"]');
    await button.click();
    await typeHours(page, '6');
    expect((await planOf(page))?.inputs).toMatchObject({ hours: 6 });
    await page.setOfflineMode(false);
    await close();
  });
});
