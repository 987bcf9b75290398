import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { faultsOf } from '../axe.js';
import { describeWithMedia } from '../media.js';
import { inScheme } from '../scheme.js';
import { openStrength, scene, type StrengthPage } from './strength-page.js';

type Open = (lang: string) => Promise<StrengthPage>;
const first: Open = (lang) => openStrength(`${scene} lang="${lang}"`, 'strength');
const lifted = [{ movement: 'goblet-squat', kilograms: 40, repetitions: 5 }];

/** Every state that strength can be in, and how a person gets there. */
const states: Readonly<Record<string, Open>> = {
  'as it starts': first,
  'with everything open': async (lang) => (await first(lang)).opensAll(),
  'with all that there is to mind': async (lang) => {
    const page = await first(lang);
    page.element.strength = { age: 16, minutes: 20, lifted, forms: { squat: 'barbell-squat' } };
    page.element.equipment = 'dumbbells';
    await page.settled();
    return page.opensAll();
  },
  'with texts that are no values': async (lang) => {
    const page = await (await first(lang)).opens('lifted');
    await page.typeIn('strength-minutes', '3');
    return page.typeIn('strength-age', 'old');
  },
  'with nothing to train with, and too few minutes for anything': async (lang) => {
    const page = await openStrength(`hours="4" phase="build" lang="${lang}" equipment="none"`, 'strength');
    return page.typeIn('strength-minutes', '5');
  },
};

after(() => setViewport({ width: 800, height: 600 }));

for (const scheme of ['light', 'dark'] as const)
  for (const [lang, width] of [
    ['en', 1200],
    ['de', 320],
  ] as const)
    describe(`axe finds nothing in strength, ${scheme}, ${lang}, ${String(width)} pixels`, () => {
      before(() => setViewport({ width, height: 900 }));
      inScheme(scheme);

      for (const [state, open] of Object.entries(states))
        it(state, async () => {
          const page = await open(lang);
          expect(await faultsOf(page)).to.deep.equal([]);
        });
    });

it('axe finds a fault of strength where there is one', async () => {
  const page = await (await first('en')).opens('lifted');
  for (const label of page.all('.strength label:not(:has(input))')) label.remove();
  expect((await faultsOf(page)).join()).to.match(/label: Form elements must have labels/);
});

describeWithMedia('forced colours', { 'forced-colors': 'active' }, () => {
  it('leave fields, lists, boxes and buttons with an edge, and notes with theirs', async () => {
    const page = await (await first('en')).opensAll();
    await page.dragTo('strength-minutes', 30);
    for (const selector of ['.typed.text', 'select', '.box', 'button.act', '.entry']) {
      const { borderTopStyle, borderTopWidth } = getComputedStyle(page.find(`.strength ${selector}`));
      expect(`${selector} ${borderTopStyle} ${borderTopWidth}`).to.equal(`${selector} solid 1px`);
    }
    for (const note of page.all('.strength .concrete-notes li'))
      expect(getComputedStyle(note).borderInlineStartStyle).to.equal('solid');
  });
});
