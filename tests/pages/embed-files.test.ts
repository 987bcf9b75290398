import { afterEach, describe, expect, test } from 'vitest';
import { askWhy, driveInputs, planOf } from './driving.js';
import { useBrowser, type OpenPage } from './web.js';

const web = useBrowser();
let open: OpenPage | undefined;

afterEach(() => open?.close());

/** A page without a planner, on which scripts are loaded one after the other, and a tag. */
async function pageWith(...scripts: readonly string[]): Promise<OpenPage> {
  open = await web.open('/demo/index.html');
  for (const url of scripts) await open.page.addScriptTag({ url, type: 'module' });
  await open.page.evaluate(async () => {
    document.querySelector('main')?.replaceChildren(document.createElement('weekwright-planner'));
    await customElements.whenDefined('weekwright-planner');
    await document.querySelector('weekwright-planner')?.updateComplete;
  });
  return open;
}

const embedded = '/weekwright.js';
const single = '/dist/embed/weekwright.single.js';

describe('the single file', () => {
  test('is all that a page needs', async () => {
    const { page, requests, complaints } = await pageWith(single);
    await driveInputs(page);
    expect(await askWhy(page)).toBe('Why 75 minutes of strength, in whole steps?');
    const scripts = requests.filter((url) => url.endsWith('.js')).map((url) => new URL(url).pathname);
    expect(scripts).toEqual([single]);
    expect(complaints).toEqual([]);
  });

  test("brings German and the parser for a coach's method", async () => {
    const { page, requests, complaints } = await pageWith(single);
    await page.$eval('weekwright-planner', async (planner) => {
      planner.lang = 'de';
      planner.setAttribute('method-src', '/demo/club-method.json');
      await planner.updateComplete;
    });
    expect(await planOf(page)).toMatchObject({ method: { id: 'lamplighters-thursday' } });
    const label = await page.$eval('weekwright-planner >>> #hours-label', (each) => each.textContent);
    expect(label).toBe('Stunden pro Woche');
    expect(requests.filter((url) => url.endsWith('.js'))).toHaveLength(1);
    expect(complaints).toEqual([]);
  });
});

describe('the script of the tag', () => {
  test.each([
    ['twice', [embedded, `${embedded}?second`]],
    ['and the single file after it', [embedded, single]],
    ['and the single file before it', [single, embedded]],
    ['twice as a single file', [single, `${single}?second`]],
  ])('may be loaded %s: the first one stays', async (_, scripts) => {
    const { page, complaints } = await pageWith(...scripts);
    await driveInputs(page);
    expect(await planOf(page)).toMatchObject({ inputs: { hours: 8 } });
    expect(complaints.filter((text) => !text.includes('Multiple versions of Lit'))).toEqual([]);
  });
});
