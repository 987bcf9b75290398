import { expect } from '@open-wc/testing';
import { builtInWeek } from '../../../src/training/method/built-in-week.js';
import { collapsed } from '../text.js';
import { expectWeek, openBoard } from './open-board.js';

const templates = builtInWeek.templates.map(({ minutes }) => minutes);

describe('minutes to begin with', () => {
  it('are the first template where the page says nothing, and the list shows which', async () => {
    const page = await openBoard('hours="4" phase="base"');
    expect(page.week.wishes.days).to.deep.equal(templates[0]);
    expect(page.wishList('template').selectedIndex).to.equal(0);
    expect(page.wishList('template').length).to.equal(templates.length);
    expectWeek(page);
  });

  it('are those of the page where it has them, and the list says that they are set below', async () => {
    const page = await openBoard();
    const list = page.wishList('template');
    expect(list.selectedOptions[0]?.text.trim()).to.equal('as set below');
    expect(list.length).to.equal(templates.length + 1);
  });

  for (const [index, minutes] of templates.entries())
    it(`are those of template ${String(index + 1)} when it is chosen: ${minutes.join()}`, async () => {
      const page = await openBoard();
      const { week } = await page.heardOnce(() => page.choose(page.wishList('template'), index + 1));
      expect(week?.wishes.days).to.deep.equal(minutes);
      await page.laid();
      expect(page.wishList('template').selectedIndex).to.equal(index);
      expect(page.all('.day').map((_, day) => page.typedMinutes(day).value)).to.deep.equal(minutes.map(String));
      expectWeek(page);
    });
});

describe('the day of the long run', () => {
  it('is any day at first', async () => {
    const page = await openBoard();
    expect([page.wishList('long-run').selectedOptions[0]?.text.trim(), page.week.wishes.longRun]).to.deep.equal([
      'any day',
      null,
    ]);
  });

  it('can be wished: the longest slow run is there', async () => {
    const page = await openBoard();
    const { week } = await page.heardOnce(() => page.choose(page.wishList('long-run'), 6));
    expect(week?.wishes.longRun).to.equal(5);
    const longest = Math.max(...page.week.sessions.slow);
    expect(page.shownDays[5]).to.deep.include({ category: 'slow', minutes: longest });
    expectWeek(page);
  });

  it('on a day off cannot be: the wishes that clash are told, with what would help', async () => {
    const page = await openBoard();
    await page.choose(page.wishList('long-run'), 2);
    await page.laid();
    expect(page.week.state).to.equal('nothing-fits');
    expect(page.texts('.conflict li').join(' '))
      .to.match(/the long run is on Tuesday/i)
      .and.match(/Tuesday.* off/i);
  });
});

describe('rest days and sessions a day', () => {
  it('begin with what the method has', async () => {
    const page = await openBoard();
    expect([page.wishList('rest-days').selectedIndex, page.wishList('sessions-a-day').selectedIndex + 1]).to.deep.equal(
      [builtInWeek.rest_days, builtInWeek.sessions_a_day],
    );
  });

  it('four rest days leave so many days free', async () => {
    const page = await openBoard();
    await page.choose(page.wishList('rest-days'), 4);
    await page.laid();
    expect(page.week.wishes.restDays).to.equal(4);
    expect(page.shownDays.filter(({ length }) => length === 0)).to.have.length(4);
    expectWeek(page);
  });

  it('one session a day is one session a day', async () => {
    const page = await openBoard('hours="4" phase="base" days="60,60,60,60,60,90,120"');
    await page.choose(page.wishList('sessions-a-day'), 0);
    await page.laid();
    expect(page.week.wishes.sessionsADay).to.equal(1);
    for (const cards of page.shownDays) expect(cards.length).to.be.at.most(1);
    expectWeek(page);
  });
});

describe('what was set by hand', () => {
  it('can be cleared, and only where there is some', async () => {
    const page = await openBoard();
    const clear = (): HTMLElement | undefined =>
      page.all('.wishes button').find((button) => collapsed(button) === 'Clear what was set by hand');
    expect(clear()).to.equal(undefined);
    const before = page.shownDays;
    await page.does('tempo', 0, 'Done');
    await page.press('Escape');
    await page.pickUp('strength', 5);
    await page.press('ArrowRight', ' ');
    await page.choose(page.wishList('rest-days'), 0);
    const button = clear();
    if (!button) throw new Error('there is no button to clear it');
    await page.heardOnce(() => page.click(button));
    expect([page.week.wishes.pinned, page.week.wishes.done, page.week.wishes.restDays]).to.deep.equal([[], [], 0]);
    expect(page.shownDays).to.deep.equal(before);
    expect(clear()).to.equal(undefined);
  });
});
