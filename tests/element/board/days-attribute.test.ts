import { expect } from '@open-wc/testing';
import { builtInWeek } from '../../../src/training/method/built-in-week.js';
import type { BoardPage } from './board-page.js';
import { expectWeek, openBoard } from './open-board.js';

const template = builtInWeek.templates[0]?.minutes;
const daysOf = ({ week }: BoardPage): readonly number[] => week.wishes.days;
const start = 'hours="4" phase="base"';

describe('the attribute days', () => {
  for (const text of ['60,0,45,60,0,90,120', '60 0 45 60 0 90 120', ' 60, 0, 45,60 , 0,90,120 '])
    it(`"${text}" is seven days`, async () => {
      const page = await openBoard(`${start} days="${text}"`);
      expect([daysOf(page), page.element.problems]).to.deep.equal([[60, 0, 45, 60, 0, 90, 120], []]);
    });

  it('is a property too', async () => {
    const page = await openBoard(start);
    page.element.days = '60,0,45,60,0,90,120';
    await page.laid();
    expect(daysOf(page)).to.deep.equal([60, 0, 45, 60, 0, 90, 120]);
  });

  it('changed later lays the week again: no act, and nothing fired', async () => {
    const page = await openBoard();
    const events = await page.heard(async () => {
      page.element.setAttribute('days', '0,60,60,0,60,60,90');
      await page.laid();
    });
    expect([events, daysOf(page)]).to.deep.equal([[], [0, 60, 60, 0, 60, 60, 90]]);
    expectWeek(page);
  });

  it('changed later counts over what a person had set', async () => {
    const page = await openBoard();
    await page.typeMinutes(0, '30');
    page.element.setAttribute('days', '0,60,60,0,60,60,90');
    await page.laid();
    expect(daysOf(page)).to.deep.equal([0, 60, 60, 0, 60, 60, 90]);
  });

  it('removed leaves the template of the method', async () => {
    const page = await openBoard();
    page.element.removeAttribute('days');
    await page.laid();
    expect(daysOf(page)).to.deep.equal(template);
  });

  it('does not count over what a person sets after it', async () => {
    const page = await openBoard();
    await page.typeMinutes(0, '30');
    await page.drag('hours', 4.5);
    expect(daysOf(page)[0]).to.equal(30);
  });
});

describe('days that cannot be', () => {
  const faulty: Readonly<Record<string, { readonly path: string; readonly says: RegExp }>> = {
    '60,0,45,60,0,90': { path: 'days', says: /^days .*\b7\b|^days .*seven/i },
    '60,0,45,60,0,90,120,30': { path: 'days', says: /^days .*\b7\b|^days .*seven/i },
    '': { path: 'days', says: /^days /i },
    '60,0,an hour,60,0,90,120': { path: 'days', says: /^days\b/i },
    '9999,0,45,60,0,90,120': { path: 'days[0]', says: /^days\[0\] is 9,?999; allowed: 1,?440 or less/i },
    '60,0,-45,60,0,90,120': { path: 'days[2]', says: /^days\[2\] is "-45"/i },
    '60,0,45.5,60,0,90,120': { path: 'days[2]', says: /^days\[2\] is "45.5"/i },
  };

  for (const [text, { path, says }] of Object.entries(faulty))
    it(`"${text}" are told as a problem of ${path}, and the template of the method is used`, async () => {
      const page = await openBoard(`${start} days="${text}"`);
      expect(page.element.problems.map((problem) => problem.path)[0]).to.satisfy((told: string) =>
        told.startsWith('days'),
      );
      if (path !== 'days') expect(page.element.problems.map((problem) => problem.path)).to.include(path);
      expect(page.problems.join('|')).to.match(says);
      expect(daysOf(page)).to.deep.equal(template);
      expectWeek(page);
    });

  it('are forgiven as soon as they are put right', async () => {
    const page = await openBoard(`${start} days="60,0"`);
    expect(page.problems).to.have.length(1);
    page.element.setAttribute('days', '60,0,45,60,0,90,120');
    await page.laid();
    expect([page.problems, page.element.problems, daysOf(page)[4]]).to.deep.equal([[], [], 0]);
  });

  it('leave a planner that can be driven', async () => {
    const page = await openBoard(`${start} days="60,0"`);
    const { week } = await page.heardOnce(() => page.typeMinutes(6, '90'));
    expect(week?.wishes.days).to.deep.equal([...(template ?? []).slice(0, 6), 90]);
  });
});
