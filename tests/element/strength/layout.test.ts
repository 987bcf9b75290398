import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { clipped, misfits } from '../misfits.js';
import { collapsed } from '../text.js';
import { openStrength, scene, type StrengthPage } from './strength-page.js';

async function openCrowded(lang: string): Promise<StrengthPage> {
  const page = await openStrength(`${scene} lang="${lang}"`);
  page.element.strength = { age: 16, lifted: [{ movement: 'goblet-squat', kilograms: 40, repetitions: 5 }] };
  await page.settled();
  await page.typeIn('strength-minutes', '3');
  return page.opensAll();
}

after(() => setViewport({ width: 800, height: 600 }));

// 1280 pixels at 400 % are 320 wide and 256 high (WCAG 2.2, success criterion 1.4.10).
for (const [width, height] of [
  [320, 900],
  [320, 256],
  [500, 900],
  [1200, 900],
] as const)
  for (const lang of ['en', 'de'])
    it(`strength with everything open fits into ${String(width)} × ${String(height)} pixels, ${lang}`, async () => {
      await setViewport({ width, height });
      const page = await openCrowded(lang);
      expect(misfits(page, '.strength')).to.deep.equal([]);
      expect(page.element.scrollWidth).to.be.at.most(page.element.clientWidth);
      expect(document.documentElement.scrollWidth).to.be.at.most(width);
    });

it('strength fits into 640 pixels at twice the size of type', async () => {
  await setViewport({ width: 640, height: 900 });
  const page = await openCrowded('en');
  page.element.style.fontSize = '200%';
  await page.settled();
  expect(misfits(page, '.strength')).to.deep.equal([]);
});

for (const lang of ['en', 'de'])
  it(`strength fits into 320 pixels with spaced text, and none is cut off, ${lang}`, async () => {
    await setViewport({ width: 320, height: 900 });
    const page = await openCrowded(lang);
    // The spacing of WCAG 2.2, success criterion 1.4.12.
    const spacing = new CSSStyleSheet();
    spacing.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }',
    );
    page.root.adoptedStyleSheets.push(spacing);
    expect([misfits(page, '.strength'), clipped(page, '.strength')]).to.deep.equal([[], []]);
  });

for (const width of [1200, 320])
  it(`targets of strength are 24 pixels wide and high at least, ${String(width)} pixels`, async () => {
    await setViewport({ width, height: 900 });
    const page = await openCrowded('en');
    const controls = page.all('.strength :is(button, select, input:not([type="checkbox"]), summary, label:has(input))');
    const small = controls.filter((each) => {
      const { width: wide, height } = each.getBoundingClientRect();
      return each.checkVisibility() && Math.min(wide, height) < 24;
    });
    expect(controls.length).to.be.at.least(30);
    expect(small.map((each) => `${each.tagName} ${each.id} ${collapsed(each)}`)).to.deep.equal([]);
  });
