import { describe, expect, test } from 'vitest';
import { demoPages, pagesWithPlanner } from './demo-pages.js';
import { useBrowser } from './web.js';

const web = useBrowser();

describe.each(demoPages)('$path', ({ path, planners }) => {
  test('loads from one place without a complaint, and shows its planners', async () => {
    const { page, requests, complaints, violations, close } = await web.open(path);
    const { origin } = new URL(page.url());
    expect(requests.filter((url) => !url.startsWith(`${origin}/`) && !url.startsWith('data:'))).toEqual([]);
    const headlines = await page.$$eval('weekwright-planner', (all) =>
      all.map((each) => each.shadowRoot?.querySelector('.answer')?.textContent.trim()),
    );
    expect(headlines).toHaveLength(planners);
    for (const headline of headlines) expect(headline).toMatch(/ hours .*: \d+ minutes of /s);
    expect(complaints).toEqual([]);
    expect(await violations()).toEqual([]);
    await close();
  });

  test.each(['light', 'dark'] as const)('axe finds nothing on a phone and on a desk, %s', async (scheme) => {
    const { page, axe, close } = await web.open(path, { width: 360, scheme });
    expect(await axe(), '360 pixels').toEqual([]);
    await page.setViewport({ width: 1280, height: 800 });
    expect(await axe(), '1280 pixels').toEqual([]);
    await close();
  });

  test('has every picture and table of the week laid out', async () => {
    const { page, close } = await web.open(path);
    const sizes = await page.$$eval('weekwright-planner', (all) =>
      all.flatMap(({ shadowRoot }) =>
        Array.from(shadowRoot?.querySelectorAll('.ring, .week') ?? [], (each) => each.getBoundingClientRect().height),
      ),
    );
    expect(sizes.length).toBeGreaterThanOrEqual(planners);
    for (const height of sizes) expect(height).toBeGreaterThan(100);
    await close();
  });

  test('never has to be scrolled sideways', async () => {
    const { page, close } = await web.open(path, { width: 320 });
    for (const width of [320, 360, 768, 1280]) {
      await page.setViewport({ width, height: 800 });
      const widest = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(widest, `${String(width)} pixels`).toBeLessThanOrEqual(width);
    }
    await close();
  });
});

describe.each(pagesWithPlanner)('$path without scripts', ({ path, planners }) => {
  test('shows the week as a table in place of each planner', async () => {
    const { page, close } = await web.open(path, { scripts: false, width: 360 });
    const tables = await page.$$eval('weekwright-planner table', (all) =>
      all.map((table) => ({
        isVisible: table.checkVisibility(),
        caption: table.caption?.textContent ?? '',
        rows: table.tBodies[0]?.rows.length ?? 0,
      })),
    );
    expect(tables).toHaveLength(planners);
    for (const { isVisible, caption, rows } of tables) {
      expect(isVisible).toBe(true);
      expect(caption).toMatch(/\S/);
      expect(rows).toBe(5);
    }
    await close();
  });

  test('says in that table what the planner says first', async () => {
    const { page, close } = await web.open(path);
    const weeks = await page.$$eval('weekwright-planner', (all) =>
      all.map(({ plan, children }) => {
        const table = [...children].find((child) => child instanceof HTMLTableElement);
        const heads = [...(table?.tHead?.rows[0]?.cells ?? [])].map((cell) => cell.textContent);
        const minutes = heads.findIndex((head) => head.startsWith('Minutes'));
        const rows = [...(table?.tBodies[0]?.rows ?? [])];
        return {
          planned: Object.values(plan?.rounded ?? {}),
          told: rows.map(({ cells }) => Number(cells[minutes]?.textContent)),
        };
      }),
    );
    for (const { planned, told } of weeks) expect(told).toEqual(planned);
    await close();
  });
});

describe.each(pagesWithPlanner)('$path on a slow line', ({ path }) => {
  test.each([360, 1280])('hardly moves when the planner comes, %i pixels', async (width) => {
    const { page, close } = await web.open('/demo/index.html', { width });
    const session = await page.createCDPSession();
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: 150,
      downloadThroughput: 200_000,
      uploadThroughput: 100_000,
    });
    await page.goto(new URL(path, page.url()).href, { waitUntil: 'networkidle0' });
    const shifts = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          new PerformanceObserver((list) => {
            const all = list.getEntries() as (PerformanceEntry & { value: number })[];
            resolve(all.reduce((sum, { value }) => sum + value, 0));
          }).observe({ type: 'layout-shift', buffered: true });
          setTimeout(resolve, 500, 0);
        }),
    );
    // "Good" on the usual scale of cumulative layout shift: https://web.dev/articles/cls (from memory).
    expect(shifts).toBeLessThan(0.1);
    await close();
  });
});

test('the largest thing painted on the club’s page is its own, on a phone', async () => {
  const { page, close } = await web.open('/demo/club.html', { width: 360 });
  const place = await page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        new PerformanceObserver((list) => {
          const last = list.getEntries().at(-1) as (PerformanceEntry & { element: Element | null }) | undefined;
          const { element = null } = last ?? {};
          const isInside = element?.getRootNode() !== document || element.closest('weekwright-planner');
          resolve(isInside ? 'in the planner, or nowhere' : 'on the page');
        }).observe({ type: 'largest-contentful-paint', buffered: true });
      }),
  );
  expect(place).toBe('on the page');
  await close();
});

test('words over the drawing of a page have a ground of their own', async () => {
  const { page, close } = await web.open('/demo/club.html');
  const grounds = await page.evaluate(() =>
    Array.from(
      document.querySelectorAll('.hero-words > *, .hero .dates'),
      (words) => getComputedStyle(words).backgroundColor,
    ),
  );
  expect(grounds).toHaveLength(3);
  for (const ground of grounds) expect(ground).toMatch(/^rgb\(/);
  await close();
});
