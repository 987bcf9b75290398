import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { faultsOf } from '../axe.js';
import { inScheme } from '../scheme.js';
import { onRealDay } from './on-day.js';
import { openTables, type TablePage } from './table-page.js';

type Open = () => Promise<TablePage>;

const table =
  'Datum;Typ;Dauer;Puls\n30.11.2026;easy run;45;140\n1.12.2026;gym;0:30;\n2.12.2026;yoga;20;\nx;easy run;30;\n';

const ticked: Open = async () => {
  const page = await openTables();
  await page.ticks(0, 2);
  return page;
};

/** Every state that the panel can be in, and how a person gets there. */
const states: Readonly<Record<string, Open>> = {
  'as it starts': openTables,
  'with sessions ticked off': ticked,
  'with every box open, and a table half understood': async () => {
    const page = await ticked();
    for (const box of ['weeks', 'out'] as const) await page.opens(box);
    await page.enters(table);
    return page;
  },
  'with an entry that is no value': async () => {
    const page = await ticked();
    await page.adds('Strength', 'long');
    return page;
  },
};

/** axe cannot tell the ground of what is scrolled away: for its eyes nothing scrolls. */
const plainly = new CSSStyleSheet();
plainly.replaceSync(
  ':is(.scroll, .import-unread) { overflow: visible !important; max-block-size: none !important; inline-size: max-content; background: var(--ground) }',
);

after(async () => {
  onRealDay();
  await setViewport({ width: 800, height: 600 });
});

for (const scheme of ['light', 'dark'] as const)
  for (const width of [1200, 320])
    describe(`axe finds nothing in what was done, ${scheme}, ${String(width)} pixels`, () => {
      before(() => setViewport({ width, height: 900 }));
      inScheme(scheme);

      for (const [state, open] of Object.entries(states))
        it(state, async () => {
          const page = await open();
          expect(page.element.scrollWidth, 'nothing reaches over the edge').to.be.at.most(page.element.clientWidth);
          page.root.adoptedStyleSheets.push(plainly);
          const found = await faultsOf(page);
          page.root.adoptedStyleSheets.pop();
          expect(found).to.deep.equal([]);
        });
    });
