import { expect } from '@open-wc/testing';
import { getSnapshotConfig, readFile, setViewport, writeFile } from '@web/test-runner-commands';
import { accessibleValues } from '../accessibility-tree.js';
import { needs } from '../instruments.js';
import { collapsed } from '../text.js';
import { openPlace, panelNames, places } from './places.js';

before(() => setViewport({ width: 1000, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

const plainly = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** What of an element is seen. */
function seenText(each: Element): string {
  const copy = each.cloneNode(true);
  if (!(copy instanceof Element)) return '';
  for (const hidden of copy.querySelectorAll('.visually-hidden, [aria-hidden="true"], [hidden]')) hidden.remove();
  return collapsed(copy);
}

// WCAG 2.2, success criterion 2.5.3; axe asks the same of what it takes for text.
describe('what is seen on a button is in its name', () => {
  for (const lang of ['en', 'de', 'fr', 'es', 'ar'])
    for (const panel of panelNames)
      it(`${panel}, ${lang}`, async () => {
        const page = await openPlace(panel, 'open', `lang="${lang}"`);
        const named = page.all(`${places[panel].root} :is(button, summary, [role="button"])`);
        const odd = named
          .map((each) => ({ seen: plainly(seenText(each)), name: plainly(nameGiven(each)) }))
          .filter(({ seen, name }) => name !== '' && !name.includes(seen));
        expect(named.length).to.be.greaterThan(0);
        expect(odd).to.deep.equal([]);
      });
});

/** The name that stands in place of the text, '' where the text is the name. */
function nameGiven(each: Element): string {
  const { ariaLabel } = each;
  if (ariaLabel) return ariaLabel;
  const root = each.getRootNode();
  const ids = each.getAttribute('aria-labelledby')?.split(' ') ?? [];
  return ids.map((id) => (root instanceof ShadowRoot ? collapsed(root.getElementById(id) ?? root) : '')).join(' ');
}

/** What can be worked with, and what leads to it; engines differ in which groups and tables they tell of. */
const roles = /^(?:button|checkbox|combobox|date|image|listbox|radio|region|slider|spinbutton|summary|textbox)$/;

/** What differs between engines: the spaces in names of texts on two lines, the value of a date, and what is said of no file. */
const comparable = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.replace(/(?: =)? (?:No file chosen|Browse… No file selected\.)$/, ''))
    .map((line) => (line.startsWith('date: ') ? line.replace(/ =.*$/, '') : line).replace(/\s/g, ''));

// Written anew by `npm run test:element -- --files tests/element/everywhere/names.test.ts --update-snapshots`, to be read before it is kept.
needs('accessibleValues', () => {
  describe('names and values of a panel are those of its file', () => {
    for (const panel of panelNames)
      it(panel, async () => {
        await openPlace(panel, 'open');
        const path = `names/${panel}.txt`;
        const content = `${(await accessibleValues(roles)).map((line) => line.replace(/[ :=]+$/, '')).join('\n')}\n`;
        const { updateSnapshots } = (await getSnapshotConfig()) as { readonly updateSnapshots: boolean };
        if (updateSnapshots) await writeFile({ path, content });
        expect(comparable(content)).to.deep.equal(comparable((await readFile({ path })) ?? ''));
      });
  });
});
