import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { openPlace, panelNames, places, rested } from './places.js';

// WCAG 2.2, success criterion 2.1.4: letters, digits, signs, and the space of a button that has not the focus.
const characters = 'abcdefghijklmnopqrstuvwxyz0123456789 ?/.,+-*#';

/** Firefox opens a bar of its own to find text at a slash, which takes the focus; the planner has had the key by then. */
function keepSlash(event: KeyboardEvent): void {
  if (event.key === '/') event.preventDefault();
}

describe('a character does nothing where no control of the planner has the focus', () => {
  for (const panel of panelNames)
    it(panel, async () => {
      const outside = document.createElement('button');
      document.body.prepend(outside);
      const page = await openPlace(panel);
      const { root } = places[panel];
      const before = page.find(root).outerHTML;
      outside.focus();
      addEventListener('keydown', keepSlash);
      const events = await page.heard(async () => {
        for (const press of characters) await sendKeys({ press });
      });
      removeEventListener('keydown', keepSlash);
      await rested(page, root);
      expect([events, document.activeElement === outside]).to.deep.equal([[], true]);
      expect(page.find(root).outerHTML).to.equal(before);
      outside.remove();
    });
});
