import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import type { BoardPage } from './board-page.js';
import { expectWeek, openBoard } from './open-board.js';

const tooLittle = 'hours="4" phase="base" days="30,0,0,30,0,30,60"';
const ways = (page: BoardPage): HTMLElement[] => page.all('.conflict button');

describe('a week that cannot be', () => {
  it('is told first, without a cost and without cards', async () => {
    const page = await openBoard(tooLittle);
    expect(page.week.state).to.equal('nothing-fits');
    expect(page.verdict).to.equal('These wishes cannot hold together.');
    expect(page.shownDays.flat()).to.deep.equal([]);
    expect(page.root.querySelector('.kinds, .clashes')).to.equal(null);
    expectWeek(page);
  });

  it('has the wishes that cannot hold together, in words', async () => {
    const page = await openBoard(tooLittle);
    const lines = page.texts('.conflict li');
    expect(lines).to.include('70 minutes of slow running').and.to.include('75 minutes of strength');
    expect(lines).to.include('Monday has 30 minutes');
    expect(lines.join()).to.match(/Tuesday.*Wednesday.*Friday.* off|Tuesday is off/);
    expect(page.find('.conflict').getAttribute('aria-labelledby')).to.equal(page.find('.conflict h4').id);
  });

  it('has each way out as a button, the cheapest first; four at once, the others when asked', async () => {
    const page = await openBoard(tooLittle);
    const { waysOut } = page.week.conflict ?? { waysOut: [] };
    expect(ways(page)).to.have.length(waysOut.length);
    expect(page.all('.conflict > .acts button')).to.have.length(4);
    const costs = waysOut.map(({ cost }) => cost);
    expect(costs[0]).to.equal(Math.min(...costs));
    expect(collapsed(page.find('.conflict button'))).to.equal('60 more minutes on Tuesday');
  });

  it('still has the sessions of the split panel: how the hours are divided is as it was', async () => {
    const page = await openBoard(tooLittle);
    expect(page.headline).to.match(/^Four hours in base: 75 minutes of strength/);
  });
});

const faulty: Readonly<Record<string, (page: BoardPage) => Promise<unknown>>> = {
  'days with too little time': (page) => page.typeMinutes(0, '60'),
  'a long run on a day off': (page) => page.choose(page.wishList('long-run'), 2),
  'too many rest days': (page) => page.choose(page.wishList('rest-days'), 6),
  'one session a day where there are five days': (page) => page.choose(page.wishList('sessions-a-day'), 0),
  'a card on a day off': async (page) => {
    await page.pickUp('tempo', 0);
    await page.press('ArrowRight', ' ');
  },
};

for (const [name, act] of Object.entries(faulty))
  describe(name, () => {
    const open = async (): Promise<BoardPage> => {
      const page = await openBoard(name === 'days with too little time' ? tooLittle : undefined);
      await act(page);
      return page.laid();
    };

    it('every button resolves it, at the cost that the plan has for it', async function () {
      // A page for each of up to eight buttons.
      this.timeout(60_000);
      const first = await open();
      expect(first.week.state).to.equal('nothing-fits');
      const { waysOut } = first.week.conflict ?? { waysOut: [] };
      expect(waysOut.length).to.be.greaterThan(0);
      for (const [index, { cost }] of waysOut.entries()) {
        const page = index === 0 ? first : await open();
        const more = page.root.querySelector<HTMLElement>('.conflict details:not([open]) > summary');
        if (more && index > 3) await page.click(more);
        const button = ways(page)[index];
        if (!button) throw new Error('a button is missing');
        await page.heardOnce(() => page.click(button));
        await page.laid();
        expect([page.week.state, page.week.cost]).to.deep.equal(['laid', cost]);
        expectWeek(page);
      }
    });
  });

it('a week that is mended by hand has its cards again', async () => {
  const page = await openBoard(tooLittle);
  await page.typeMinutes(1, '90');
  await page.laid();
  expect(page.week.state).to.equal('laid');
  expect(page.root.querySelector('.conflict')).to.equal(null);
  expectWeek(page);
});
