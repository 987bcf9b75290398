import { expect } from '@open-wc/testing';
import type { BoardPage } from './board-page.js';
import { expectWeek, openBoard } from './open-board.js';

/** What the week costs with a card pinned to each day, by the plan itself. */
const costs = (page: BoardPage): Promise<string[]> =>
  page.openCard('strength', 5).then(() => page.texts('#board-tools .moves small'));

describe('a card moved by keys', () => {
  it('is picked up by Space: it says what was picked up, and from where', async () => {
    const page = await openBoard();
    await page.pickUp('strength', 5);
    expect(page.told).to.equal('Picked up: strength, 50 minutes, from Saturday.');
    expect(page.card('strength', 5).dataset['carried']).to.equal('true');
    expect(page.tools.hidden, 'nothing is opened').to.equal(true);
  });

  it('tells for each day what the week would cost there, and shows it over the day', async () => {
    const page = await openBoard();
    const expected = await costs(page);
    expect(expected[6]).to.equal('2, the same');
    expect(expected[1]).to.equal('does not fit');
    await page.press('Escape');
    await page.pickUp('strength', 5);
    for (const [day, name] of [
      [4, 'Friday'],
      [3, 'Thursday'],
      [2, 'Wednesday'],
      [1, 'Tuesday'],
      [0, 'Monday'],
    ] as const) {
      await page.press('ArrowLeft');
      expect(page.dayCarriedOver).to.equal(day);
      expect(page.carried).to.equal(expected[day]);
      expect(page.told).to.equal(`${name}: ${expected[day] ?? ''}.`);
    }
    await page.press('ArrowLeft');
    expect(page.dayCarriedOver, 'before Monday is nothing').to.equal(0);
  });

  it('is carried by the arrows up and down too', async () => {
    const page = await openBoard();
    await page.pickUp('tempo', 0);
    await page.press('ArrowDown', 'ArrowDown', 'ArrowUp');
    expect(page.dayCarriedOver).to.equal(1);
  });

  for (const key of [' ', 'Enter'])
    it(`put down by ${key} it stays there, the focus with it, and the page hears of it once`, async () => {
      const page = await openBoard();
      await page.pickUp('strength', 5);
      await page.press('ArrowRight');
      const { week } = await page.heardOnce(() => page.press(key));
      expect(week?.wishes.pinned).to.deep.equal([{ category: 'strength', minutes: 50, day: 6 }]);
      expect(week).to.deep.equal(page.week);
      expect(page.told).to.equal('Put down on Sunday.');
      expect(page.card('strength', 6).dataset['state']).to.equal('pinned');
      expect(page.hasFocus(page.card('strength', 6))).to.equal(true);
      expect(page.tools.hidden, 'nothing is opened').to.equal(true);
      expectWeek(page);
    });

  it('costs what was told of the day', async () => {
    const page = await openBoard();
    await page.pickUp('strength', 5);
    await page.press('ArrowRight');
    const told = Number(/^Sunday: (\d+)/.exec(page.told)?.[1]);
    await page.press(' ');
    expect(page.week.cost).to.equal(told);
  });

  it('can be carried on from where it was put down', async () => {
    const page = await openBoard();
    await page.pickUp('strength', 5);
    await page.press('ArrowRight', ' ', ' ', 'ArrowLeft', ' ');
    expect(page.week.wishes.pinned).to.deep.equal([{ category: 'strength', minutes: 50, day: 5 }]);
    expect(page.hasFocus(page.card('strength', 5))).to.equal(true);
  });

  it('put down where it was it changes nothing', async () => {
    const page = await openBoard();
    const { week } = page;
    await page.pickUp('tempo', 0);
    const events = await page.heard(() => page.press('ArrowRight', 'ArrowLeft', ' '));
    expect(events).to.deep.equal([]);
    expect(page.week).to.equal(week);
    expect(page.hasFocus(page.card('tempo', 0))).to.equal(true);
  });

  it('Escape leaves it where it was: nothing changes, and nothing is fired', async () => {
    const page = await openBoard();
    const { week } = page;
    await page.pickUp('tempo', 0);
    const events = await page.heard(() => page.press('ArrowRight', 'ArrowRight', 'Escape'));
    expect(events).to.deep.equal([]);
    expect(page.week).to.equal(week);
    expect(page.told).to.equal('Left where it was.');
    expect([page.dayCarriedOver, page.carried]).to.deep.equal([null, '']);
    expect(page.hasFocus(page.card('tempo', 0))).to.equal(true);
  });

  it('Tab leaves it where it was, and goes on', async () => {
    const page = await openBoard();
    const { week } = page;
    await page.pickUp('tempo', 0);
    await page.press('ArrowRight', 'Tab');
    expect([page.dayCarriedOver, page.week]).to.deep.equal([null, week]);
    expect(page.hasFocus(page.card('tempo', 0))).to.equal(false);
  });

  it('on a day that has no room it leads to a week that cannot be, with ways out', async () => {
    const page = await openBoard();
    await page.pickUp('strength', 5);
    await page.press('ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft');
    expect(page.carried).to.equal('does not fit');
    await page.press(' ');
    await page.laid();
    expect(page.week.state).to.equal('nothing-fits');
    expect(page.all('.conflict button').length).to.be.greaterThan(0);
  });

  it('done it is not picked up', async () => {
    const page = await openBoard();
    await page.does('tempo', 0, 'Done');
    await page.goTo(page.card('tempo', 0));
    await page.press(' ');
    expect(page.dayCarriedOver).to.equal(null);
    expect(page.told).to.not.include('Picked up');
  });

  it('keeps the keys from a dialog and a page around it', async () => {
    const page = await openBoard();
    const keys: string[] = [];
    const note = ({ key }: KeyboardEvent): number => keys.push(key);
    document.addEventListener('keydown', note);
    await page.pickUp('tempo', 0);
    await page.press('ArrowDown', 'Escape');
    document.removeEventListener('keydown', note);
    expect(keys).to.deep.equal([]);
  });
});

describe('from right to left', () => {
  for (const [lang, key, day] of [
    ['ar', 'ArrowLeft', 1],
    ['ar', 'ArrowDown', 1],
    ['en', 'ArrowRight', 1],
  ] as const)
    it(`${key} carries on to the next day, ${lang}`, async () => {
      const page = await openBoard('hours="4" phase="base" days="60,0,45,60,0,90,120" lang="' + lang + '"');
      await page.pickUp('tempo', 0);
      await page.press(key);
      expect(page.dayCarriedOver).to.equal(day);
    });
});
