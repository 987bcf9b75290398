import { expect } from '@open-wc/testing';
import { categoryIds } from '../../../src/core.js';
import { onRealDay } from './on-day.js';
import { openRecord, scene, type RecordPage } from './record-page.js';

after(onRealDay);

const extras = (page: RecordPage): string[] =>
  page.texts('.record-sessions > li:has(.quiet) > .record-what').map((each) => each.replace(/\s+/g, ' '));

describe('a session that is added', () => {
  it('by Enter is the planned one of its kind that is open, whichever day it was done', async () => {
    const page = await openRecord();
    await page.adds('Cross-training', '40', 'Tuesday');
    expect(page.doneOf(3)).to.deep.equal(['Tuesday', '40', '']);
    expect([extras(page), page.newMinutes.value, page.hasFocus(page.newMinutes)]).to.deep.equal([[], '', true]);
    expect(page.lead).to.contain('1 of 7 sessions done, 40 of 240 minutes.');
  });

  it('by the button does the same', async () => {
    const page = await openRecord();
    await page.picks(page.newList('kind'), 'Intervals');
    await page.fill(page.newMinutes, '30');
    await page.presses('Add a session');
    expect([page.doneOf(1), page.hasFocus(page.button('Add a session'))]).to.deep.equal([
      ['Wednesday', '30', ''],
      true,
    ]);
  });

  it('is for today where no day is chosen; in another week for its Monday', async () => {
    const page = await openRecord();
    expect(page.newList('day').selectedOptions[0]?.text).to.equal('Wednesday');
    await page.presses('The week before');
    expect(page.newList('day').selectedOptions[0]?.text).to.equal('Monday');
  });

  it('is the one nearest in length where two of its kind are open', async () => {
    const page = await openRecord();
    await page.adds('Strength', '45', 'Friday');
    expect([page.ticked, page.doneOf(5)]).to.deep.equal([
      [false, false, false, false, false, true, false],
      ['Friday', '45', ''],
    ]);
  });

  it('beyond the plan is told so, and counts among the minutes but not among the sessions of the plan', async () => {
    const page = await openRecord();
    await page.adds('Tempo running', '35', 'Monday');
    await page.adds('Tempo running', '15', 'Tuesday');
    expect(extras(page)).to.deep.equal(['Tempo running beyond the plan']);
    expect(page.doneOf(0, 'extra')).to.deep.equal(['Tuesday', '15', '']);
    expect(page.lead).to.contain('1 of 7 sessions done, 50 of 240 minutes.');
    expect(page.kind('tempo')).to.deep.equal([35, 50, 0]);
  });

  for (const [text, note] of [
    ['', 'Minutes is ""; it has to be a number.'],
    ['long', 'Minutes is "long"; it has to be a number.'],
    ['0', 'Minutes is 0; allowed: 1 to 1,440.'],
    ['1500', 'Minutes is 1500; allowed: 1 to 1,440.'],
    ['20.5', 'Minutes is 20.5; allowed: steps of 1.'],
    ['1:00', 'Minutes is "1:00"; it has to be a number.'],
  ] as const)
    it(`of "${text}" minutes is none: that is told, and what was typed stays`, async () => {
      const page = await openRecord();
      await page.adds('Slow running', text);
      const { newMinutes } = page;
      expect([newMinutes.value, newMinutes.ariaInvalid, page.newNote, page.told]).to.deep.equal([
        ...[text, 'true', note, note],
      ]);
      expect(page.root.getElementById(newMinutes.getAttribute('aria-describedby') ?? '')?.textContent).to.equal(note);
      expect(page.lead).to.contain('0 of 7');
      await page.typesIn(newMinutes, '20');
      expect([page.newNote, page.newMinutes.value, page.newMinutes.ariaInvalid]).to.deep.equal(['', '', 'false']);
      expect(page.lead).to.contain('1 of 7 sessions done, 20 of 240 minutes.');
    });
});

describe('a session beyond the plan', () => {
  const withExtra = async (): Promise<RecordPage> => {
    const page = await openRecord();
    await page.ticks(0);
    await page.adds('Tempo running', '15', 'Tuesday');
    return page;
  };

  it('has its day, minutes and effort changed', async () => {
    const page = await withExtra();
    await page.picks(page.dayField(0, 'extra'), 'Saturday');
    await page.typesIn(page.field(0, 'minutes', 'extra'), '22');
    await page.typesIn(page.field(0, 'effort', 'extra'), '8.5');
    expect(page.doneOf(0, 'extra')).to.deep.equal(['Saturday', '22', '8.5']);
    expect(page.kind('tempo')).to.deep.equal([35, 57, 0]);
  });

  it('is taken out, by a button that says what it takes out', async () => {
    const page = await withExtra();
    const button = page.button('Take out');
    expect(button.ariaLabel).to.equal('Take out: Tempo running');
    await page.click(button);
    expect([extras(page), page.kind('tempo')]).to.deep.equal([[], [35, 35, 0]]);
    expect(page.hasFocus(page.find('#record-title')), 'the focus').to.equal(true);
  });

  it('becomes the planned one where that is unticked: done is what was done', async () => {
    const page = await withExtra();
    await page.ticks(0);
    expect([page.ticked[0], page.doneOf(0), extras(page)]).to.deep.equal([true, ['Tuesday', '15', ''], []]);
  });
});

describe('the table by kind', () => {
  it('adds up: what is left is what is planned without the sessions that were done', async () => {
    const page = await openRecord();
    await page.ticks(1, 2, 4);
    await page.typesIn(page.field(2, 'minutes'), '30');
    await page.adds('Intervals', '10', 'Friday');
    expect(page.rows('.record-kinds')).to.deep.equal([
      ['Kind', 'Planned', 'Done', 'Left'],
      ['Slow running', '70 min', '30 min', '50 min'],
      ['Tempo running', '35 min', '0 min', '35 min'],
      ['Intervals', '25 min', '35 min', '0 min'],
      ['Cross-training', '35 min', '0 min', '35 min'],
      ['Strength', '75 min', '25 min', '50 min'],
    ]);
    const sums = [0, 1, 2].map((column) => categoryIds.reduce((sum, id) => sum + (page.kind(id)[column] ?? 0), 0));
    expect(sums).to.deep.equal([240, 90, 170]);
    expect(page.lead).to.contain('3 of 7 sessions done, 90 of 240 minutes. Left: 50 minutes of slow running');
  });

  it('leaves out kinds that were neither planned nor done, and has them once they were', async () => {
    const page = await openRecord('hours="2" phase="base" days="60,0,45,60,0,90,120"');
    const kinds = (): string[] => page.rows('.record-kinds').map(([kind = '']) => kind);
    expect(kinds()).to.deep.equal(['Kind', 'Slow running', 'Tempo running', 'Strength']);
    await page.adds('Cross-training', '60');
    expect(kinds()).to.deep.equal(['Kind', 'Slow running', 'Tempo running', 'Cross-training', 'Strength']);
    expect(page.kind('cross')).to.deep.equal([0, 60, 0]);
  });

  it('follows the plan when its hours change; what was done stays', async () => {
    const page = await openRecord(scene);
    await page.ticks(0);
    await page.drag('hours', 5);
    await page.laid();
    const planned = categoryIds.reduce(
      (sum, id) => sum + (page.has(`.record-kinds [data-category="${id}"]`) ? (page.kind(id)[0] ?? 0) : 0),
      0,
    );
    expect(planned).to.equal(300);
    expect(page.kind('tempo')[1]).to.equal(35);
    expect(page.lead).to.contain('35 of 300 minutes');
  });
});
