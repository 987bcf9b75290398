import { aTimeout, expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { accessibleNames, accessibleValues } from '../accessibility-tree.js';
import { faultsOf } from '../axe.js';
import { needs } from '../instruments.js';
import { inScheme } from '../scheme.js';
import { collapsed } from '../text.js';
import { openSheet, type SheetPage } from './sheet-page.js';

const plain = (lang: string): Promise<SheetPage> => openSheet(`hours="4" phase="base" lang="${lang}"`, 'sheet');
const button = (page: SheetPage, place: number): HTMLElement => page.at('.toolbar button', place);

/**
 * axe cannot tell the ground of what is scrolled away, lies under something or has a bar behind it: for its eyes nothing
 * scrolls and nothing lies over anything else, and the bars are as long as their place.
 */
const plainly = new CSSStyleSheet();
plainly.replaceSync(`
  .grid thead th { position: static !important }
  .inputs-table:has(.menu[open]) tbody { visibility: hidden }
  .menu .items { translate: 0 4em }
  .scroll, .columns-box { overflow: visible !important; max-block-size: none !important }
  .bar { background: color-mix(in oklab, var(--accent) 30%, var(--ground)) }
  .bar::before, .grid td::before { content: none !important }
`);

/** What axe finds, but for the three dots of a menu, which are no text to it; their colour is that of the text beside. */
async function faults(page: SheetPage): Promise<string[]> {
  page.root.adoptedStyleSheets.push(plainly);
  const found = await faultsOf(page);
  page.root.adoptedStyleSheets.pop();
  return found.filter((line) => !/summary\[aria-label.*only non-text characters$/.test(line));
}

/** Every state that a sheet can be in, and how a person gets there. */
const states: Readonly<Record<string, (lang: string) => Promise<SheetPage>>> = {
  'as it starts': plain,
  'with six scenarios': async (lang) => {
    const page = await plain(lang);
    for (let time = 0; time < 6; time += 1) await page.click(button(page, 0));
    return page;
  },
  'with details open and an override': async (lang) => {
    const page = await plain(lang);
    await page.click(button(page, 0));
    await page.override('strength_minutes', 1, '100');
    return page.open(page.cell('strength_minutes', 1));
  },
  'with a formula that is wrong': async (lang) => {
    const page = await plain(lang);
    await page.open(page.cell('strength_minutes'));
    await page.fill(page.formula, '2 * strenght_cap');
    return page.until(() => page.formula.ariaInvalid === 'true', 'the error is told');
  },
  'with a scenario without a plan': async (lang) => {
    const page = await plain(lang);
    return page.override('strength_minutes', 0, '500');
  },
  'with all groups and a block': async (lang) => {
    const page = await plain(lang);
    for (const id of ['rules', 'inputs', 'limits', 'splits']) await page.openGroup(id);
    await page.goTo(page.cell('strength_minutes'));
    return page.pressWith(['Shift'], 'ArrowDown', 'ArrowLeft');
  },
  'with the switches of a rule': async (lang) => {
    const page = await plain(lang);
    await page.openGroup('rules');
    return page.open(page.cell('rule strength-cap'));
  },
  'with the form of a new row': async (lang) => {
    const page = await plain(lang);
    await page.click(page.find('.sheet > .act'));
    await page.fill(page.find<HTMLInputElement>('#formula-row'), '1');
    return page.press('Enter');
  },
  'with the sweep and its table': async (lang) => {
    const page = await (await plain(lang)).askSheet('sweep');
    await page.click(page.find('.sweep-table summary'));
    return page;
  },
  'with a question worked backwards': async (lang) => (await plain(lang)).askSheet('backwards'),
  'with a wanted text that is none': async (lang) => {
    const page = await (await plain(lang)).askSheet('backwards');
    await page.fill(page.find<HTMLInputElement>('#back-wanted'), '?');
    return page.answered();
  },
  'with what moves it most': async (lang) => (await plain(lang)).askSheet('influence'),
  'with a menu open': async (lang) => {
    const page = await plain(lang);
    await page.click(button(page, 0));
    return page.click(page.menu(1));
  },
  'with a typed number that is none': async (lang) => {
    const page = await plain(lang);
    await page.fill(page.find<HTMLInputElement>('#a-hours'), 'abc');
    return page.press('Enter');
  },
};

// Six scenarios are in sight at once.
before(() => setViewport({ width: 1300, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

for (const scheme of ['light', 'dark'] as const)
  for (const lang of ['en', 'de'])
    describe(`axe finds nothing in a sheet, ${scheme}, ${lang}`, () => {
      inScheme(scheme);

      for (const [state, open] of Object.entries(states))
        it(state, async () => {
          const page = await open(lang);
          expect(await faults(page)).to.deep.equal([]);
        });
    });

it('axe finds a fault of the sheet where there is one', async () => {
  const page = await plain('en');
  page.find('#scenario-a').remove();
  for (const label of page.all('[id^="inputs-"]')) label.removeAttribute('id');
  expect((await faults(page)).join()).to.include('label: Form elements must have labels');
});

describe('what a screen reader is given', () => {
  const sliders = [
    ['Hours a week 4 h, base', '4 hours'],
    ['Hours a week 6 h, base', '6 hours'],
    ['Season phase 4 h, base', 'Base'],
    ['Season phase 6 h, base', 'Base'],
    ['Athlete level 4 h, base', 'Developing'],
    ['Athlete level 6 h, base', 'Developing'],
    ['Strength cap 4 h, base', '120 minutes'],
    ['Strength cap 6 h, base', '120 minutes'],
  ] as const;

  async function openTwo(): Promise<SheetPage> {
    const page = await openSheet('hours="4" phase="base"', 'sheet');
    await page.add();
    return page.set(1, 'hours', 6);
  }

  it('are sliders named by what they move and by their scenario', async () => {
    await openTwo();
    expect(await accessibleNames(/^slider$/)).to.deep.equal(sliders.map(([name]) => `slider: ${name}`));
  });

  needs('accessibleValues', () => {
    it('are sliders with what they are set to in words', async () => {
      await openTwo();
      const said = await accessibleValues(/^slider$/);
      expect(said).to.deep.equal(sliders.map(([name, value]) => `slider: ${name} = ${value}`));
    });
  });

  it('are a radio, a name and a menu for every scenario', async () => {
    await openTwo();
    const nodes = await accessibleNames(/^(?:radio|summary)$/);
    expect(nodes.filter((node) => node.startsWith('radio'))).to.deep.equal([
      'radio: On show above: 4 h, base',
      'radio: On show above: 6 h, base',
    ]);
    expect(nodes.join()).to.include('4 h, base: more').and.include('6 h, base: more');
  });

  it('is a grid with heads of rows and columns, and cells with their marks', async () => {
    const page = await openTwo();
    await page.override('strength_minutes', 1, '100');
    const grid = page.find<HTMLTableElement>('.grid');
    expect([grid.getAttribute('role'), grid.ariaMultiSelectable]).to.deep.equal(['grid', 'true']);
    expect(grid.caption && collapsed(grid.caption)).to.equal('Quantities of the scenarios');
    for (const row of grid.querySelectorAll<HTMLTableRowElement>('tr:not(.group, .detail)')) {
      expect(row.cells).to.have.length(3);
      expect(row.cells[0]?.matches('th[scope]')).to.equal(true);
    }
    expect(collapsed(page.cell('strength_minutes', 1))).to.equal('100 +28, set by hand');
  });

  it('are groups of buttons, regions and headings with names', async () => {
    const page = await openTwo();
    await page.open(page.cell('strength_minutes', 1));
    const regions = await accessibleNames(/^(?:group|region|heading)$/);
    expect(regions.join()).to.include('region: Strength in “6 h, base”').and.include('region: Ask the sheet');
    expect(regions.filter((each) => /: $/.test(each))).to.deep.equal([]);
  });
});

describe('status messages of a sheet', () => {
  it('do not chatter while a slider moves: one for twenty keys', async () => {
    const page = await openSheet('hours="4" phase="base"');
    const said: string[] = [];
    const statuses = page.all('[role="status"], [role="alert"], [aria-live]');
    const observer = new MutationObserver(([record]) => {
      if (record) said.push(collapsed(record.target));
    });
    for (const status of statuses) observer.observe(status, { childList: true, characterData: true, subtree: true });
    page.input(0, 'hours').focus();
    for (let key = 0; key < 20; key += 1) await page.press('ArrowRight');
    await aTimeout(900);
    observer.disconnect();
    expect(said, said.join(' | ')).to.have.length(1);
    expect(said[0]).to.include('Nine hours in base').and.not.include('value');
  });

  it('tell what came of an act on the whole sheet', async () => {
    const page = await openSheet('hours="4" phase="base"');
    const region = page.find('.message');
    expect([region.getAttribute('role'), collapsed(region)]).to.deep.equal(['status', '']);
    await page.add(6);
    expect(page.message).to.equal('6 scenarios at most');
    await page.set(0, 'hours', 5);
    expect(page.message).to.equal('');
  });
});
