import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { faultsOf } from '../axe.js';
import { inScheme } from '../scheme.js';
import { openHandout, openWithDays, scene, type HandoutPage } from './handout-page.js';

type Open = (lang: string) => Promise<HandoutPage>;
const first: Open = (lang) => openWithDays(`${scene} lang="${lang}"`, 'week handout');
const bySeason: Open = async (lang) => {
  const page = await openHandout(`${scene} lang="${lang}" event="10k" event-date="2027-04-11"`, 'season handout');
  await page.until(() => page.has('#handout-what'), 'the season comes');
  return page.choose(page.selectOf('handout-what'), 1);
};

/** Every state that the panel can be in, and how a person gets there. */
const states: Readonly<Record<string, Open>> = {
  'as it starts': first,
  'with every box open': async (lang) => (await first(lang)).opensEveryBox(),
  'with a season': bySeason,
  'with a text that is too long': async (lang) => (await first(lang)).paste('handout-runner', 'x'.repeat(90)),
};

/** axe cannot tell the ground of what is scrolled away: for its eyes nothing scrolls. */
const plainly = new CSSStyleSheet();
plainly.replaceSync('.p-scroll { overflow: visible !important; inline-size: max-content; background: #fff }');

after(() => setViewport({ width: 800, height: 600 }));

for (const scheme of ['light', 'dark'] as const)
  for (const [lang, width] of [
    ['en', 1200],
    ['de', 320],
  ] as const)
    describe(`axe finds nothing in what is taken home, ${scheme}, ${lang}, ${String(width)} pixels`, () => {
      before(() => setViewport({ width, height: 900 }));
      inScheme(scheme);

      for (const [state, open] of Object.entries(states))
        it(state, async () => {
          const page = await open(lang);
          expect(page.element.scrollWidth, 'nothing reaches over the edge').to.be.at.most(page.element.clientWidth);
          page.root.adoptedStyleSheets.push(plainly);
          const found = await faultsOf(page);
          page.root.adoptedStyleSheets.pop();
          expect(found).to.deep.equal([]);
        });
    });
