import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { faultsOf } from '../axe.js';
import { inScheme } from '../scheme.js';
import type { BoardPage } from './board-page.js';
import { openBoard, scene } from './open-board.js';

type Open = (lang: string) => Promise<BoardPage>;
const laid: Open = (lang) => openBoard(`${scene} lang="${lang}"`, 'week');

/** The hatching of a free day is no ground to axe: for its eyes it is the lightest and the darkest that it can be. */
const plainly = new CSSStyleSheet();
plainly.replaceSync(`
  .day[data-free='true'] { background: color-mix(in oklab, var(--line) 45%, transparent) !important }
  .grip { visibility: hidden }
`);

async function faults(page: BoardPage): Promise<string[]> {
  page.root.adoptedStyleSheets.push(plainly);
  const found = await faultsOf(page);
  page.root.adoptedStyleSheets.pop();
  return found;
}

/** Every state that a board can be in, and how a person gets there. */
const states: Readonly<Record<string, Open>> = {
  laid,
  'with the tools of a card open': async (lang) => (await laid(lang)).openCard('strength', 5),
  'with the tools of a day open': async (lang) => (await laid(lang)).openDay(5),
  'with a card carried': async (lang) => {
    const page = await (await laid(lang)).pickUp('strength', 5);
    return page.press('ArrowRight');
  },
  'with a card carried to where it does not fit': async (lang) => {
    const page = await (await laid(lang)).pickUp('tempo', 0);
    return page.press('ArrowRight');
  },
  'with a proposal': async (lang) => {
    const page = await (await laid(lang)).openDay(5);
    return page.click(page.at('#board-tools .acts button', 1));
  },
  'with a conflict': async (lang) =>
    openBoard(`hours="4" phase="base" days="30,0,0,30,0,30,60" lang="${lang}"`, 'week'),
  'with a card that stays, one that is done, and a day kept free': async (lang) => {
    const page = await laid(lang);
    await page.pickUp('strength', 5);
    await page.press('ArrowRight', ' ');
    await page.openDay(2);
    await page.click(page.at('#board-tools .acts button', 0));
    const [card] = page.all('.card[data-state="open"]');
    if (!card) throw new Error('no card is open');
    await page.click(card);
    return page.click(page.at('#board-tools .acts:last-of-type button', 0));
  },
  'with a text that is no number': async (lang) => (await laid(lang)).typeMinutes(0, 'abc'),
  'with a clash asked about': async (lang) => {
    const page = await laid(lang);
    return page.click(page.at('.clashes summary', 0));
  },
  'with run and strength on one day': async (lang) => {
    const page = await openBoard(`hours="4" phase="base" days="0,0,0,60,0,90,120" lang="${lang}"`, 'week');
    return page.click(page.find('.order summary'));
  },
};

after(() => setViewport({ width: 800, height: 600 }));

for (const scheme of ['light', 'dark'] as const)
  for (const [lang, width] of [
    ['en', 1200],
    ['en', 320],
    ['de', 1200],
    ['de', 320],
  ] as const)
    describe(`axe finds nothing on a board, ${scheme}, ${lang}, ${String(width)} pixels`, () => {
      before(() => setViewport({ width, height: 900 }));
      inScheme(scheme);

      for (const [state, open] of Object.entries(states))
        it(state, async () => {
          const page = await open(lang);
          expect(await faults(page)).to.deep.equal([]);
          expect(document.documentElement.scrollWidth).to.be.at.most(width);
        });
    });

it('axe finds a fault of the board where there is one', async () => {
  const page = await laid('en');
  for (const name of page.all('.day h4')) name.remove();
  for (const unit of page.all('.day .unit')) unit.remove();
  expect((await faults(page)).join()).to.include('label: Form elements must have labels');
});
