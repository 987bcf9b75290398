import { expect } from '@open-wc/testing';
import { openSheet } from '../sheet/sheet-page.js';
import { BoardPage } from './board-page.js';
import { expectWeek, openBoard, scene } from './open-board.js';

async function open(attributes = scene, panels = 'split week sheet'): Promise<BoardPage> {
  const page = await openBoard(attributes, panels);
  await page.until(() => page.root.querySelector('.grid') !== null, 'the sheet comes');
  return page.laid();
}
const can = (page: BoardPage): boolean[] => ['Undo', 'Redo'].map((name) => page.tool(name).ariaDisabled === 'false');
const undo = async (page: BoardPage): Promise<BoardPage> => (await page.click(page.tool('Undo'))).laid();
const redo = async (page: BoardPage): Promise<BoardPage> => (await page.click(page.tool('Redo'))).laid();
const shownCost = (page: BoardPage, column = 0): number => Number.parseFloat(page.shown('week_cost', column).text);
const moveStrength = async (page: BoardPage): Promise<void> => {
  await page.pickUp('strength', 5);
  await page.press('ArrowRight', ' ');
  await page.laid();
};

for (const panels of ['split week sheet', 'split sheet week', 'sheet week', 'week sheet'])
  describe(`panels="${panels}"`, () => {
    it('show the same week on the board and in the sheet, with nothing to undo at first', async () => {
      const page = await open(scene, panels);
      expect(shownCost(page)).to.equal(page.week.cost);
      expect(can(page)).to.deep.equal([false, false]);
      expectWeek(page);
    });
  });

describe('a panel that comes later', () => {
  it('the sheet takes over the week of the board, with what was set by hand', async () => {
    const page = await openBoard();
    await moveStrength(page);
    const { wishes, days } = page.week;
    page.element.panels = 'split week sheet';
    await page.until(() => page.root.querySelector('.grid') !== null, 'the sheet comes');
    await page.laid();
    expect([page.week.wishes, page.week.days]).to.deep.equal([wishes, days]);
    expect([shownCost(page), ...can(page)]).to.deep.equal([page.week.cost, false, false]);
  });

  it('the board lays the week of the sheet, with what was set there', async () => {
    const page = await openSheet(scene);
    await page.set(0, 'hours', 5);
    page.element.panels = 'split week sheet';
    const board = new BoardPage(page.element);
    await board.until(() => board.root.querySelector('.board .day') !== null, 'the board comes');
    await board.laid();
    expect(board.element.plan?.inputs.hours).to.equal(5);
    await board.until(() => board.root.querySelector('td[data-row="week_cost"]') !== null, 'the sheet has its cost');
    expect(shownCost(board)).to.equal(board.week.cost);
    expectWeek(board);
  });
});

describe('the week in the sheet', () => {
  it('follows the board: its cost is that of the plan after every act', async () => {
    const page = await open();
    await page.typeMinutes(2, '0');
    await page.laid();
    expect(page.week.cost).to.be.greaterThan(2);
    expect(shownCost(page)).to.equal(page.week.cost);
    await page.choose(page.wishList('rest-days'), 4);
    await page.laid();
    expect(shownCost(page)).to.equal(page.week.cost);
  });

  it('has the minutes of the days as inputs; moved there they are those of the board', async () => {
    const page = await open();
    await page.openGroup('inputs');
    const events = await page.heard(() => page.override('monday_minutes', 0, '30'));
    await page.laid();
    expect(events.at(-1)?.detail.week?.wishes.days).to.deep.equal([30, 0, 45, 60, 0, 90, 120]);
    expect(page.typedMinutes(0).value).to.equal('30');
    expect(shownCost(page)).to.equal(page.week.cost);
    expectWeek(page);
  });

  it('has the minutes of the board', async () => {
    const page = await open();
    await page.openGroup('inputs');
    await page.typeMinutes(0, '75');
    expect(page.shown('monday_minutes').text).to.equal('75');
    expect(page.shown('tuesday_minutes').text).to.equal('0');
  });

  it('has no cost where nothing fits', async () => {
    const page = await open();
    await page.typeMinutes(6, '0');
    await page.typeMinutes(5, '0');
    await page.laid();
    expect(page.week.state).to.equal('nothing-fits');
    expect(page.shown('week_cost').text).to.not.match(/^\d/);
  });
});

describe('undo with a board', () => {
  it('takes back a move, and does it again', async () => {
    const page = await open();
    const before = page.shownDays;
    await moveStrength(page);
    const after = page.shownDays;
    expect(can(page)).to.deep.equal([true, false]);
    await undo(page);
    expect([page.shownDays, page.week.wishes.pinned]).to.deep.equal([before, []]);
    expect(can(page)).to.deep.equal([false, true]);
    await redo(page);
    expect(page.shownDays).to.deep.equal(after);
    expect(page.week.wishes.pinned).to.deep.equal([{ category: 'strength', minutes: 50, day: 6 }]);
    expectWeek(page);
  });

  it('is one step for each act, of every kind', async () => {
    const page = await open();
    const states = [JSON.stringify(page.week.wishes)];
    const acts: readonly (() => Promise<unknown>)[] = [
      () => page.typeMinutes(0, '75'),
      () => page.choose(page.wishList('rest-days'), 2),
      () => page.does('tempo', 0, 'Done'),
      () => page.drag('hours', 4.5),
      () => page.click(page.kindButton('cross', 'Add a session')),
    ];
    for (const act of acts) {
      await act();
      await page.laid();
      states.push(JSON.stringify({ ...page.week.wishes }));
    }
    for (const state of states.slice(0, -1).reverse()) {
      await undo(page);
      expect(JSON.stringify(page.week.wishes)).to.equal(state);
    }
    expect(can(page)).to.deep.equal([false, true]);
  });

  it('of a drag of a slider of a day is one step', async () => {
    const page = await open();
    const slider = page.minutesSlider(3);
    await page.slide(slider, 65, 70, 75, 80);
    await page.letGo(slider);
    await page.laid();
    await undo(page);
    expect(page.week.wishes.days[3]).to.equal(60);
  });
});

describe('scenarios', () => {
  it('have weeks of their own', async () => {
    const page = await open();
    await page.add();
    await page.click(page.radio(1));
    await moveStrength(page);
    await page.typeMinutes(0, '90');
    await page.laid();
    expect([page.week.wishes.days[0], page.week.wishes.pinned.length]).to.deep.equal([90, 1]);
    expect(shownCost(page, 1)).to.equal(page.week.cost);
    await page.click(page.radio(0));
    await page.laid();
    expect([page.week.wishes.days[0], page.week.wishes.pinned.length]).to.deep.equal([60, 0]);
    expect(shownCost(page, 0)).to.equal(page.week.cost);
    expectWeek(page);
    await page.click(page.radio(1));
    await page.laid();
    expect([page.week.wishes.days[0], page.week.wishes.pinned.length]).to.deep.equal([90, 1]);
  });
});
