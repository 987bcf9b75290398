import { expect } from '@open-wc/testing';
import type { CategoryId } from '../../../src/core.js';
import { shownPlan } from '../planner-page.js';
import type { BoardPage } from './board-page.js';
import { expectWeek, openBoard } from './open-board.js';

const sessions = (page: BoardPage, category: CategoryId): readonly number[] => page.week.sessions[category];

/** What the line of a kind under the days has to say, from the plan. */
function expectLine(page: BoardPage, category: CategoryId): void {
  const laid = sessions(page, category).reduce((sum, each) => sum + each, 0);
  const off = laid - shownPlan(page).rounded[category];
  const against = off === 0 ? 'as planned' : `${String(Math.abs(off))} min ${off > 0 ? 'more' : 'less'}`;
  expect(page.kindLine(category).slice(0, 2)).to.deep.equal([`${laid} min`, against]);
}

/** An act on one kind: from its tools, what comes of its sessions, and whether the card stays on its day. */
interface Case {
  readonly name: string;
  readonly on: readonly [category: CategoryId, day: number];
  readonly gives: readonly number[];
  readonly stays: number | null;
}

// The week before: strength 25 on Thursday and 50 on Saturday, slow 20 on Wednesday and 50 on Sunday, tempo 35 on Monday.
const cases: readonly Case[] = [
  { name: '5 minutes shorter', on: ['strength', 5], gives: [25, 45], stays: 45 },
  { name: '5 minutes longer', on: ['strength', 5], gives: [25, 55], stays: 55 },
  { name: '5 minutes shorter', on: ['tempo', 0], gives: [30], stays: 30 },
  { name: 'Split in two', on: ['strength', 5], gives: [25, 25, 25], stays: null },
  { name: 'Split in two', on: ['tempo', 0], gives: [15, 20], stays: null },
  { name: 'Merge with Thursday', on: ['strength', 5], gives: [75], stays: 75 },
  { name: 'Merge with Sunday', on: ['slow', 2], gives: [70], stays: 70 },
  { name: 'Remove', on: ['strength', 3], gives: [50], stays: null },
  { name: 'Remove', on: ['cross', 3], gives: [], stays: null },
];

for (const { name, on, gives, stays } of cases)
  describe(`${name}: ${on.join(' on day ')}`, () => {
    it(`gives sessions of ${gives.join(' and ') || 'none'}; the page hears of it once, and the totals follow`, async () => {
      const [category, day] = on;
      // Room enough for what is longer.
      const page = await openBoard('hours="4" phase="base" days="60,0,45,60,0,90,120"');
      await page.openCard(category, day);
      const events = await page.heard(async () => {
        await page.click(page.toolsButton(name));
        await page.laid();
      });
      expect(new Set(events.map(({ detail }) => JSON.stringify(detail.week?.wishes))).size).to.equal(1);
      expect(page.week.wishes.sessions[category]).to.deep.equal(gives);
      if (stays !== null) expect(page.week.wishes.pinned).to.deep.equal([{ category, minutes: stays, day }]);
      expectWeek(page);
      if (page.week.state !== 'laid') return;
      expect(sessions(page, category)).to.deep.equal(gives);
      if (gives.length > 0) expectLine(page, category);
      if (stays !== null) expect(page.shownDays[day]).to.deep.include({ category, minutes: stays });
    });
  });

describe('the length of a session', () => {
  it('is moved with a slider: the session stays on its day, and the others of its kind as they are', async () => {
    const page = await openBoard();
    await page.openCard('strength', 5);
    expect(page.lengthSlider.ariaValueText).to.equal('50 minutes');
    page.lengthSlider.focus();
    const { week } = await page.heardOnce(() => page.press('ArrowLeft'));
    expect(week?.wishes.sessions.strength).to.deep.equal([25, 45]);
    expect(page.hasFocus(page.lengthSlider), 'the focus stays').to.equal(true);
    await page.press('ArrowLeft');
    expect(page.shownDays[5]).to.deep.include({ category: 'strength', minutes: 40 });
    expectLine(page, 'strength');
    expectWeek(page);
  });
});

