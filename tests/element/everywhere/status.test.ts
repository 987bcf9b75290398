import { aTimeout, expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { SheetPage } from '../sheet/sheet-page.js';
import { collapsed } from '../text.js';
import { openPlace, panelNames, places } from './places.js';

const regions = '[role="status"], [role="alert"], [role="log"], [aria-live]';
/** A little more than the time after which changes are told. */
const quietMilliseconds = 900;

/** What is said to a listener while something is done, and for a while afterwards; a region that is emptied says nothing. */
async function said(page: SheetPage, act: () => Promise<unknown>): Promise<string[]> {
  const heard: string[] = [];
  const observer = new MutationObserver((records) => {
    const changed = new Set(records.map(({ target }) => parent(target)?.closest(regions) ?? null));
    for (const region of changed) if (region && collapsed(region) !== '') heard.push(collapsed(region));
  });
  observer.observe(page.root, { childList: true, characterData: true, subtree: true });
  await act();
  await aTimeout(quietMilliseconds);
  observer.disconnect();
  return heard;
}

const parent = (node: Node): Element | null => (node instanceof Element ? node : node.parentElement);

const sliders = (page: SheetPage, root: string): HTMLInputElement[] =>
  page.all<HTMLInputElement>(`${root} input[type="range"]`).filter((each) => each.checkVisibility());

/** Panels with sliders. */
const withSliders = panelNames.filter((panel) => !['running', 'checks', 'basis', 'record', 'handout'].includes(panel));

describe('what is said to a listener', () => {
  for (const panel of withSliders)
    it(`is one sentence at most for twenty keys on a slider: ${panel}`, async () => {
      const page = await openPlace(panel, 'open');
      const { root } = places[panel];
      const slider = sliders(page, root)[0];
      if (!slider) throw new Error('there is no slider');
      slider.focus();
      await sendKeys({ press: 'Home' });
      await aTimeout(quietMilliseconds);
      const from = slider.getAttribute('aria-valuetext');
      const heard = await said(page, async () => {
        for (let key = 0; key < 20; key += 1) await sendKeys({ press: 'ArrowRight' });
      });
      const now = sliders(page, root)[0]?.getAttribute('aria-valuetext');
      expect(now).to.be.a('string').and.not.equal(from);
      expect(heard.length, heard.join(' | ')).to.be.at.most(1);
      expect(heard).to.not.include(now);
    });

  for (const panel of panelNames)
    it(`has its regions there from the start, with nothing in them, and none that interrupts: ${panel}`, async () => {
      const page = await openPlace(panel);
      const all = page.all(regions).filter((each) => each.checkVisibility());
      expect(all.length).to.be.greaterThan(0);
      expect(all.map(collapsed).filter((text) => text !== '')).to.deep.equal([]);
      expect(all.filter((each) => each.matches('[role="alert"], [aria-live="assertive"]'))).to.deep.equal([]);
    });

  it('panels that are not in this list have no slider', async () => {
    for (const panel of panelNames.filter((each) => !withSliders.includes(each)))
      expect(sliders(await openPlace(panel, 'open'), places[panel].root), panel).to.have.length(0);
  });
});
