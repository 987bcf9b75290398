import { expect } from '@open-wc/testing';
import { eventIds, levelIds, phaseIds } from '../../src/training/method/ids.js';
import { openPlanner, shownPlan } from './planner-page.js';

const fields = [
  ['phase', phaseIds],
  ['level', levelIds],
  ['event', eventIds],
] as const;

for (const [field, ids] of fields)
  describe(`the list of ${field}`, () => {
    it('offers every choice, in words', async () => {
      const page = await openPlanner();
      const options = [...page.list(field).options];
      expect(options.map(({ value }) => value)).to.deep.equal(ids);
      for (const { text } of options) expect(text).to.match(/^[A-Z0-9]/);
    });

    it('shows the choice that is planned with', async () => {
      const page = await openPlanner();
      for (const id of ids) {
        page.element.setAttribute(field, id);
        await page.settled();
        expect(page.list(field).value).to.equal(id);
      }
    });

    it('changes the plan, each choice of it', async () => {
      const page = await openPlanner();
      for (const [index, id] of [...ids.entries()].reverse()) {
        await page.choose(page.list(field), index);
        expect(shownPlan(page).inputs[field]).to.equal(id);
      }
    });

    it('is chosen from by keyboard', async () => {
      const page = await openPlanner(`${field}="${String(ids[0])}"`);
      page.list(field).focus();
      await page.press('ArrowDown');
      expect(shownPlan(page).inputs[field]).to.equal(ids[1]);
    });
  });

for (const [field, ids] of [fields[0], fields[1]])
  it(`the slider of ${field} and its list always show the same`, async () => {
    const page = await openPlanner();
    for (const [index, id] of ids.entries()) {
      await page.drag(field, index);
      expect(page.list(field).value).to.equal(id);
      expect(page.slider(field).valueAsNumber).to.equal(index);
    }
    await page.choose(page.list(field), 0);
    expect(page.slider(field).valueAsNumber).to.equal(0);
  });
