import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { clipped, misfits } from '../misfits.js';
import { collapsed } from '../text.js';
import { openChecks, scene, type ChecksPage } from './checks-page.js';

async function openCrowded(attributes: string): Promise<ChecksPage> {
  const page = await openChecks(`${scene} ${attributes}`, 'split checks week');
  await page.until(() => page.ids.includes('rest-days'), 'the week is laid');
  page.element.checks = { age: 67, hoursBefore: 2, weeks: [[10_000, 2000, 3000, 4000, 5000, 6000, 7000]] };
  await page.settled();
  await page.typeIn('checks-run', 'far');
  await page.opensAll();
  return page.ticks('known-disease', 'pain', 'pregnant', 'recent-birth', 'low-energy');
}

const openStopped = async (attributes: string): Promise<ChecksPage> =>
  (await (await openChecks(`${scene} ${attributes}`)).opens('start')).ticks('symptoms', 'pain');

after(() => setViewport({ width: 800, height: 600 }));

// 1280 pixels at 400 % are 320 wide and 256 high (WCAG 2.2, success criterion 1.4.10).
for (const [width, height] of [
  [320, 900],
  [320, 256],
  [500, 900],
  [1200, 900],
] as const)
  for (const attributes of ['lang="en"', 'lang="de"', 'lang="ar"'])
    it(`checks with everything open fit into ${String(width)} × ${String(height)} pixels, ${attributes}`, async () => {
      await setViewport({ width, height });
      for (const open of [openCrowded, openStopped]) {
        const page = await open(attributes);
        expect(misfits(page, '.checks')).to.deep.equal([]);
        expect(page.element.scrollWidth).to.be.at.most(page.element.clientWidth);
        expect(document.documentElement.scrollWidth).to.be.at.most(width);
      }
    });

it('checks fit into 640 pixels at twice the size of type', async () => {
  await setViewport({ width: 640, height: 900 });
  const page = await openCrowded('');
  page.element.style.fontSize = '200%';
  await page.settled();
  expect(misfits(page, '.checks')).to.deep.equal([]);
});

for (const lang of ['en', 'de'])
  it(`checks fit into 320 pixels with spaced text, and none is cut off, ${lang}`, async () => {
    await setViewport({ width: 320, height: 900 });
    const page = await openCrowded(`lang="${lang}"`);
    // The spacing of WCAG 2.2, success criterion 1.4.12.
    const spacing = new CSSStyleSheet();
    spacing.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }',
    );
    page.root.adoptedStyleSheets.push(spacing);
    expect([misfits(page, '.checks'), clipped(page, '.checks')]).to.deep.equal([[], []]);
  });

for (const width of [1200, 320])
  it(`targets of checks are 24 pixels wide and high at least, ${String(width)} pixels`, async () => {
    await setViewport({ width, height: 900 });
    const page = await openCrowded('lang="en"');
    const controls = page.all('.checks :is(button, input:not([type="checkbox"]), textarea, summary, label:has(input))');
    const small = controls.filter((each) => {
      const { width: wide, height } = each.getBoundingClientRect();
      return each.checkVisibility() && Math.min(wide, height) < 24;
    });
    expect(controls.length).to.be.at.least(30);
    expect(small.map((each) => `${each.tagName} ${each.id} ${collapsed(each)}`)).to.deep.equal([]);
  });

it('from right to left, a box stands before its question, and lines before what they mark', async () => {
  await setViewport({ width: 800, height: 600 });
  const page = await openCrowded('lang="ar"');
  for (const label of page.all('.answers label')) {
    const [box, text] = [label.querySelector('input'), label.querySelector('span')];
    if (!box || !text) throw new Error('a question is not whole');
    expect(box.getBoundingClientRect().left).to.be.at.least(text.getBoundingClientRect().right - 1);
  }
  const { borderRightWidth, borderLeftWidth } = getComputedStyle(page.check('hard-minutes'));
  expect([borderRightWidth, borderLeftWidth]).to.deep.equal(['3px', '0px']);
});
