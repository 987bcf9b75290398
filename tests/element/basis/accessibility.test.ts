import { expect } from '@open-wc/testing';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import { faultsOf } from '../axe.js';
import { describeWithMedia } from '../media.js';
import { inScheme } from '../scheme.js';
import { clipped, misfits } from '../misfits.js';
import { collapsed } from '../text.js';
import { openBasis } from './basis-page.js';

after(() => setViewport({ width: 800, height: 600 }));

for (const scheme of ['light', 'dark'] as const)
  for (const [lang, width] of [
    ['en', 1200],
    ['de', 320],
  ] as const)
    describe(`axe finds nothing in what a planner rests on, ${scheme}, ${lang}, ${String(width)} pixels`, () => {
      before(() => setViewport({ width, height: 900 }));
      inScheme(scheme);

      for (const isOpen of [false, true])
        it(isOpen ? 'with everything open' : 'as it starts', async () => {
          const page = await openBasis(`lang="${lang}"`, 'basis');
          expect(await faultsOf(isOpen ? await page.opensAll() : page)).to.deep.equal([]);
        });
    });

for (const lang of ['en', 'de', 'fr', 'es', 'ar'])
  it(`what a planner rests on fits into 320 pixels with everything open, ${lang}`, async () => {
    await setViewport({ width: 320, height: 900 });
    const page = await (await openBasis(`lang="${lang}"`)).opensAll();
    expect([misfits(page, '.basis-panel'), clipped(page, '.basis-panel')]).to.deep.equal([[], []]);
    expect(document.documentElement.scrollWidth).to.be.at.most(320);
  });

it('targets of what a planner rests on are 24 pixels high at least', async () => {
  await setViewport({ width: 320, height: 900 });
  const page = await (await openBasis()).opensAll();
  const summaries = page.all('.basis-panel summary');
  expect(summaries).to.have.length(17);
  const small = summaries.filter((each) => each.getBoundingClientRect().height < 24);
  expect(small.map(collapsed)).to.deep.equal([]);
});

it('what a planner rests on is walked by keyboard in the order in which it stands, with the focus in sight', async () => {
  await setViewport({ width: 800, height: 600 });
  const page = await openBasis('', 'basis');
  const summaries = page.all('.basis-panel summary');
  const [first] = summaries;
  if (!first) throw new Error('there is nothing to open');
  await page.goTo(first);
  for (const summary of summaries) {
    expect(page.hasFocus(summary)).to.equal(true);
    const { outlineStyle, outlineWidth } = getComputedStyle(summary);
    expect([outlineStyle === 'none', Number.parseFloat(outlineWidth) >= 2]).to.deep.equal([false, true]);
    await sendKeys({ press: 'Tab' });
  }
});

it('headings of what a planner rests on stand in order', async () => {
  const page = await openBasis('', 'basis');
  expect(page.all('.basis-panel :is(h1, h2, h3, h4, h5)').map(({ tagName }) => tagName)).to.deep.equal([
    ...['H3', 'H4', 'H4'],
  ]);
});

describeWithMedia('forced colours', { 'forced-colors': 'active' }, () => {
  it('leave the boxes with an edge', async () => {
    const page = await openBasis();
    const { borderTopStyle, borderTopWidth } = getComputedStyle(page.find('.basis-panel .box'));
    expect(`${borderTopStyle} ${borderTopWidth}`).to.equal('solid 1px');
  });
});
