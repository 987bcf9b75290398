import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import type { BoardPage } from './board-page.js';
import { expectWeek, openBoard, scene } from './open-board.js';

describe('the tools of a card', () => {
  it('open by a press and by Enter, with the focus on their title; pressed again they close', async () => {
    const page = await openBoard();
    await page.openCard('strength', 5);
    const title = page.find('#board-tools-title');
    expect(collapsed(title)).to.equal('Strength, 50 minutes, on Saturday');
    expect(page.hasFocus(title)).to.equal(true);
    expect(page.card('strength', 5).ariaExpanded).to.equal('true');
    await page.openCard('strength', 5);
    expect([page.tools.hidden, page.card('strength', 5).ariaExpanded]).to.deep.equal([true, 'false']);
    await page.goTo(page.card('tempo', 0));
    await page.press('Enter');
    expect(collapsed(page.find('#board-tools-title'))).to.equal('Tempo running, 35 minutes, on Monday');
  });

  for (const way of ['Escape', 'the button'] as const)
    it(`close by ${way}, and the focus is on the card again`, async () => {
      const page = await openBoard();
      await page.openCard('strength', 5);
      await (way === 'Escape' ? page.press('Escape') : page.click(page.toolsButton('Close')));
      expect(page.tools.hidden).to.equal(true);
      expect(page.hasFocus(page.card('strength', 5))).to.equal(true);
    });

  it('say what clashes where the card is, or that nothing does', async () => {
    const page = await openBoard();
    await page.openCard('tempo', 0);
    expect(collapsed(page.find('#board-tools > p'))).to.match(/^Nothing clashes here\./);
    await page.openCard('cross', 3);
    expect(collapsed(page.find('#board-tools > p'))).to.match(/^More than one session on Thursday\./);
  });

  it('have every day with what the week would cost there; the day of the card is pressed', async () => {
    const page = await openBoard();
    await page.openCard('strength', 5);
    await page.until(() => !page.texts('#board-tools .moves small').includes('…'), 'all days are tried out');
    expect(page.texts('#board-tools .moves button').map((text) => text.split(' ')[0])).to.deep.equal(
      'Monday Tuesday Wednesday Thursday Friday Saturday Sunday'.split(' '),
    );
    const pressed = page.all('#board-tools .moves button').map(({ ariaPressed }) => ariaPressed);
    expect(pressed).to.deep.equal([0, 1, 2, 3, 4, 5, 6].map((day) => String(day === 5)));
    expect(page.texts('#board-tools .moves small')[5]).to.equal('is here');
  });
});

describe('why a card is where it is', () => {
  const why = async (page: BoardPage): Promise<string> => {
    await page.until(() => !page.texts('#board-tools .moves small').includes('…'), 'all days are tried out');
    return collapsed(page.find('#board-tools > p'));
  };

  it('names the days that would do as well, as the buttons have them', async () => {
    const page = await openBoard();
    await page.openCard('tempo', 0);
    const text = await why(page);
    const same = page.texts('#board-tools .moves button').filter((each) => /the same$/.test(each));
    expect(same.length).to.be.greaterThan(0);
    for (const each of same) expect(text).to.match(new RegExp(`As good: .*${each.split(' ')[0] ?? ''}`));
  });

  it('says that others cost more only where they do: not of a card that was put on a worse day', async () => {
    const page = await openBoard();
    await page.openCard('intervals', 2);
    await page.click(page.moveButton(3));
    const text = await why(page);
    const less = page.texts('#board-tools .moves small').filter((each) => / less$/.test(each));
    expect(less.length, 'another day is better').to.be.greaterThan(0);
    expect(text).to.not.include('On any other day the week would cost more');
  });
});

describe('a day button', () => {
  it('moves the card to its day, where it stays; the tools go with it', async () => {
    const page = await openBoard();
    await page.openCard('strength', 5);
    const cost = Number.parseInt(collapsed(page.moveButton(0).querySelector('small') ?? page.root), 10);
    const { week } = await page.heardOnce(() => page.click(page.moveButton(0)));
    expect(week?.wishes.pinned).to.deep.equal([{ category: 'strength', minutes: 50, day: 0 }]);
    expect(page.card('strength', 0).dataset['state']).to.equal('pinned');
    expect(page.week.cost).to.equal(cost);
    expect(collapsed(page.find('#board-tools-title'))).to.equal('Strength, 50 minutes, on Monday');
    expect(page.hasFocus(page.find('#board-tools-title'))).to.equal(true);
    expectWeek(page);
  });

  it('of the day that the card is on does nothing', async () => {
    const page = await openBoard();
    await page.openCard('strength', 5);
    expect(await page.heard(() => page.click(page.moveButton(5)))).to.deep.equal([]);
  });

  it('takes a pin along: the card moves again from day to day, and is pinned once', async () => {
    const page = await openBoard(scene);
    await page.openCard('strength', 5);
    await page.click(page.moveButton(0));
    await page.click(page.moveButton(6));
    expect(page.week.wishes.pinned).to.deep.equal([{ category: 'strength', minutes: 50, day: 6 }]);
  });

  it('where one of the same kind lies makes that one move away', async () => {
    const page = await openBoard();
    await page.openCard('strength', 5);
    await page.click(page.moveButton(3));
    await page.laid();
    expect(page.week.wishes.pinned).to.deep.equal([{ category: 'strength', minutes: 50, day: 3 }]);
    expect(page.week.sessions.strength).to.have.length(2);
    expect(page.week.days?.[3]?.filter(({ category }) => category === 'strength')).to.have.length(1);
    expectWeek(page);
  });
});

it('as little as possible else moves: a card put on a day keeps the others where they cost the same', async () => {
  const page = await openBoard();
  const before = page.shownDays;
  await page.openCard('slow', 6);
  await page.click(page.moveButton(5));
  const moved = page.shownDays.flatMap((cards, day) =>
    cards.filter(({ category }) => !before[day]?.some((card) => card.category === category)),
  );
  expect(moved.map(({ category }) => category)).to.include('slow');
  expect(moved.length, JSON.stringify(moved)).to.be.at.most(2);
});
