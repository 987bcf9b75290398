import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { accessibleControls } from '../accessibility-tree.js';
import { tabTo } from '../by-keys.js';
import { onRealDay } from './on-day.js';
import { openRecord } from './record-page.js';
import { openTables, TablePage } from './table-page.js';

after(onRealDay);

const table = 'Date,Kind,Minutes,Notes\n2026-11-30,easy run,45,x\n2026-12-01,yoga,20,y';

/** Sessions ticked off, one beyond the plan, every box open and a table half understood. */
async function openWhole(): Promise<TablePage> {
  const base = await openRecord(undefined, 'week record');
  const page = new TablePage(base.element);
  await page.ticks(0, 2);
  await page.adds('Tempo running', '15');
  await page.opensAll();
  return page.enters(table);
}

describe('by keys alone', () => {
  it('every control of what was done is reached, in the order in which it stands', async () => {
    const page = await openWhole();
    const controls = page
      .all('.record :is(button, select, input, textarea, summary, [tabindex="0"])')
      .filter((each) => each.checkVisibility());
    const [first] = controls;
    if (!first) throw new Error('there are no controls');
    // Two steps, seven boxes to tick, nine fields and one to take out, three and a button to add, one to lay; three boxes.
    expect(controls.length).to.be.greaterThan(2 + 7 + 9 + 1 + 4 + 1 + 3);
    await page.goTo(first);
    const reached: Element[] = [first];
    for (let press = 1; press < controls.length; press += 1) {
      await sendKeys({ press: 'Tab' });
      if (page.root.activeElement) reached.push(page.root.activeElement);
    }
    expect(reached.map((each) => controls.findIndex((control) => control === each))).to.deep.equal(
      controls.map((_, at) => at),
    );
  });

  it('a session is ticked off and back, and the focus stays on its box', async () => {
    const page = await openRecord();
    await page.goTo(page.box(2));
    for (const isTicked of [true, false, true]) {
      await page.press(' ');
      expect([page.box(2).checked, page.hasFocus(page.box(2))]).to.deep.equal([isTicked, true]);
    }
  });

  it('boxes open and close', async () => {
    const page = await openRecord();
    for (const name of ['weeks', 'in', 'out'] as const)
      for (const key of ['Enter', ' ']) {
        const box = page.find<HTMLDetailsElement>(`.record-${name}`);
        await page.goTo(page.find(`.record-${name} > summary`));
        await page.press(key);
        expect(box.open, `${name} ${key}`).to.equal(true);
        await page.press(key);
        expect(box.open, `${name} ${key}`).to.equal(false);
      }
  });

  it('shows where it is: every control has an outline', async () => {
    const page = await openWhole();
    for (const selector of ['.record-what input', '.typed.text', 'select', 'textarea', 'button.act', 'summary']) {
      const control = page.find(`.record ${selector}`);
      await tabTo(page, control);
      const { outlineStyle, outlineWidth } = getComputedStyle(control);
      expect(outlineStyle, selector).to.not.equal('none');
      expect(Number.parseFloat(outlineWidth), selector).to.be.at.least(2);
    }
  });
});

describe('the focus is never lost', () => {
  const isInRecord = (page: TablePage): boolean => (page.root.activeElement?.closest('.record') ?? null) !== null;

  it('when the minutes of what was done are emptied, and its fields go', async () => {
    const page = await openWhole();
    await page.typesIn(page.field(2, 'minutes'), '');
    expect([page.has('#record-planned-2-minutes'), isInRecord(page)]).to.deep.equal([false, true]);
  });

  it('when a day is chosen by which what was done is another session', async () => {
    const page = await openWhole();
    await page.goTo(page.dayField(2));
    await page.picks(page.dayField(2), 'Sunday');
    // The run of Sunday is the one that was done now.
    expect([page.ticked[2], page.ticked[6], isInRecord(page)]).to.deep.equal([false, true, true]);
  });

  it('when a session is taken out, or a table is taken over', async () => {
    const page = await openWhole();
    await page.goTo(page.button('Take out'));
    await page.press('Enter');
    expect(page.hasFocus(page.find('#record-title'))).to.equal(true);
    await page.goTo(page.takeButton);
    await page.press('Enter');
    expect(page.hasFocus(page.find('#record-title'))).to.equal(true);
  });

  it('when a table is entered that cannot be read', async () => {
    const page = await openWhole();
    await page.goTo(page.list('Kind'));
    await page.enters('Date,Kind\n2026-11-30,"x');
    expect(isInRecord(page)).to.equal(true);
  });
});

describe('what a listener is given', () => {
  it('is a name for every control', async () => {
    await openWhole();
    const controls = await accessibleControls();
    expect(controls.length).to.be.greaterThan(20);
    expect(controls.filter(({ name }) => name.trim() === '')).to.deep.equal([]);
  });

  it('is whose the fields are, which are called alike', async () => {
    const page = await openWhole();
    expect(page.all('.record-fields').map(({ role, ariaLabel }) => `${role ?? ''}: ${ariaLabel ?? ''}`)).to.deep.equal([
      ...['group: Tempo running, Monday', 'group: Slow running, Wednesday', 'group: Tempo running, beyond the plan'],
    ]);
  });

  it('is one place for what is told, empty until something is', async () => {
    const page = await openTables();
    expect([page.all('.record > [role="status"]').length, page.told]).to.deep.equal([1, '']);
  });

  it('has ids that stand once, and headings in order', async () => {
    const page = await openWhole();
    const ids = page.all('.record [id]').map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) < index)).to.deep.equal([]);
    expect(page.all('.record :is(h1, h2, h3, h4, h5)').map(({ tagName }) => tagName)).to.deep.equal(['H3']);
  });
});
