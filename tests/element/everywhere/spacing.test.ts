import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { cut, misfits, overlaps } from './fit.js';
import { openPlace, panelNames, places, rested } from './places.js';

// WCAG 2.2, success criterion 1.4.12.
const spacing = new CSSStyleSheet();
spacing.replaceSync(`
  * { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }
  p { margin-block-end: 2em !important }
`);

after(() => setViewport({ width: 800, height: 600 }));

for (const width of [320, 1000])
  describe(`spaced text is neither cut off nor covered, ${String(width)} pixels`, () => {
    before(() => setViewport({ width, height: 900 }));

    for (const panel of panelNames)
      it(panel, async () => {
        const page = await openPlace(panel, 'open');
        const { root } = places[panel];
        const before = page.find(root).getBoundingClientRect().height;
        page.root.adoptedStyleSheets.push(spacing);
        await rested(page, root);
        expect(page.find(root).getBoundingClientRect().height, 'the spacing tells').to.be.greaterThan(before);
        expect({
          misfits: misfits(page, root),
          cut: cut(page, root),
          overlaps: overlaps(page, root),
        }).to.deep.equal({ misfits: [], cut: [], overlaps: [] });
      });
  });
