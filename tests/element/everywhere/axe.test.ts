import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { inScheme } from '../scheme.js';
import { everyState } from './every-state.js';
import { openPlace, panelNames } from './places.js';
import { plainFaults } from './plain.js';

before(() => setViewport({ width: 1000, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

// As they start and with everything open in both schemes: accessibility.test.ts of each panel.
for (const scheme of ['light', 'dark'] as const)
  describe(`axe finds nothing, ${scheme}`, () => {
    inScheme(scheme);
    everyState(['faulty', 'bare']);
  });

describe('axe finds a fault', () => {
  for (const panel of panelNames)
    it(`of contrast in ${panel}`, async () => {
      const page = await openPlace(panel, 'shut', 'style="--weekwright-text: #aaa; --weekwright-muted: #aaa"');
      expect((await plainFaults(page)).join()).to.include('color-contrast');
    });

  it('where the name of a button is not what is seen on it', async () => {
    const page = await openPlace('week');
    page.find('.board button.act').setAttribute('aria-label', 'Something else');
    expect((await plainFaults(page)).join()).to.include('label-content-name-mismatch');
  });

  it('where a target is too small', async () => {
    const page = await openPlace('split');
    const small = new CSSStyleSheet();
    small.replaceSync(
      '.step { min-inline-size: 0; min-block-size: 0; inline-size: 10px; block-size: 10px; padding: 0 }',
    );
    page.root.adoptedStyleSheets.push(small);
    expect((await plainFaults(page)).join()).to.include('target-size');
  });
});
