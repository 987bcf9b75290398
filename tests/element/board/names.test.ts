import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { accessibleControls, accessibleNodes } from '../accessibility-tree.js';
import { needs } from '../instruments.js';
import { collapsed } from '../text.js';
import type { BoardPage } from './board-page.js';
import { openBoard, scene } from './open-board.js';

const open = (attributes = scene): Promise<BoardPage> => openBoard(attributes, 'week');
const days = 'Monday Tuesday Wednesday Thursday Friday Saturday Sunday'.split(' ');

after(() => setViewport({ width: 800, height: 600 }));

for (const width of [1200, 320])
  describe(`what a screen reader is given of a board, ${String(width)} pixels`, () => {
    before(() => setViewport({ width, height: 900 }));

    it('is a name for every control', async () => {
      const page = await open();
      await page.openCard('strength', 5);
      const controls = await accessibleControls();
      expect(controls.length).to.be.greaterThan(40);
      expect(controls.filter(({ name }) => name.trim() === '')).to.deep.equal([]);
    });

    it('is the day with each of its minutes', async () => {
      await open();
      for (const role of [/^slider$/, /^textbox$/]) {
        const fields = await accessibleNodes(role);
        expect(fields.map(({ name }) => name)).to.deep.equal(days.map((day) => `${day} min`));
      }
    });

    needs('accessibleValues', () => {
      it('is the minutes of a day in words', async () => {
        await open();
        expect((await accessibleNodes(/^slider$/)).map(({ value }) => value)).to.include('60 minutes');
      });
    });

    it('is the day as a button with its whole name', async () => {
      await open();
      const names = (await accessibleNodes(/^button$/)).map(({ name }) => name);
      expect(names.filter((name) => days.includes(name))).to.deep.equal(days);
    });

    it('is a card with kind and minutes, and the keys to move it', async () => {
      const page = await open();
      const card = page.card('strength', 5);
      expect(collapsed(card)).to.match(/^50 min strength$/i);
      const hint = page.find(`#${card.getAttribute('aria-describedby') ?? ''}`);
      expect(collapsed(hint)).to.match(/Space.*arrows.*Escape/);
      expect(hint.checkVisibility()).to.equal(true);
    });
  });

describe('the structure of a board', () => {
  it('has headings in order: the panel, then days and boxes', async () => {
    const page = await openBoard('hours="4" phase="base" days="30,0,0,30,0,30,60"');
    await page.openDay(5);
    const levels = page.all('.board :is(h1, h2, h3, h4, h5, h6)').map(({ tagName }) => Number(tagName.at(1)));
    expect(levels[0]).to.equal(3);
    for (const [index, level] of levels.entries())
      if (index > 0) expect(level - (levels[index - 1] ?? 0), levels.join()).to.be.at.most(1);
  });

  it('is a list of seven days, each with a list of sessions named by its day', async () => {
    const page = await open();
    const list = page.find('.days');
    expect([list.tagName, list.children.length]).to.deep.equal(['OL', 7]);
    for (const [day, cards] of page.all('.day .cards').entries()) {
      expect(cards.tagName).to.equal('UL');
      expect(cards.getAttribute('aria-labelledby')).to.equal(`day-${day}-name`);
      expect([...cards.children].every((child) => child.matches('li'))).to.equal(true);
    }
  });

  it('has a place for what is told before anything is told', async () => {
    const page = await open();
    expect(page.all('.board [role="status"]')).to.have.length(1);
    expect(page.told).to.equal('');
  });

  it('names its boxes', async () => {
    const page = await open();
    await page.openDay(5);
    for (const section of page.all('.board section')) {
      const title = page.find(`#${section.getAttribute('aria-labelledby') ?? 'nothing'}`);
      expect(collapsed(title)).to.match(/\S/);
    }
  });
});

for (const width of [1200, 760, 320])
  describe(`targets on a board, ${String(width)} pixels`, () => {
    before(() => setViewport({ width, height: 900 }));

    const states: Readonly<Record<string, (page: BoardPage) => Promise<unknown>>> = {
      'as it starts': (page) => page.settled(),
      'with the tools of a card': (page) => page.openCard('strength', 5),
      'with the tools of a day': (page) => page.openDay(5),
    };
    for (const [state, act] of Object.entries(states))
      it(`are 24 pixels wide and high at least, ${state}`, async () => {
        const page = await open();
        await act(page);
        const controls = page.all('.board :is(button, select, input, summary, .grip)');
        const small = controls.filter((each) => {
          const { width: wide, height } = each.getBoundingClientRect();
          return each.checkVisibility() && Math.min(wide, height) < 24;
        });
        expect(controls.length).to.be.greaterThan(30);
        expect(small.map((each) => `${each.tagName} ${each.id} ${collapsed(each)}`)).to.deep.equal([]);
      });
  });
