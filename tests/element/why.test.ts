import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { openPlanner, type PlannerPage } from './planner-page.js';
import { collapsed } from './text.js';

// Wide enough for every column of the table.
before(() => setViewport({ width: 1280, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

const title = (page: PlannerPage): string => collapsed(page.find('#why-title'));
const line = (page: PlannerPage, term: string): string => {
  const group = page.all('#why dl > div').find((each) => collapsed(each).startsWith(term));
  return group ? collapsed(group) : '';
};
const reading = (page: PlannerPage, quantity: string): HTMLButtonElement =>
  page.find(`#why [data-quantity="${quantity}"]`);

describe('a number that is asked why', () => {
  it('opens its derivation: formula, values, rules, status and reason', async () => {
    const page = await openPlanner('hours="8"');
    expect(page.why.hidden).to.equal(true);
    await page.ask('strength_minutes');
    expect(page.why.hidden).to.equal(false);
    expect(title(page)).to.equal('Why 120 minutes of strength?');
    expect(line(page, 'Formula')).to.include('minutes a week × share of strength');
    expect(line(page, 'With')).to.include('minutes a week: 480 minutes').and.include('share of strength: 30%');
    expect(line(page, 'Rules')).to.include('Strength cap: 144 minutes → 120 minutes');
    expect(line(page, 'Rules')).to.include('common practice, no published source');
  });

  it('names published sources where there are some', async () => {
    const page = await openPlanner('phase="taper"');
    await page.ask('strength_share');
    await page.click(reading(page, 'taper_strength_share'));
    expect(line(page, 'Sources')).to.match(/doi:10\./);
  });

  it('takes the focus to the title, and says that it is open', async () => {
    const page = await openPlanner();
    await page.ask('slow_minutes');
    expect(page.hasFocus(page.find('#why-title'))).to.equal(true);
    expect(page.number('slow_minutes').getAttribute('aria-expanded')).to.equal('true');
    expect(page.number('tempo_minutes').getAttribute('aria-expanded')).to.equal('false');
    expect(page.number('slow_minutes').getAttribute('aria-controls')).to.equal(page.why.id);
  });

  it('can be any number of the table', async () => {
    const page = await openPlanner();
    const quantities = page.all('.week [data-quantity]').map(({ dataset }) => dataset['quantity'] ?? '');
    expect(quantities).to.have.length(18);
    for (const quantity of quantities) {
      await page.click(page.number(quantity));
      expect(page.why.hidden, quantity).to.equal(false);
      expect(title(page), quantity).to.match(/\?$/);
    }
  });

  it('closes when it is pressed again', async () => {
    const page = await openPlanner();
    await page.click(page.number('slow_minutes'));
    await page.click(page.number('slow_minutes'));
    expect(page.why.hidden).to.equal(true);
    expect(page.hasFocus(page.number('slow_minutes'))).to.equal(true);
  });

  it('follows the sliders while it is open', async () => {
    const page = await openPlanner('hours="4"');
    await page.ask('strength_minutes');
    expect(title(page)).to.equal('Why 72 minutes of strength?');
    await page.drag('hours', 5);
    expect(title(page)).to.equal('Why 90 minutes of strength?');
    await page.drag('phase', 0);
    expect(title(page)).to.equal('Why 120 minutes of strength?');
  });
});

describe('going on from a derivation', () => {
  it('asks the values that it reads in turn, down to what was set by hand', async () => {
    const page = await openPlanner('hours="4"');
    await page.ask('strength_minutes');
    await page.click(reading(page, 'weekly_minutes'));
    expect(title(page)).to.equal('Minutes a week: why 240 minutes?');
    expect(page.hasFocus(page.find('#why-title'))).to.equal(true);
    await page.click(reading(page, 'weekly_hours'));
    expect(title(page)).to.equal('Hours a week: why 4 hours?');
    expect(collapsed(page.why)).to.include('Set by hand, from 30 minutes to 20 hours.');
  });
});

describe('closing a derivation gives the focus back to the number it was asked from', () => {
  const ways: Readonly<Record<string, (page: PlannerPage) => Promise<unknown>>> = {
    'by Escape': (page) => page.press('Escape'),
    'by its button': (page) => page.click(page.find('#why header button')),
  };

  for (const [way, close] of Object.entries(ways)) {
    it(way, async () => {
      const page = await openPlanner();
      await page.ask('strength_rounded');
      await close(page);
      expect(page.why.hidden).to.equal(true);
      expect(page.hasFocus(page.number('strength_rounded'))).to.equal(true);
    });

    it(`${way}, after going on to a value that is not in the table`, async () => {
      const page = await openPlanner();
      await page.ask('strength_minutes');
      await page.click(reading(page, 'weekly_minutes'));
      await close(page);
      expect(page.why.hidden).to.equal(true);
      expect(page.hasFocus(page.number('strength_minutes'))).to.equal(true);
    });
  }

  it('and Escape does not close a dialog around the planner as well', async () => {
    const dialog = document.createElement('dialog');
    dialog.style.inlineSize = '700px'; // all columns, with a scrollbar too
    document.body.append(dialog);
    const page = await openPlanner();
    dialog.append(page.element);
    dialog.showModal();
    await page.ask('strength_minutes');
    await page.press('Escape');
    expect(page.why.hidden).to.equal(true);
    expect(dialog.open).to.equal(true);
    await page.press('Escape');
    expect(dialog.open, 'a second one is for the dialog').to.equal(false);
    dialog.remove();
  });
});
