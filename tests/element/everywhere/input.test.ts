import { expect } from '@open-wc/testing';
import { sendKeys, setViewport } from '@web/test-runner-commands';
import type { SheetPage } from '../sheet/sheet-page.js';
import { openPlace, panelNames, places } from './places.js';

before(() => setViewport({ width: 1000, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

/** What is ticked or moved by one key, each with the key. */
const kinds = { 'input[type="checkbox"]': ' ', 'input[type="range"]': 'ArrowLeft' } as const;

const all = (page: SheetPage, selector: string): HTMLElement[] =>
  page.all(selector).filter((each) => each.checkVisibility() && !each.matches(':disabled'));

// WCAG 2.2, success criterion 3.2.2.
// The basis has nothing to set; the checks have answers, for which see tests/element/checks/advice.test.ts.
describe('ticking, moving and choosing leave the focus where it is', () => {
  for (const panel of panelNames.filter((each) => !['basis', 'checks'].includes(each)))
    it(panel, async () => {
      const page = await openPlace(panel, 'open');
      const { root } = places[panel];
      const place = location.href;
      let count = 0;
      for (const [selector, press] of Object.entries(kinds))
        for (const at of all(page, `${root} ${selector}`).keys()) {
          const control = all(page, `${root} ${selector}`)[at];
          if (!control || control.closest('.answers')) continue; // answers can stop the plan: tests/element/checks
          control.focus();
          await sendKeys({ press });
          await page.settled();
          count += 1;
          const now = page.root.activeElement;
          expect(now?.matches(selector), control.outerHTML.slice(0, 140)).to.equal(true);
        }
      for (const at of all(page, `${root} select`).keys()) {
        const list = all(page, `${root} select`)[at];
        if (!(list instanceof HTMLSelectElement)) continue;
        list.focus();
        await page.choose(list, (list.selectedIndex + 1) % list.options.length);
        count += 1;
        expect(page.root.activeElement?.matches('select'), list.outerHTML.slice(0, 140)).to.equal(true);
      }
      expect(count).to.be.greaterThan(0);
      expect(location.href).to.equal(place);
    });
});
