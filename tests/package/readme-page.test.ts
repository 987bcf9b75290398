import { readdirSync, readFileSync } from 'node:fs';
import * as esbuild from 'esbuild';
import type { HTTPResponse, ResponseForRequest } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { planWeek, type PlanRequest } from '../../src/core.js';
import { categoryIds } from '../../src/training/method/ids.js';
import { startBrowser } from '../tools/browser-page.mjs';
import { consumer, installed } from './install.js';
import { codeIn, pieces, section, shownFiles } from './readme-text.js';

const embed = `${installed}dist/embed/`;
const [policy = ''] = pieces('text');

/** The request that the attributes of a tag make, as the planner reads them. */
function requestOf(html: string): PlanRequest {
  const tag = /<weekwright-planner([^>]*)>/.exec(html)?.[1] ?? '';
  const attributes = [...tag.matchAll(/([\w-]+)="([^"]*)"/g)].map(
    ([, name = '', value = '']) => [name, value] as const,
  );
  const known = codeIn(section('What the tag offers'));
  expect(attributes.filter(([name]) => !known.includes(name))).toEqual([]);
  return Object.fromEntries(attributes.map(([name, value]) => [name, name === 'hours' ? Number(value) : value]));
}

const pages = pieces('html').map((html) => [/src="(.+?)"/.exec(html)?.[1], html] as const);

test.each(pages)('the page with %s shows, before the planner is there, the minutes that it will show', (_, html) => {
  const plan = planWeek(requestOf(html));
  if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
  const text = /<p>(.*?)<\/p>/s.exec(html)?.[1] ?? '';
  const minutes = categoryIds.map((id) => plan.value.rounded[id]).filter((each) => each > 0);
  expect([...text.matchAll(/\d+/g)].map(([number]) => Number(number))).toEqual(minutes);
});

describe('in a browser, under the policy that README.md names', () => {
  let web: Awaited<ReturnType<typeof startBrowser>>;
  beforeAll(async () => {
    web = await startBrowser();
  });
  afterAll(() => web.close());

  /** A site with one page, and the built files where README.md says that a page keeps them. */
  function respond(path: string, html: string): Partial<ResponseForRequest> {
    if (path === '/') {
      const headers = { 'content-security-policy': policy.trim() };
      return { headers, contentType: 'text/html', body: `<!doctype html><title>README</title>${html}` };
    }
    const file = /^\/(?:weekwright\/)?(weekwright[\w.-]*\.js)$/.exec(path)?.[1];
    return file ? { contentType: 'text/javascript', body: readFileSync(embed + file) } : { status: 204 };
  }

  async function show(html: string, width = 1040) {
    const page = await web.browser.newPage();
    await page.setViewport({ width, height: 800 });
    const complaints: string[] = [];
    const asked: string[] = [];
    page.on('console', (message) => complaints.push(message.text()));
    page.on('pageerror', (error) => complaints.push(String(error)));
    await page.setRequestInterception(true);
    page.on('request', (request) => {
      const { pathname } = new URL(request.url());
      asked.push(pathname);
      void request.respond(respond(pathname, html));
    });
    const answer: HTTPResponse | null = await page.goto(web.origin, { waitUntil: 'networkidle0' });
    expect(answer?.headers()['content-security-policy']).toBe(policy.trim());
    const shown = await page.evaluate(async () => {
      const planner = document.querySelector('weekwright-planner');
      await planner?.updateComplete;
      const headline = planner?.shadowRoot?.querySelector('[part="answer"]')?.textContent;
      const height = planner?.getBoundingClientRect().height ?? 0;
      return { plan: planner?.plan, problems: planner?.problems, headline, height };
    });
    await page.close();
    return { ...shown, complaints, asked };
  }

  test.each(pages)('the page with %s shows its week', async (_, html) => {
    const { plan, problems, headline, complaints } = await show(html);
    const expected = planWeek(requestOf(html));
    expect(complaints).toEqual([]);
    expect(problems).toEqual([]);
    expect(expected).toMatchObject({ ok: true, value: { rounded: plan?.rounded } });
    expect(headline).toContain(`${plan?.rounded.strength} minutes of strength`);
  });

  const [narrow, wide] = [...(pieces('css')[0] ?? '').matchAll(/min-block-size: (\d+)rem/g)].map(
    ([, rem]) => 16 * Number(rem),
  );

  test.each([
    [360, narrow],
    [480, narrow],
    [800, wide],
    [1280, wide],
  ])('at a width of %s pixels about %s are kept free', async (width, kept = 0) => {
    const { height } = await show(pieces('html')[0] ?? '', width);
    expect(Math.abs(height - kept) / height, `${height} pixels`).toBeLessThan(0.1);
  });

  test('a method in a child of the tag, whose formulas need the parser', async () => {
    const script = `<script type="application/json" slot="method">${shownFiles['harbour.json']}</script>`;
    const start = '<script type="module" src="/weekwright/weekwright.js"></script>';
    const { plan, problems, complaints, asked } = await show(
      `${start}<weekwright-planner>${script}</weekwright-planner>`,
    );
    expect([complaints, problems]).toEqual([[], []]);
    expect(plan?.method).toEqual({ id: 'harbour-group', name: 'Harbour group' });
    expect(asked.filter((path) => path.startsWith('/weekwright/weekwright-compile'))).toHaveLength(1);
  });
});

describe('what is copied to a site', () => {
  const importing = /(?:\bimport\s*\(?\s*|\b(?:import|export)\b[\w\s{},*$]*\bfrom\s*)["']([^"']+)["']/g;
  const imports = (file: string): string[] =>
    [...readFileSync(embed + file, 'utf8').matchAll(importing)].map(([, name = '']) => name);

  test('the tag imports nothing but the files whose names begin as README.md says', () => {
    const files = readdirSync(embed).filter((file) => /^weekwright(-.*)?\.js$/.test(file));
    const imported = files.flatMap(imports);
    expect(imported.length).toBeGreaterThan(3);
    expect(imported.filter((name) => !files.includes(name.replace('./', '')))).toEqual([]);
  });

  test('the single file imports nothing', () => {
    expect(imports('weekwright.single.js')).toEqual([]);
  });
});

test.each(pieces('js'))('a bundler takes the program %#', async (contents) => {
  const stdin = { contents, resolveDir: consumer };
  const { outputFiles, warnings } = await esbuild.build({ stdin, bundle: true, format: 'esm', write: false });
  expect([warnings, outputFiles.length]).toEqual([[], 1]);
});

test('the styles name only custom properties and parts that there are', () => {
  const styles = pieces('css').join('\n');
  const names = [...styles.matchAll(/--weekwright-\w+|(?<=::part\()[\w-]+/g)].map(([name]) => name);
  const known = ['Parts', 'Custom properties'].flatMap((heading) => codeIn(section(heading)));
  expect(names.length).toBeGreaterThan(2);
  expect(names.filter((name) => !known.includes(name))).toEqual([]);
});
