import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { misfits, overlaps } from './fit.js';
import { openPlace, panelNames, places } from './places.js';

after(() => setViewport({ width: 800, height: 600 }));

// 1280 by 1024 pixels at 400 % are 320 by 256 (WCAG 2.2, success criterion 1.4.10).
for (const [height, state, lang] of [
  [900, 'shut', 'en'],
  [900, 'open', 'ar'],
  [900, 'faulty', 'de'],
  [900, 'bare', 'en'],
  [256, 'open', 'en'],
] as const)
  describe(`nothing is scrolled sideways in 320 × ${String(height)} pixels, ${state}, ${lang}`, () => {
    before(() => setViewport({ width: 320, height }));

    for (const panel of panelNames)
      it(panel, async () => {
        const page = await openPlace(panel, state, `lang="${lang}"`);
        const { root } = places[panel];
        expect({ misfits: misfits(page, root), overlaps: overlaps(page, root) }).to.deep.equal({
          ...{ misfits: [], overlaps: [] },
        });
        expect(document.documentElement.scrollWidth).to.be.at.most(320);
      });
  });

describe('a long text that is no value covers nothing', () => {
  for (const width of [320, 1000])
    for (const panel of panelNames.filter((each) => each !== 'basis'))
      it(`${panel}, ${String(width)} pixels`, async () => {
        await setViewport({ width, height: 900 });
        const page = await openPlace(panel, 'flooded');
        const { root } = places[panel];
        expect({ misfits: misfits(page, root), overlaps: overlaps(page, root) }).to.deep.equal({
          ...{ misfits: [], overlaps: [] },
        });
        expect(document.documentElement.scrollWidth).to.be.at.most(width);
      });
});
