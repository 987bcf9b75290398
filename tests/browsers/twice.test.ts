import { expect } from '@open-wc/testing';
import { latePanels, openEmpty } from './built-page.js';
import { moveSliders } from './inputs.js';

const tag = '/weekwright.js';
const copy = '/elsewhere/weekwright.js';
const single = '/weekwright.single.js';

const pairs = {
  'once more at the same address': [tag, `${tag}?second`],
  'and a copy after it': [tag, copy],
  'and a copy before it': [copy, tag],
  'and the single file after it': [tag, single],
  'and the single file before it': [single, tag],
} as const;

describe('the script of the tag loaded', () => {
  for (const [how, [first, second]] of Object.entries(pairs))
    it(`${how} does no harm`, async () => {
      const page = (await openEmpty()).put('hours="4"');
      await page.load(first);
      const { constructor } = page.planner;
      await page.load(second);
      expect(page.window.customElements.get('weekwright-planner')).to.equal(constructor);
      page.put('hours="6"');
      expect(await moveSliders(page, '')).to.equal(4);
      expect(page.planner.plan?.inputs.hours).to.equal(0.5);
      expect(page.heard).to.deep.equal([]);
    });
});

it('a copy under another path loads its panels from there', async () => {
  const page = await (await openEmpty()).put('hours="4"').load(copy);
  await page.show(['split', ...latePanels]);
  await page.rests();
  const scripts = page.fetched.filter((path) => path.includes('weekwright'));
  expect(scripts.length).to.be.greaterThan(latePanels.length);
  expect(scripts.filter((path) => !path.startsWith('/elsewhere/'))).to.deep.equal([]);
});
