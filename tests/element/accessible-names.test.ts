import { expect, fixture } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import en from '../../shared/locales/en.json';
import { accessibleNames, accessibleValues } from './accessibility-tree.js';
import { needs } from './instruments.js';
import { openPlanner, PlannerPage } from './planner-page.js';

const setInputs = 'hours="4.25" level="new" strength-cap="95"';
const inputs: readonly (readonly [name: string, value?: string])[] = [
  ['button: Hours a week: less'],
  ['textbox: Hours a week', '4.25'],
  ['button: Hours a week: more'],
  ['slider: Hours a week', '4 hours 15 minutes'],
  ['combobox: Season phase', 'Build'],
  ['slider: Season phase', 'Build'],
  ['combobox: Athlete level', 'New'],
  ['slider: Athlete level', 'New'],
  ['combobox: Target event', 'Half marathon'],
  ['button: Strength cap: less'],
  ['textbox: Strength cap', '95'],
  ['button: Strength cap: more'],
  ['slider: Strength cap', '95 minutes'],
];

const offSeason = 'hours="4" phase="off-season"';
const lists = [
  ['combobox: Pick how to cut 60 minutes of slow running', '60'],
  ['combobox: Pick how to cut 35 minutes of tempo running', '35'],
  ['combobox: Pick how to cut 50 minutes of cross-training', '50'],
  ['combobox: Pick how to cut 95 minutes of strength', '2 × 30 + 35'],
] as const;

/** In a name that comes from text on two lines WebKit leaves out the space between them. */
const unspaced = (line: string): string => line.replaceAll(' ', '');

describe('the names of things, in reading order', () => {
  it('of the regions, the headline and the picture', async () => {
    await openPlanner('hours="4"');
    const names = await accessibleNames(/^(?:region|heading|image|status)$/);
    const expected = [
      'region: Training week planner',
      'heading: Four hours in build: 75 minutes of strength, as 35 + 40.',
      'image: The week as a ring: Four hours in build: 70 minutes of slow running, 35 minutes of tempo running, ' +
        '25 minutes of intervals, 35 minutes of cross-training, and 75 minutes of strength.',
      'region: Rules that acted',
      'heading: Rules that acted',
      'status: ',
    ];
    expect(names.map(unspaced)).to.deep.equal(expected.map(unspaced));
  });

  it('of the inputs', async () => {
    await openPlanner(setInputs);
    const names = await accessibleNames(/^(?:slider|textbox|combobox|button)$/);
    expect(names.slice(0, inputs.length)).to.deep.equal(inputs.map(([name]) => name));
  });

  it('of the lists of sessions', async () => {
    await openPlanner(offSeason);
    expect((await accessibleNames(/^combobox$/)).slice(3)).to.deep.equal(lists.map(([name]) => name));
  });

  it('of an open derivation', async () => {
    const page = await openPlanner();
    await page.ask('strength_minutes');
    expect(await accessibleNames(/^region$/)).to.deep.equal([
      'region: Training week planner',
      'region: Why 72 minutes of strength?',
      'region: Rules that acted',
    ]);
  });
});

needs('accessibleValues', () => {
  describe('what things are set to', () => {
    it('of the inputs', async () => {
      await openPlanner(setInputs);
      const said = (await accessibleValues(/^(?:slider|textbox|combobox|button)$/)).slice(0, inputs.length);
      expect(said).to.deep.equal(inputs.map(([name, value = '']) => `${name} = ${value}`));
    });

    it('of the lists of sessions', async () => {
      await openPlanner(offSeason);
      const said = (await accessibleValues(/^combobox$/)).slice(3);
      expect(said).to.deep.equal(lists.map(([name, value]) => `${name} = ${value}`));
    });
  });
});

describe('the table of the week', () => {
  it('has a caption, a heading for each column and each row, and as many cells as headings', async () => {
    const page = await openPlanner();
    const table = page.find<HTMLTableElement>('.week');
    expect(table.caption?.textContent.trim()).to.equal('The week by kind of training');
    const heads = ['kind', 'share', 'exact', 'planned', 'sessions'] as const;
    expect(page.texts('.week thead th[scope="col"]')).to.deep.equal(heads.map((head) => en[`table.${head}`]));
    expect(page.all('.week th[scope="row"]')).to.have.length(6);
    for (const row of table.rows) expect(row.cells).to.have.length(5);
  });
});

describe('tabbing through a planner', () => {
  it('goes through everything in the order in which it stands, with a focus to be seen, and out again', async () => {
    const holder = await fixture<HTMLElement>(
      '<div><a href="#before">before</a><weekwright-planner></weekwright-planner><a href="#after">after</a></div>',
    );
    const element = holder.querySelector('weekwright-planner');
    const [before, after] = holder.querySelectorAll('a');
    if (!element || !before || !after) throw new Error('the page is not whole');
    const page = await new PlannerPage(element).settled();
    const controls = page.all('button, input, select, summary, a').filter((control) => control.checkVisibility());
    before.focus();
    for (const control of controls) {
      await page.press('Tab');
      expect(page.hasFocus(control), control.outerHTML).to.equal(true);
      const { outlineStyle, outlineWidth } = getComputedStyle(control);
      expect(`${outlineStyle} ${outlineWidth}`).to.equal('solid 2px');
    }
    await page.press('Tab');
    expect(document.activeElement === after).to.equal(true);
    await sendKeys({ down: 'Shift' });
    await page.press('Tab');
    await sendKeys({ up: 'Shift' });
    expect(page.hasFocus(controls.at(-1))).to.equal(true);
  });
});
