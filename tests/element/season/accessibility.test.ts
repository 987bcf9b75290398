import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { faultsOf } from '../axe.js';
import { describeWithMedia } from '../media.js';
import { inScheme } from '../scheme.js';
import { openSeason, openWithSheet, scene, type SeasonPage } from './season-page.js';

type Open = (lang: string) => Promise<SeasonPage>;
const first: Open = (lang) => openSeason(`${scene} lang="${lang}"`, 'season');
const crowded = {
  ...{ weeks: 8, rise: 0.25, weeksOff: 2, taperWeeks: 3, longestRun: 20 },
  events: [{ date: '2027-03-14', event: '10k' }],
  byHand: [{ start: '2027-03-01', hours: 9, reason: 'ill' }],
};

/** axe cannot tell the ground of what is scrolled away: for its eyes nothing scrolls. */
const plainly = new CSSStyleSheet();
plainly.replaceSync(`
  .scroll { overflow: visible !important; max-block-size: none !important; inline-size: max-content; background: var(--ground) }
  .season-panel thead th { position: static !important }
`);
/** Arrows and single digits are no text to axe; their colour is that of the names and numbers beside them. */
const tooShort = /(?:only non-text characters|too short to determine if it is actual text content)$/;

async function faults(page: SeasonPage): Promise<string[]> {
  page.root.adoptedStyleSheets.push(plainly);
  const found = await faultsOf(page);
  page.root.adoptedStyleSheets.pop();
  return found.filter((line) => !tooShort.test(line));
}

/** Every state that a season can be in, and how a person gets there. */
const states: Readonly<Record<string, Open>> = {
  'as it starts': first,
  'with all boxes open': async (lang) => (await first(lang)).openAll(),
  'with all that there is to mind': async (lang) => {
    const page = await first(lang);
    page.element.season = crowded;
    await page.settled();
    const at = page.season.weeks.findIndex(({ notices }) => notices.length > 1);
    await page.readWeek(at + 1);
    return page.openAll();
  },
  'with texts that are no values': async (lang) => {
    const page = await first(lang);
    await page.typeIn('season-weeks', '0');
    await page.setDate('season-start', '2029-01-01');
    return page;
  },
  'with a week in the middle read': async (lang) => {
    const page = await (await first(lang)).openBox('table');
    return page.readWeek(9);
  },
};

after(() => setViewport({ width: 800, height: 600 }));

for (const scheme of ['light', 'dark'] as const)
  for (const [lang, width] of [
    ['en', 1200],
    ['de', 320],
  ] as const)
    describe(`axe finds nothing in a season, ${scheme}, ${lang}, ${String(width)} pixels`, () => {
      before(() => setViewport({ width, height: 900 }));
      inScheme(scheme);

      for (const [state, open] of Object.entries(states))
        it(state, async () => {
          const page = await open(lang);
          expect(await faults(page)).to.deep.equal([]);
        });
    });

it('axe finds nothing where seasons are side by side', async () => {
  const page = await openWithSheet(scene, 'season sheet');
  await page.add();
  await page.openBox('compare');
  const found = await faults(page);
  expect(found.filter((line) => line.includes('season'))).to.deep.equal([]);
});

it('axe finds a fault of the season where there is one', async () => {
  const page = await first('en');
  for (const label of page.all('.season-inputs label')) label.remove();
  expect((await faults(page)).join()).to.include('label: Form elements must have labels');
});

describeWithMedia('forced colours', { 'forced-colors': 'active' }, () => {
  it('leave fields, buttons and boxes with an edge, and show the week that is read', async () => {
    const page = await first('en');
    page.element.season = crowded;
    await page.settled();
    await page.openAll();
    for (const selector of ['.season-inputs .entry', '.season-fields select', 'button.act', '.season-inputs .date']) {
      const { borderTopStyle, borderTopWidth } = getComputedStyle(page.find(`.season-panel ${selector}`));
      expect(`${selector} ${borderTopStyle} ${borderTopWidth}`).to.equal(`${selector} solid 1px`);
    }
    for (const note of page.all('.season-notes li')) {
      const { borderInlineStartStyle } = getComputedStyle(note);
      expect(borderInlineStartStyle).to.equal('solid');
    }
  });

  it('draw the picture in colours that tell text from ground', async () => {
    const page = await first('en');
    const flag = getComputedStyle(page.find('.season-chart .sweep-flag'));
    expect(flag.color).to.not.equal(flag.backgroundColor);
    const probe = document.createElement('div');
    probe.style.color = 'CanvasText';
    document.body.append(probe);
    expect(getComputedStyle(page.find('.season-chart .sweep-flagged')).stroke).to.equal(getComputedStyle(probe).color);
    probe.remove();
  });
});
