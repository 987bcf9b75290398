import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import type { BoardPage } from './board-page.js';
import { expectWeek, openBoard } from './open-board.js';

/** What a row of the proposal has on each day. */
function proposed(page: BoardPage, row: 'Before' | 'After'): string[] {
  const rows = page.all<HTMLTableRowElement>('.proposal tbody tr');
  const found = rows.find(({ cells: [head] }) => head && collapsed(head) === row);
  if (!found) throw new Error(`there is no ${row}`);
  return [...found.cells].slice(1).map((cell) => [...cell.children].map(collapsed).join(' + '));
}

const inShort = {
  slow: 'slow running',
  tempo: 'tempo running',
  intervals: 'intervals',
  cross: 'cross-training',
  strength: 'strength',
};

/** The days of the week as a row of the proposal has them. */
const asRow = (page: BoardPage): string[] =>
  (page.week.days ?? []).map((sessions) =>
    sessions.map(({ category, minutes }) => `${inShort[category]} ${String(minutes)}`).join(' + '),
  );

const fellOut = async (page: BoardPage, day: number): Promise<void> => {
  await page.openDay(day);
  await page.click(page.toolsButton('This day fell out'));
};
const missed = async (page: BoardPage): Promise<void> => {
  await page.openCard('intervals', 2);
  await page.click(page.toolsButton('Was missed'));
};

describe('a day that fell out', () => {
  it('shows the week before and after, with how many sessions move; nothing is changed yet', async () => {
    const page = await openBoard();
    const { week } = page;
    const before = asRow(page);
    const events = await page.heard(() => fellOut(page, 5));
    expect([events, page.week]).to.deep.equal([[], week]);
    expect(collapsed(page.find('#proposal-title'))).to.equal('Saturday fell out: the week laid again');
    expect(page.hasFocus(page.find('#proposal-title'))).to.equal(true);
    expect(proposed(page, 'Before')).to.deep.equal(before);
    expect(proposed(page, 'After')[5]).to.equal('');
    expect(collapsed(page.find('.proposal'))).to.match(
      /(One session moves|\d+ sessions move)\. This week costs \d+; no week costs less\./,
    );
    expect(page.all('.proposal mark').length, 'what moves stands out').to.be.greaterThan(0);
  });

  it('taken, the week is that one: the day stays free, and the page hears of it once', async () => {
    const page = await openBoard();
    await fellOut(page, 5);
    const after = proposed(page, 'After');
    const { week } = await page.heardOnce(() => page.click(page.proposalButton('Take it')));
    expect(week?.wishes.free).to.deep.equal([5]);
    expect(asRow(page)).to.deep.equal(after);
    expect([page.proposal, page.dayTotal(5)]).to.deep.equal([null, 'stays free']);
    expect(page.hasFocus(page.find('#board-title'))).to.equal(true);
    expectWeek(page);
  });

  it('left, nothing has changed, and nothing is fired', async () => {
    const page = await openBoard();
    const { week } = page;
    await fellOut(page, 5);
    const events = await page.heard(() => page.click(page.proposalButton('Leave it')));
    expect([events, page.week, page.proposal]).to.deep.equal([[], week, null]);
    expect(page.hasFocus(page.find('#board-title'))).to.equal(true);
  });

  it('is used again when it is back', async () => {
    const page = await openBoard();
    await fellOut(page, 5);
    await page.click(page.proposalButton('Take it'));
    await page.openDay(5);
    await page.heardOnce(() => page.click(page.toolsButton('Use this day again')));
    expect([page.week.wishes.free, page.week.cost]).to.deep.equal([[], 2]);
    expectWeek(page);
  });

  it('takes the sessions that were to stay there with it', async () => {
    const page = await openBoard();
    await page.does('strength', 5, 'Stay on this day');
    await fellOut(page, 5);
    await page.click(page.proposalButton('Take it'));
    await page.laid();
    expect(page.week.wishes.pinned).to.deep.equal([]);
    expect(page.shownDays[5]).to.deep.equal([]);
  });

  it('without which nothing fits is told so, before it is taken', async () => {
    const page = await openBoard('hours="4" phase="base" days="0,0,0,60,0,90,120"');
    await fellOut(page, 6);
    await page.until(() => /cannot hold together/.test(collapsed(page.find('.proposal'))), 'it is told');
    await page.click(page.proposalButton('Leave it'));
    expect(page.week.state).to.equal('laid');
  });
});

describe('a day kept free', () => {
  it('has no session, at once', async () => {
    const page = await openBoard();
    await page.openDay(0);
    const { week } = await page.heardOnce(() => page.click(page.toolsButton('Keep this day free')));
    expect(week?.wishes.free).to.deep.equal([0]);
    await page.laid();
    expect([page.shownDays[0], page.dayTotal(0)]).to.deep.equal([[], 'stays free']);
    expectWeek(page);
  });
});

describe('a session that was missed', () => {
  it('shows before and after: what lies before it is done, the rest is laid on the days after', async () => {
    const page = await openBoard();
    const { week } = page;
    const events = await page.heard(() => missed(page));
    expect([events, page.week]).to.deep.equal([[], week]);
    expect(collapsed(page.find('#proposal-title'))).to.equal('Intervals on Wednesday was missed: the week laid again');
    expect(proposed(page, 'After')[0]).to.equal(proposed(page, 'Before')[0]);
    expect(proposed(page, 'After')[2]).to.equal('slow running 20');
    expect(proposed(page, 'After').slice(3).join()).to.include('intervals 2');
  });

  it('taken, the done sessions stay, the days that are over are marked, and the page hears of it once', async () => {
    const page = await openBoard();
    await missed(page);
    const after = proposed(page, 'After');
    const { week } = await page.heardOnce(() => page.click(page.proposalButton('Take it')));
    expect(week?.wishes.passed).to.equal(3);
    expect(week?.wishes.done.map(({ category, day }) => [category, day])).to.deep.equal([
      ['tempo', 0],
      ['slow', 2],
    ]);
    expect(asRow(page)).to.deep.equal(after);
    expect(page.card('tempo', 0).dataset['state']).to.equal('done');
    expect(page.all('.day').map(({ dataset }) => dataset['passed'])).to.deep.equal(
      [0, 1, 2, 3, 4, 5, 6].map((day) => String(day < 3)),
    );
    expectWeek(page);
  });

  it('left, nothing has changed, and nothing is fired', async () => {
    const page = await openBoard();
    const { week } = page;
    await missed(page);
    const events = await page.heard(() => page.click(page.proposalButton('Leave it')));
    expect([events, page.week, page.proposal]).to.deep.equal([[], week, null]);
  });
});
