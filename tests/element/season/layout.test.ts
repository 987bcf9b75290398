import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { collapsed } from '../text.js';
import { openSeason, scene, type SeasonPage } from './season-page.js';

const crowded = {
  ...{ weeks: 8, rise: 0.25, weeksOff: 2, taperWeeks: 3, longestRun: 20 },
  events: [{ date: '2027-03-14', event: 'longer' }],
  byHand: [{ start: '2027-03-01', hours: 9, reason: 'ill' }],
};

async function openCrowded(lang: string): Promise<SeasonPage> {
  const page = await openSeason(`${scene} lang="${lang}"`);
  page.element.season = crowded;
  await page.settled();
  await page.typeIn('season-weeks', '0');
  return page.openAll();
}

/** What reaches out of the planner, but for what is scrolled in a box of its own. */
function misfits(page: SeasonPage): string[] {
  const frame = page.element.getBoundingClientRect();
  const visible = page
    .all('.season-panel *:not(option)')
    .filter((each) => each.checkVisibility() && !each.closest('.visually-hidden, svg, .scroll > *'));
  return visible
    .filter((each) => {
      const { left, right } = each.getBoundingClientRect();
      return left < frame.left - 1 || right > frame.right + 1;
    })
    .map((each) => `${each.tagName} ${each.className} ${each.id} ${collapsed(each).slice(0, 40)}`);
}

after(() => setViewport({ width: 800, height: 600 }));

// 1280 pixels at 400 % are 320 wide and 256 high (WCAG 2.2, success criterion 1.4.10).
for (const [width, height] of [
  [320, 900],
  [320, 256],
  [500, 900],
  [760, 900],
  [1200, 900],
] as const)
  for (const lang of ['en', 'de'])
    it(`a season with everything open fits into ${String(width)} × ${String(height)} pixels, ${lang}`, async () => {
      await setViewport({ width, height });
      const page = await openCrowded(lang);
      expect(misfits(page)).to.deep.equal([]);
      expect(page.element.scrollWidth).to.be.at.most(page.element.clientWidth);
      expect(document.documentElement.scrollWidth).to.be.at.most(width);
    });

for (const width of [320, 1200])
  it(`a season of two years fits into ${String(width)} pixels`, async () => {
    await setViewport({ width, height: 900 });
    const page = await openSeason(`${scene}`);
    await page.typeIn('season-weeks', '104');
    await page.openBox('table');
    expect(document.documentElement.scrollWidth).to.be.at.most(width);
    expect(misfits(page)).to.deep.equal([]);
    expect(page.texts('.season-chart .sweep-x span').length).to.be.at.most(7);
  });

describe('a season with everything open', () => {
  it('fits into 640 pixels at twice the size of type', async () => {
    await setViewport({ width: 640, height: 900 });
    const page = await openCrowded('en');
    page.element.style.fontSize = '200%';
    await page.settled();
    expect(misfits(page)).to.deep.equal([]);
  });

  it('fits into 320 pixels with spaced text', async () => {
    await setViewport({ width: 320, height: 900 });
    const page = await openCrowded('en');
    // The spacing of WCAG 2.2, success criterion 1.4.12.
    const spacing = new CSSStyleSheet();
    spacing.replaceSync(
      '* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important } p { margin-block-end: 2em !important }',
    );
    page.root.adoptedStyleSheets.push(spacing);
    expect(misfits(page)).to.deep.equal([]);
  });
});

for (const width of [1200, 320])
  it(`targets of a season are 24 pixels wide and high at least, ${String(width)} pixels`, async () => {
    await setViewport({ width, height: 900 });
    const page = await openCrowded('en');
    const controls = page.all('.season-panel :is(button, select, input, summary)');
    const small = controls.filter((each) => {
      const { width: wide, height } = each.getBoundingClientRect();
      return each.checkVisibility() && Math.min(wide, height) < 24;
    });
    expect(controls.length).to.be.greaterThan(50);
    expect(small.map((each) => `${each.tagName} ${each.id} ${collapsed(each)}`)).to.deep.equal([]);
  });

it('no flag of the picture covers another where events are close', async () => {
  await setViewport({ width: 1200, height: 900 });
  const page = await openSeason();
  page.element.season = { events: [{ date: '2027-04-04', event: '10k' }] };
  await page.settled();
  const boxes = page.all('.season-chart .sweep-flag').map((flag) => flag.getBoundingClientRect());
  const [one, other] = boxes;
  if (!one || !other) throw new Error('there are two flags');
  const covers = one.right > other.left && one.left < other.right && one.bottom > other.top && one.top < other.bottom;
  expect(covers).to.equal(false);
});
