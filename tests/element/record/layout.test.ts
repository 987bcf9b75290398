import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { clipped, misfits } from '../misfits.js';
import { SeasonPage } from '../season/season-page.js';
import { collapsed } from '../text.js';
import { onRealDay } from './on-day.js';
import { openRecord, scene } from './record-page.js';
import { TablePage } from './table-page.js';

after(async () => {
  onRealDay();
  await setViewport({ width: 800, height: 600 });
});

const table = [
  'Date;Kind;Minutes;A column with a title that is longer than any list has room for, and then some more of it',
  '2026-11-30;easy run;45;x',
  `2026-12-01;${'Donaudampfschifffahrtsgesellschaft'.repeat(4)};20;y`,
  'someday;easy run;long;z',
].join('\n');

/** What looks for misfits looks at any planner. */
const inPlace = ({ element }: TablePage): SeasonPage => new SeasonPage(element);

/** All that the panel can show at once. */
async function openCrowded(attributes: string): Promise<TablePage> {
  const base = await openRecord(`${scene} ${attributes}`, 'week record');
  const page = new TablePage(base.element);
  await page.ticks(0, 2, 4);
  await page.picks(page.newList('kind'), [...page.newList('kind').options][1]?.text.trim() ?? '');
  await page.typesIn(page.newMinutes, '15');
  await page.typesIn(page.newMinutes, 'far too long');
  await page.typesIn(page.field(0, 'minutes'), 'far');
  await page.opensAll();
  return page.enters(table);
}

// 1280 pixels at 400 % are 320 wide and 256 high (WCAG 2.2, success criterion 1.4.10).
for (const [width, height] of [
  [320, 900],
  [320, 256],
  [500, 900],
  [1200, 900],
] as const)
  for (const attributes of ['lang="en"', 'lang="de"', 'lang="ar"'])
    it(`what was done fits with everything open into ${String(width)} × ${String(height)} pixels, ${attributes}`, async () => {
      await setViewport({ width, height });
      const page = await openCrowded(attributes);
      expect(misfits(inPlace(page), '.record')).to.deep.equal([]);
      expect(page.element.scrollWidth).to.be.at.most(page.element.clientWidth);
      expect(document.documentElement.scrollWidth).to.be.at.most(width);
    });

it('what was done fits into 640 pixels at twice the size of type', async () => {
  await setViewport({ width: 640, height: 900 });
  const page = await openCrowded('');
  page.element.style.fontSize = '200%';
  await page.settled();
  expect(misfits(inPlace(page), '.record')).to.deep.equal([]);
});

for (const lang of ['en', 'de'])
  it(`what was done fits into 320 pixels with spaced text, and none is cut off, ${lang}`, async () => {
    await setViewport({ width: 320, height: 900 });
    const page = await openCrowded(`lang="${lang}"`);
    // The spacing of WCAG 2.2, success criterion 1.4.12.
    const spacing = new CSSStyleSheet();
    spacing.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }',
    );
    page.root.adoptedStyleSheets.push(spacing);
    expect([misfits(inPlace(page), '.record'), clipped(inPlace(page), '.record')]).to.deep.equal([[], []]);
  });

for (const width of [1200, 320])
  it(`targets of what was done are 24 pixels wide and high at least, ${String(width)} pixels`, async () => {
    await setViewport({ width, height: 900 });
    const page = await openCrowded('lang="en"');
    const controls = page.all(
      '.record :is(button, select, input:not([type="checkbox"]), textarea, summary, label:has(input[type="checkbox"]))',
    );
    const small = controls.filter((each) => {
      const { width: wide, height } = each.getBoundingClientRect();
      return each.checkVisibility() && Math.min(wide, height) < 24;
    });
    expect(controls.length).to.be.at.least(30);
    expect(small.map((each) => `${each.tagName} ${each.id} ${collapsed(each)}`)).to.deep.equal([]);
  });

it('has room around it where it stands alone, as other panels have', async () => {
  await setViewport({ width: 800, height: 600 });
  const page = await openRecord(scene, 'record');
  const { paddingInlineStart, display } = getComputedStyle(page.find('.record'));
  expect([Number.parseFloat(paddingInlineStart) >= 12, display]).to.deep.equal([true, 'grid']);
});
