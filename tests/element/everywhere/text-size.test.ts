import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { cut, misfits, overlaps } from './fit.js';
import { openPlace, panelNames, places, rested } from './places.js';

before(() => setViewport({ width: 1280, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

// WCAG 2.2, success criterion 1.4.4.
describe('at twice the size of type nothing is cut off, covered or lost', () => {
  for (const lang of ['en', 'de', 'ar'])
    for (const panel of panelNames)
      it(`${panel}, ${lang}`, async () => {
        const page = await openPlace(panel, 'open', `lang="${lang}"`);
        const { root } = places[panel];
        const size = (): number =>
          Number.parseFloat(getComputedStyle(page.find(`${root} :is(h3, label, td)`)).fontSize);
        const before = size();
        const holder = page.element.parentElement;
        if (!holder) throw new Error('the planner stands nowhere');
        holder.style.fontSize = '200%';
        await rested(page, root);
        expect(size()).to.be.closeTo(2 * before, 0.1);
        expect({
          misfits: misfits(page, root),
          cut: cut(page, root),
          overlaps: overlaps(page, root),
        }).to.deep.equal({ misfits: [], cut: [], overlaps: [] });
      });
});
