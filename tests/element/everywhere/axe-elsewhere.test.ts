import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { openPlace, panelNames } from './places.js';
import { plainFaults } from './plain.js';

before(() => setViewport({ width: 1000, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

describe('axe finds nothing from right to left', () => {
  for (const panel of panelNames)
    it(panel, async () => {
      expect(await plainFaults(await openPlace(panel, 'open', 'lang="ar"'))).to.deep.equal([]);
    });
});

describe('axe finds nothing in French on a phone', () => {
  before(() => setViewport({ width: 320, height: 700 }));
  after(() => setViewport({ width: 1000, height: 900 }));

  for (const panel of panelNames)
    it(panel, async () => {
      expect(await plainFaults(await openPlace(panel, 'open', 'lang="fr"'))).to.deep.equal([]);
    });
});

describe('axe finds nothing where nobody may change anything', () => {
  for (const panel of panelNames)
    it(panel, async () => {
      const page = await openPlace(panel, 'open');
      page.element.setAttribute('disabled', '');
      await page.settled();
      expect(page.all('fieldset:disabled')).to.not.have.length(0);
      expect(await plainFaults(page)).to.deep.equal([]);
    });
});
