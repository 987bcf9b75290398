import { expect, waitUntil } from '@open-wc/testing';
import club from '../../../demo/club-method.json';
import { openPlanner, shownPlan } from '../planner-page.js';
import { openSheet } from './sheet-page.js';

describe('the what-if sheet', () => {
  it('is not there where a page does not ask for it', async () => {
    const page = await openPlanner();
    expect(page.all('.sheet, .grid')).to.have.length(0);
  });

  it('stands under the week where a page asks for both, with the week as its one scenario', async () => {
    const page = await openSheet('hours="4" phase="base"');
    const parts = page.all('[part="answer"], .sheet').map((each) => each.getAttribute('part'));
    expect(parts).to.deep.equal(['answer', 'sheet']);
    expect(page.scenarios).to.deep.equal(['4 h, base']);
    expect([page.onShow, page.reference]).to.deep.equal([0, 0]);
    // Common practice: 72 / 36 / 24 / 36 / 72 minutes.
    const kinds = ['slow', 'tempo', 'intervals', 'cross', 'strength'] as const;
    expect(kinds.map((kind) => page.shown(`${kind}_minutes`).text)).to.deep.equal(['72', '36', '24', '36', '72']);
    expect(kinds.map((kind) => page.shown(`${kind}_rounded`).text)).to.deep.equal(['70', '35', '25', '35', '75']);
    expect(page.shown('running_share').text).to.equal('55%');
  });

  it('works alone: the page has a plan, and hears of changes', async () => {
    const page = await openSheet('hours="4" phase="base"', 'sheet');
    expect(page.all('[part="answer"], .ring, .week')).to.have.length(0);
    expect(shownPlan(page).rounded.strength).to.equal(75);
    const events = await page.heard(() => page.set(0, 'hours', 6));
    expect(events.map(({ detail }) => detail.minutes.strength)).to.deep.equal([108]);
  });

  for (const panels of ['split', 'sheet', 'split sheet', 'sheet split'])
    it(`has the usual cautions once, with panels="${panels}"`, async () => {
      const page = await openPlanner(`panels="${panels}"`);
      expect(page.all('[part="cautions"]')).to.have.length(1);
      page.find<HTMLDetailsElement>('[part="cautions"]').open = true;
      await waitUntil(() => page.all('[part="cautions"] li').length > 0, 'the lines come');
      expect(page.all('[part="cautions"] li')).to.have.length(11);
    });

  it('can stand above the week', async () => {
    const page = await openSheet('', 'sheet split');
    const parts = page.all('[part="answer"], .sheet').map((each) => each.getAttribute('part'));
    expect(parts).to.deep.equal(['sheet', 'answer']);
  });

  it('comes and goes with the attribute, and keeps what was done', async () => {
    const page = await openSheet('hours="4" phase="base"');
    await page.add();
    page.element.panels = 'split';
    await page.settled();
    expect(page.all('.sheet')).to.have.length(0);
    page.element.panels = 'split sheet';
    await page.until(() => page.root.querySelector('.grid') !== null, 'the sheet comes again');
    expect(page.scenarios).to.have.length(2);
  });

  it('is no excuse for a panel that is not known', async () => {
    const page = await openSheet('', 'split sheet moon');
    expect(page.problems.join()).to.include('moon').and.include('split').and.include('sheet');
    expect(page.all('.grid')).to.have.length(1);
  });

  it('takes over a method of the page', async () => {
    const page = await openSheet('hours="4"');
    await page.add();
    page.element.method = club;
    await page.until(() => page.scenarios.length === 1, 'the sheet begins anew');
    expect(shownPlan(page).method.id).to.equal('lamplighters-thursday');
    expect(page.shown('strength_rounded').text).to.equal(String(shownPlan(page).rounded.strength));
  });
});
