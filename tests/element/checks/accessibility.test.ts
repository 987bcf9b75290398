import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { faultsOf } from '../axe.js';
import { describeWithMedia } from '../media.js';
import { inScheme } from '../scheme.js';
import { openChecks, questions, scene, type ChecksPage } from './checks-page.js';

type Open = (lang: string) => Promise<ChecksPage>;
const first: Open = (lang) => openChecks(`${scene} lang="${lang}"`, 'checks');
const told = { age: 67, hoursBefore: 2, longestRun: 20, weeks: [[100, 0, 100, 0, 100, 0, 100]] };

/** axe cannot tell the ground of what is scrolled away: for its eyes nothing scrolls. */
const plainly = new CSSStyleSheet();
plainly.replaceSync('.scroll { overflow: visible !important; inline-size: max-content; background: var(--ground) }');

async function faults(page: ChecksPage): Promise<string[]> {
  page.root.adoptedStyleSheets.push(plainly);
  const found = await faultsOf(page);
  page.root.adoptedStyleSheets.pop();
  return found;
}

/** Every state that checks can be in, and how a person gets there. */
const states: Readonly<Record<string, Open>> = {
  'as they start': first,
  'with everything open': async (lang) => (await first(lang)).opensAll(),
  'with all told, days, and everything open': async (lang) => {
    const page = await openChecks(`${scene} lang="${lang}"`, 'checks week');
    await page.until(() => page.ids.includes('rest-days'), 'the week is laid');
    page.element.checks = told;
    await page.settled();
    return page.opensAll();
  },
  'with texts that are no values': async (lang) => {
    const page = await (await first(lang)).opens('own');
    await page.typeIn('checks-age', 'old');
    await page.typeIn('checks-effort-slow', '11');
    return page.tellWeeks('1 2 3');
  },
  'with a property that is faulty': async (lang) => {
    const page = await first(lang);
    page.element.checks = { age: 3, weeks: [[1, 2]] };
    return page.settled();
  },
  'with advice and every caution': async (lang) =>
    (await (await first(lang)).opens('start')).ticks('known-disease', 'pain', 'pregnant', 'recent-birth', 'low-energy'),
  stopped: async (lang) => (await (await first(lang)).opens('start')).ticks('symptoms'),
  'stopped by everything at once': async (lang) => (await (await first(lang)).opens('start')).ticks(...questions),
};

after(() => setViewport({ width: 800, height: 600 }));

for (const scheme of ['light', 'dark'] as const)
  for (const [lang, width] of [
    ['en', 1200],
    ['de', 320],
  ] as const)
    describe(`axe finds nothing in checks, ${scheme}, ${lang}, ${String(width)} pixels`, () => {
      before(() => setViewport({ width, height: 900 }));
      inScheme(scheme);

      for (const [state, open] of Object.entries(states))
        it(state, async () => {
          const page = await open(lang);
          expect(await faults(page)).to.deep.equal([]);
        });
    });

it('axe finds a fault of checks where there is one', async () => {
  const page = await first('en');
  for (const label of page.all('.checks label[for]')) label.remove();
  expect((await faultsOf(page)).join()).to.match(/label: Form elements must have labels/);
});

it('tables of checks that scroll are reached by keyboard, and have a name', async () => {
  await setViewport({ width: 320, height: 900 });
  const page = await openChecks(scene, 'checks week');
  await page.until(() => page.ids.includes('rest-days'), 'the week is laid');
  await page.opens('load');
  const tables = page.all('.checks .scroll');
  expect(tables).to.have.length(2);
  const faulty = tables.filter(({ tabIndex, role, ariaLabel }) => tabIndex !== 0 || role !== 'region' || !ariaLabel);
  expect(faulty.map(({ outerHTML }) => outerHTML.slice(0, 60))).to.deep.equal([]);
  expect(new Set(tables.map(({ ariaLabel }) => ariaLabel)).size).to.equal(2);
});

describeWithMedia('forced colours', { 'forced-colors': 'active' }, () => {
  it('leave fields, boxes and buttons with an edge', async () => {
    const page = await (await first('en')).opensAll();
    await page.ticks('pain');
    for (const selector of ['.typed.text', 'textarea.typed', '.box', 'button.act']) {
      const { borderTopStyle, borderTopWidth } = getComputedStyle(page.find(`.checks ${selector}`));
      expect(`${selector} ${borderTopStyle} ${borderTopWidth}`).to.equal(`${selector} solid 1px`);
    }
  });

  it('leave the level of a check to be told by its line and its word', async () => {
    const page = await first('en');
    page.element.checks = { longestRun: 10 };
    await page.settled();
    const line = (id: string): string => {
      const { borderInlineStartStyle: style, borderInlineStartWidth: width } = getComputedStyle(page.check(id));
      return `${style} ${width}`;
    };
    expect([line('activity'), line('hard-minutes'), line('longest-run')]).to.deep.equal([
      ...['solid 3px', 'dashed 3px', 'solid 6px'],
    ]);
    expect(page.partOf('longest-run', 'level')).to.equal('caution');
  });

  it('leave the advice to stop with the widest line', async () => {
    const page = await (await first('en')).opens('start');
    await page.ticks('symptoms');
    const { borderInlineStartStyle, borderInlineStartWidth } = getComputedStyle(page.find('.advice'));
    expect(`${borderInlineStartStyle} ${borderInlineStartWidth}`).to.equal('solid 6px');
  });
});
