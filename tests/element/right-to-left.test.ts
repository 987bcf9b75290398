import { expect } from '@open-wc/testing';
import { resetMouse, sendMouse } from '@web/test-runner-commands';
import { openPlanner, shownPlan, type PlannerPage } from './planner-page.js';
import { pixelsOf } from './pixels.js';

/** The direction is that of the language, whatever that of the page. */
const languageOf = { ltr: 'en', rtl: 'ar' } as const;

const open = async (dir: 'ltr' | 'rtl', width: number): Promise<PlannerPage> => {
  const page = await openPlanner(`lang="${languageOf[dir]}" hours="4" phase="base"`);
  page.element.style.inlineSize = `${String(width)}px`;
  return page;
};

it('a planner in a language from left to right stays so on a page from right to left', async () => {
  const page = await openPlanner('lang="en" dir="rtl"');
  expect(getComputedStyle(page.find('.inputs')).direction).to.equal('ltr');
});

const left = (element: Element): number => element.getBoundingClientRect().left;

for (const dir of ['ltr', 'rtl'] as const) {
  const isMirrored = dir === 'rtl';

  describe(`from ${isMirrored ? 'right to left' : 'left to right'}`, () => {
    afterEach(() => resetMouse());

    it('the inputs come before the numbers, a label before its field, a kind before its minutes', async () => {
      const page = await open(dir, 700);
      const pairs = [
        ['.inputs', '.numbers'],
        ['#hours-label', '.entry'],
        ['#phase-label', 'select#phase'],
        ['.week .kind', '.week .planned'],
      ] as const;
      for (const [first, second] of pairs)
        expect(left(page.find(first)) > left(page.find(second)), `${first}, ${second}`).to.equal(isMirrored);
    });

    it('a slider begins where lines begin', async () => {
      const page = await open(dir, 360);
      const slider = page.slider('hours');
      slider.scrollIntoView({ block: 'center' });
      const { left: from, width, top, height } = slider.getBoundingClientRect();
      await sendMouse({ type: 'click', position: [Math.round(from + width * 0.9), Math.round(top + height / 2)] });
      await page.settled();
      const { hours } = shownPlan(page).inputs;
      expect(hours).to.be.closeTo(isMirrored ? 2 : 18.5, 1);
    });

    it('a slider is filled from where lines begin', async () => {
      const page = await open(dir, 360);
      await page.drag('hours', 10.25);
      const slider = page.slider('hours');
      slider.scrollIntoView({ block: 'center' });
      const { left: from, width, top, height } = slider.getBoundingClientRect();
      const at = (share: number): [number, number] => [from + width * share, top + height / 2];
      const [onTheLeft, onTheRight] = await pixelsOf([at(0.25), at(0.75)]);
      const filled = 'rgb(32, 97, 143)';
      expect([onTheLeft === filled, onTheRight === filled]).to.deep.equal([!isMirrored, isMirrored]);
    });

    it('nothing reaches out of the planner', async () => {
      const page = await open(dir, 320);
      expect(page.element.scrollWidth).to.be.at.most(page.element.clientWidth);
      const frame = page.element.getBoundingClientRect();
      for (const each of page.all('.planner *:not(svg *, option, .visually-hidden)')) {
        if (!each.checkVisibility()) continue;
        const box = each.getBoundingClientRect();
        expect(box.left >= frame.left - 1 && box.right <= frame.right + 1, each.outerHTML).to.equal(true);
      }
    });
  });
}
