import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { categoryIds } from '../../../src/core.js';
import { shownPlan } from '../planner-page.js';
import { collapsed } from '../text.js';
import { sum } from '../week.js';
import { expectWeek, openBoard } from './open-board.js';

after(() => setViewport({ width: 800, height: 600 }));

describe('the week on its days', () => {
  it('is there at once: seven days, Monday first, with the minutes of the page and the sessions of the plan', async () => {
    const page = await openBoard();
    expect(page.texts('.day h4 .long')).to.deep.equal(
      'Monday Tuesday Wednesday Thursday Friday Saturday Sunday'.split(' '),
    );
    expect(page.week.wishes.days).to.deep.equal([60, 0, 45, 60, 0, 90, 120]);
    expect(page.all('.day').map((_, day) => page.typedMinutes(day).value)).to.deep.equal(
      page.week.wishes.days.map(String),
    );
    expectWeek(page);
  });

  it('says first how many sessions on how many days, what that costs, and that no week costs less', async () => {
    const page = await openBoard();
    const { days, cost } = page.week;
    expect(days?.flat()).to.have.length(7);
    expect(cost).to.equal(2);
    expect(page.verdict).to.equal('7 sessions on 5 days. This week costs 2; no week costs less.');
  });

  it('has what each day holds of its minutes under it; a day without any is off', async () => {
    const page = await openBoard();
    expect(page.all('.day').map((_, day) => page.dayTotal(day))).to.deep.equal([
      '35 of 60 min',
      'day off',
      '45 of 45 min',
      '60 of 60 min',
      'day off',
      '50 of 90 min',
      '50 of 120 min',
    ]);
    expect(page.all('.day').map(({ dataset }) => dataset['free'])).to.deep.equal(
      page.week.wishes.days.map((minutes) => String(minutes === 0)),
    );
  });

  it('has each kind against its minutes, and the split panel has the same sessions', async () => {
    const page = await openBoard();
    const { rounded } = shownPlan(page);
    for (const category of categoryIds) {
      const sessions = page.week.sessions[category];
      const total = sessions.reduce((minutes, each) => minutes + each, 0);
      expect(total, 'nothing is off in this week').to.equal(rounded[category]);
      expect(page.kindLine(category)).to.deep.equal([`${total} min`, 'as planned', sum(sessions)]);
      expect(page.row(category).sessions).to.equal(sum(sessions));
    }
  });

  it('lists what clashes with its cost, and each clash tells its reason when asked', async () => {
    const page = await openBoard();
    const lines = page.texts('.clashes summary');
    expect(lines).to.deep.equal(['1 More than one session on Wednesday.', '1 More than one session on Thursday.']);
    await page.click(page.at('.clashes summary', 0));
    expect(collapsed(page.find('.clashes details[open] > p'))).to.match(/One session a day is easier.*assumption/i);
  });

  it('says which comes first where a run and strength share a day, and only there', async () => {
    const without = await openBoard();
    expect(without.root.querySelector('.order')).to.equal(null);
    const page = await openBoard('hours="4" phase="base" days="0,0,0,60,0,90,120"');
    expect(page.shownDays.some((day) => day.length > 1 && day.at(-1)?.category === 'strength')).to.equal(true);
    expect(collapsed(page.find('.order summary'))).to.match(/run and strength/i);
  });

  it('keeps its days side by side where there is room, else one under the other', async () => {
    await setViewport({ width: 1200, height: 900 });
    const page = await openBoard();
    const tops = (): number => new Set(page.all('.day').map((day) => day.getBoundingClientRect().top)).size;
    expect(tops()).to.equal(1);
    await setViewport({ width: 320, height: 640 });
    await page.settled();
    expect(tops()).to.equal(7);
    expect(document.documentElement.scrollWidth).to.be.at.most(320);
  });
});

describe('the hours of the week', () => {
  it('lay it again: the board, the table and the plan stay one', async () => {
    const page = await openBoard();
    const { week } = await page.heardOnce(() => page.drag('hours', 5));
    expect(week).to.deep.equal(page.week);
    expectWeek(page);
    for (const category of categoryIds) expect(page.row(category).sessions).to.equal(sum(page.week.sessions[category]));
  });

  it('set by the page are no act: the week follows, and nothing is fired', async () => {
    const page = await openBoard();
    const events = await page.heard(async () => {
      page.element.hours = 5;
      await page.laid();
    });
    expect(events).to.deep.equal([]);
    expectWeek(page);
  });
});

it('lengths picked in the split panel are those on the days', async () => {
  const page = await openBoard();
  const list = page.sessionList('strength');
  const index = [...list.options].findIndex(({ text }) => /3 × 25/.test(text));
  const { week } = await page.heardOnce(() => page.choose(list, index));
  expect(week?.sessions.strength).to.deep.equal([25, 25, 25]);
  expectWeek(page, { strength: [25, 25, 25] });
});
