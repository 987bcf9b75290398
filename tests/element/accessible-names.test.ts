import { expect, fixture } from '@open-wc/testing';
import { a11ySnapshot, sendKeys } from '@web/test-runner-commands';
import en from '../../shared/locales/en.json';
import { openPlanner, PlannerPage } from './planner-page.js';

/** What a screen reader is given. */
interface Node {
  readonly role: string;
  readonly name?: string;
  readonly value?: string | number;
  readonly valuetext?: string;
  readonly description?: string;
  readonly children?: readonly Node[];
}

const flat = (node: Node): Node[] => [node, ...(node.children ?? []).flatMap(flat)];

/** Every thing with a role, in reading order: "slider: Hours a week = 4 hours". */
async function tree(roles: RegExp): Promise<string[]> {
  const nodes = flat((await a11ySnapshot({})) as unknown as Node).filter(({ role }) => roles.test(role));
  return nodes.map(({ role, name, value, valuetext }) => {
    const said = valuetext ?? value;
    return `${role}: ${name ?? ''}${said === undefined ? '' : ` = ${String(said)}`}`;
  });
}

describe('the names of things, in reading order', () => {
  it('of the regions, the headline and the picture', async () => {
    await openPlanner('hours="4"');
    expect(await tree(/region|heading|image|group|table|status|^list$/)).to.deep.equal([
      'region: Training week planner',
      'heading: Four hours in build: 75 minutes of strength, as 35 + 40.',
      'image: The week as a ring: Four hours in build: 70 minutes of slow running, 35 minutes of tempo running, ' +
        '25 minutes of intervals, 35 minutes of cross-training, and 75 minutes of strength.',
      'region: Rules that acted',
      'heading: Rules that acted',
      'status: ',
    ]);
  });

  it('of the inputs', async () => {
    await openPlanner('hours="4.25" level="new" strength-cap="95"');
    const inputs = (await tree(/slider|textbox|combobox|button/)).slice(0, 13);
    expect(inputs).to.deep.equal([
      'button: Hours a week: less',
      'textbox: Hours a week = 4.25',
      'button: Hours a week: more',
      'slider: Hours a week = 4 hours 15 minutes',
      'combobox: Season phase = Build',
      'slider: Season phase = Build',
      'combobox: Athlete level = New',
      'slider: Athlete level = New',
      'combobox: Target event = Half marathon',
      'button: Strength cap: less',
      'textbox: Strength cap = 95',
      'button: Strength cap: more',
      'slider: Strength cap = 95 minutes',
    ]);
  });

  it('of the lists of sessions', async () => {
    await openPlanner('hours="4" phase="off-season"');
    expect((await tree(/combobox/)).slice(3)).to.deep.equal([
      'combobox: Pick how to cut 60 minutes of slow running = 60',
      'combobox: Pick how to cut 35 minutes of tempo running = 35',
      'combobox: Pick how to cut 50 minutes of cross-training = 50',
      'combobox: Pick how to cut 95 minutes of strength = 2 × 30 + 35',
    ]);
  });

  it('of an open derivation', async () => {
    const page = await openPlanner();
    await page.ask('strength_minutes');
    expect(await tree(/region/)).to.deep.equal([
      'region: Training week planner',
      'region: Why 72 minutes of strength?',
      'region: Rules that acted',
    ]);
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
