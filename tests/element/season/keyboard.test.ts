import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { accessibleControls, accessibleNames } from '../accessibility-tree.js';
import { tabTo } from '../by-keys.js';
import { openSeason, type SeasonPage } from './season-page.js';

const crowded = {
  weeks: 8,
  phases: ['off-season', 'base', 'base', 'build'].map((phase) => ({ phase, weeks: null })),
  events: [
    { date: '2027-03-14', event: '10k' },
    { date: '2027-03-21', event: '5k' },
  ],
  byHand: [{ start: '2027-02-15', hours: 1, reason: 'ill' }],
};

async function openCrowded(): Promise<SeasonPage> {
  const page = await openSeason(undefined, 'season');
  page.element.season = crowded;
  await page.settled();
  return page.openAll();
}

/** What has the focus, the date fields of the browser as one. */
const focused = (page: SeasonPage): Element | null => page.root.activeElement;

describe('by keys alone', () => {
  it('every control of the season is reached', async () => {
    const page = await openCrowded();
    const controls = new Set<Element>(
      page.all('.season-panel :is(button, select, input, summary)').filter((each) => each.checkVisibility()),
    );
    expect(controls.size).to.be.greaterThan(50);
    const start = page.typedIn('season-date');
    await page.goTo(start);
    const reached = new Set<Element>([start]);
    for (let press = 0; press < 2 * controls.size + 20; press += 1) {
      await sendKeys({ press: 'Tab' });
      const now = focused(page);
      if (!now) break;
      reached.add(now);
    }
    expect(
      [...controls].filter((each) => !reached.has(each)).map((each) => each.outerHTML.slice(0, 120)),
    ).to.deep.equal([]);
  });

  it('shows where it is: every control has an outline', async () => {
    const page = await openCrowded();
    const without: string[] = [];
    for (const selector of [
      '.season-inputs .typed',
      '.season-inputs input[type="range"]',
      'summary',
      'button.act',
      'select',
    ]) {
      const control = page.find<HTMLElement>(`.season-panel ${selector}`);
      await tabTo(page, control);
      const { outlineStyle, outlineWidth } = getComputedStyle(control);
      if (outlineStyle === 'none' || Number.parseFloat(outlineWidth) < 2) without.push(`${selector} ${outlineStyle}`);
    }
    // A field to type into has its outline around the whole entry.
    expect(without.filter((each) => !each.startsWith('.season-inputs .typed'))).to.deep.equal([]);
  });

  it('a box opens, a way out is taken, and the focus is not lost', async () => {
    const page = await openSeason();
    page.element.season = { weeks: 8 };
    await page.settled();
    await page.goTo(page.find('.season-panel > .season-notes button'));
    await page.press('Enter');
    expect(page.notes.join()).to.not.contain('not reached');
    // The button is gone with what it helped against: the focus is in the planner all the same.
    expect(focused(page)).to.not.equal(null);
  });

  it('a phase is moved, and the focus stays with a button of the list', async () => {
    const page = await (await openSeason()).openBox('shape');
    await page.goTo(page.find('.season-phases [aria-label="Move phase 1, base, later"]'));
    await page.press('Enter');
    expect(page.season.phases[1]?.phase).to.equal('base');
    expect(focused(page)?.closest('.season-phases') === null).to.equal(false);
  });

  it('a date is typed', async () => {
    const page = await openSeason();
    await page.goTo(page.typedIn('season-date'));
    await page.press('ArrowUp');
    await page.press('Tab', 'Tab', 'Tab', 'Tab');
    expect(page.season.wishes.date).to.not.equal('2027-04-11');
    expect(page.hintOf('season-date')).to.equal('');
  });
});

describe('what a screen reader is given of a season', () => {
  it('is a name for every control', async () => {
    await openCrowded();
    const controls = await accessibleControls();
    expect(controls.length).to.be.greaterThan(40);
    expect(controls.filter(({ name }) => name.trim() === '')).to.deep.equal([]);
  });

  it('is a name of its own for each', async () => {
    await openCrowded();
    const names = await accessibleNames(/^(?:button|combobox|slider|textbox|region)$/);
    expect(names.length).to.be.greaterThan(40);
    expect(names.filter((name, index) => names.indexOf(name) < index)).to.deep.equal([]);
  });

  it('has headings in order', async () => {
    const page = await openCrowded();
    const levels = page.all('.season-panel :is(h1, h2, h3, h4, h5, h6)').map(({ tagName }) => Number(tagName.at(1)));
    expect(levels[0]).to.equal(3);
    for (const [index, level] of levels.entries())
      if (index > 0) expect(level - (levels[index - 1] ?? 0), levels.join()).to.be.at.most(1);
  });

  it('has a place for what is told before anything is told', async () => {
    const page = await openSeason();
    expect(page.all('.season-panel > [role="status"]')).to.have.length(1);
    expect(page.told).to.equal('');
  });

  it('has ids that stand once', async () => {
    const page = await openCrowded();
    const ids = page.all('[id]').map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) < index)).to.deep.equal([]);
  });
});
