import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { describeWithMedia } from '../media.js';
import { inScheme } from '../scheme.js';
import { openPlace, panelNames, stateNames, type StateName } from './places.js';
import { plainFaults } from './plain.js';

before(() => setViewport({ width: 1000, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

/** Every panel in some states. */
function everyState(states: readonly StateName[], counts: (fault: string) => boolean = () => true): void {
  for (const panel of panelNames)
    for (const state of states)
      it(`${panel}, ${state}`, async () => {
        expect((await plainFaults(await openPlace(panel, state))).filter(counts)).to.deep.equal([]);
      });
}

// As they start and with everything open in both schemes: accessibility.test.ts of each panel.
for (const scheme of ['light', 'dark'] as const)
  describe(`axe finds nothing, ${scheme}`, () => {
    inScheme(scheme);
    everyState(['faulty', 'bare']);
  });

// There contrast is the system's own; axe reads colours that are not painted. See contrast.test.ts.
describeWithMedia('axe finds nothing in forced colours', { 'forced-colors': 'active' }, () => {
  everyState(stateNames, (line) => !line.startsWith('color-contrast'));
});

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

describe('axe finds a fault', () => {
  it('of contrast in every panel', async () => {
    for (const panel of panelNames) {
      const page = await openPlace(panel, 'shut', 'style="--weekwright-text: #aaa; --weekwright-muted: #aaa"');
      expect((await plainFaults(page)).join(), panel).to.include('color-contrast');
    }
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