describe('lengths that were settled', () => {
  it('are left to the week again by "Cut as fits best", which is there only then', async () => {
    const page = await openBoard();
    const before = page.shownDays;
    expect(page.texts('.kinds button')).to.not.include('Cut as fits best');
    await page.does('strength', 5, 'Split in two');
    expect(sessions(page, 'strength')).to.deep.equal([25, 25, 25]);
    await page.heardOnce(() => page.click(page.kindButton('strength', 'Cut as fits best')));
    expect(page.week.wishes.sessions).to.deep.equal({});
    expect(sessions(page, 'strength')).to.have.length(2);
    expect(page.week.cost).to.equal(2);
    expect(before.flat()).to.have.length(page.shownDays.flat().length);
    expectWeek(page);
  });

  it('no longer count where others are picked in the split panel', async () => {
    const page = await openBoard();
    await page.does('strength', 5, 'Split in two');
    const list = page.sessionList('strength');
    const index = [...list.options].findIndex(({ text }) => text.trim() === '30 + 45');
    await page.choose(list, index);
    expect(page.week.wishes.sessions).to.deep.equal({});
    expect(sessions(page, 'strength')).to.deep.equal([30, 45]);
  });

  it('stay when the hours change', async () => {
    const page = await openBoard();
    await page.does('strength', 5, 'Split in two');
    await page.drag('hours', 4.5);
    await page.laid();
    expect(sessions(page, 'strength')).to.deep.equal([25, 25, 25]);
    expectLine(page, 'strength');
    expectWeek(page);
  });
});

describe('a session added', () => {
  it('to a kind is one of usual length, on whichever day fits best', async () => {
    const page = await openBoard();
    const { week } = await page.heardOnce(() => page.click(page.kindButton('cross', 'Add a session')));
    expect(week?.wishes.sessions.cross).to.deep.equal([35, 40]);
    await page.laid();
    expectLine(page, 'cross');
    expectWeek(page);
  });

  it('to a day is there, and stays', async () => {
    const page = await openBoard();
    await page.openDay(5);
    await page.heardOnce(() => page.click(page.toolsButton('Cross-training')));
    await page.laid();
    expect(page.shownDays[5]).to.deep.include({ category: 'cross', minutes: 40 });
    expect(page.card('cross', 5).dataset['state']).to.equal('pinned');
    expectWeek(page);
  });

  it('to a day cannot be of a kind that is there', async () => {
    const page = await openBoard();
    await page.openDay(5);
    const button = page.toolsButton('Strength');
    expect(button.ariaDisabled).to.equal('true');
    expect(await page.heard(() => page.click(button))).to.deep.equal([]);
  });
});

describe('a card that stays, and one that is done', () => {
  it('stays on its day until it is let move again', async () => {
    const page = await openBoard();
    await page.does('tempo', 0, 'Stay on this day');
    expect(page.week.wishes.pinned).to.deep.equal([{ category: 'tempo', minutes: 35, day: 0 }]);
    expect([page.card('tempo', 0).dataset['state'], page.card('tempo', 0).textContent]).to.satisfy(
      ([state, text]: readonly string[]) => state === 'pinned' && /stays/.test(text ?? ''),
    );
    await page.does('tempo', 0, 'Let it move again');
    expect([page.week.wishes.pinned, page.card('tempo', 0).dataset['state']]).to.deep.equal([[], 'open']);
    expectWeek(page);
  });

  it('done is marked in words, can only be taken back, and stays when its day goes', async () => {
    const page = await openBoard();
    await page.does('tempo', 0, 'Done');
    expect(page.card('tempo', 0).textContent).to.match(/done/);
    expect(page.texts('#board-tools button')).to.deep.equal(['Not done yet', 'Close']);
    await page.typeMinutes(0, '0');
    await page.laid();
    expect(page.shownDays[0]).to.deep.include({ category: 'tempo', minutes: 35 });
    await page.typeMinutes(0, '60');
    await page.does('tempo', 0, 'Not done yet');
    expect([page.week.wishes.done, page.card('tempo', 0).dataset['state']]).to.deep.equal([[], 'open']);
    expectWeek(page);
  });
});
