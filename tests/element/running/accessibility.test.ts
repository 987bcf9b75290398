import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { faultsOf } from '../axe.js';
import { describeWithMedia } from '../media.js';
import { inScheme } from '../scheme.js';
import { openRunning, scene, type RunningPage } from './running-page.js';

type Open = (lang: string) => Promise<RunningPage>;
const told = { age: 16, highestHeart: 150, restingHeart: 50, weight: 60 };

/** axe cannot tell the ground of what is scrolled away: for its eyes nothing scrolls. */
const plainly = new CSSStyleSheet();
plainly.replaceSync(
  `.scroll { overflow: visible !important; inline-size: max-content; background: var(--ground) }
   .running thead th { position: static !important }`,
);

async function faults(page: RunningPage): Promise<string[]> {
  page.root.adoptedStyleSheets.push(plainly);
  const found = await faultsOf(page);
  page.root.adoptedStyleSheets.pop();
  return found;
}

const empty: Open = (lang) => openRunning(`${scene} lang="${lang}"`, 'running');
const withRace: Open = (lang) => openRunning(`${scene} lang="${lang}" race="10k 45:00"`, 'running');

/** Every state that paces and runs can be in, and how a person gets there. */
const states: Readonly<Record<string, Open>> = {
  'with nothing told': empty,
  'with nothing told and its boxes open': async (lang) => (await empty(lang)).opensAll(),
  'with a race': withRace,
  'with a race and all boxes open': async (lang) => (await withRace(lang)).opensAll(),
  'with all that there is to mind': async (lang) => {
    const page = await withRace(lang);
    page.element.running = { ...told, race: { metres: 42_195, seconds: 18_000, date: '2020-02-02' } };
    page.element.removeAttribute('race');
    await page.settled();
    return page.opensAll();
  },
  'with texts that are no values': async (lang) => {
    const page = await (await withRace(lang)).opens('heart');
    await page.typeIn('running-time', 'soon');
    return page.typeIn('running-age', '3');
  },
  'with another distance that waits for its kilometres': async (lang) => {
    const page = await empty(lang);
    const list = page.selectOf('running-distance');
    return page.choose(list, list.options.length - 1);
  },
};

after(() => setViewport({ width: 800, height: 600 }));

for (const scheme of ['light', 'dark'] as const)
  for (const [lang, width] of [
    ['en', 1200],
    ['de', 320],
  ] as const)
    describe(`axe finds nothing in paces and runs, ${scheme}, ${lang}, ${String(width)} pixels`, () => {
      before(() => setViewport({ width, height: 900 }));
      inScheme(scheme);

      for (const [state, open] of Object.entries(states))
        it(state, async () => {
          const page = await open(lang);
          expect(await faults(page)).to.deep.equal([]);
        });
    });

it('axe finds a fault of paces and runs where there is one', async () => {
  const page = await withRace('en');
  for (const label of page.all('.running label')) label.remove();
  expect((await faults(page)).join()).to.match(/label: Form elements must have labels|select-name/);
});

describeWithMedia('forced colours', { 'forced-colors': 'active' }, () => {
  it('leave fields, lists and boxes with an edge, and notes and kinds with theirs', async () => {
    const page = await withRace('en');
    page.element.running = told;
    await page.settled();
    for (const selector of ['.typed.text', 'select', '.box']) {
      const { borderTopStyle, borderTopWidth } = getComputedStyle(page.find(`.running ${selector}`));
      expect(`${selector} ${borderTopStyle} ${borderTopWidth}`).to.equal(`${selector} solid 1px`);
    }
    expect(page.notes.length).to.be.greaterThan(0);
    for (const note of page.all('.concrete-notes li'))
      expect(getComputedStyle(note).borderInlineStartStyle).to.equal('solid');
    for (const card of page.all('.guides li')) expect(getComputedStyle(card).borderBlockStartStyle).to.equal('solid');
  });

  it('leave the strip of a run to be seen', async () => {
    const page = await withRace('en');
    const probe = document.createElement('div');
    probe.style.color = 'CanvasText';
    document.body.append(probe);
    const parts = page.all('.run-strip span').map((part) => getComputedStyle(part).backgroundColor);
    expect(new Set(parts)).to.deep.equal(new Set([getComputedStyle(probe).color]));
    probe.remove();
  });
});
