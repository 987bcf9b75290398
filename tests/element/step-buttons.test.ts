import { expect } from '@open-wc/testing';
import { openPlanner, shownPlan, type NumberFieldName } from './planner-page.js';

const steps: readonly [field: NumberFieldName, attributes: string, direction: 'less' | 'more', value: number][] = [
  ['hours', 'hours="4"', 'more', 4.25],
  ['hours', 'hours="4"', 'less', 3.75],
  // From between two steps to the nearest one in that direction.
  ['hours', 'hours="4.1"', 'more', 4.25],
  ['hours', 'hours="4.1"', 'less', 4],
  ['hours', 'hours="19.9"', 'more', 20],
  ['hours', 'hours="0.6"', 'less', 0.5],
  ['strengthCap', 'strength-cap="100"', 'more', 105],
  ['strengthCap', 'strength-cap="92"', 'less', 90],
];

for (const [field, attributes, direction, value] of steps)
  it(`one step ${direction} from ${attributes} is ${String(value)}`, async () => {
    const page = await openPlanner(attributes);
    await page.click(page.stepButton(field, direction));
    expect(shownPlan(page).inputs[field]).to.equal(value);
  });

const ends: readonly [field: NumberFieldName, attributes: string, direction: 'less' | 'more', end: number][] = [
  ['hours', 'hours="19.75"', 'more', 20],
  ['hours', 'hours="0.75"', 'less', 0.5],
  ['strengthCap', 'strength-cap="115"', 'more', 120],
  ['strengthCap', 'strength-cap="95"', 'less', 90],
];

for (const [field, attributes, direction, end] of ends)
  describe(`at the end of ${field}, ${String(end)}`, () => {
    it('there is no step further, and the button says so', async () => {
      const page = await openPlanner(attributes);
      const button = page.stepButton(field, direction);
      button.focus();
      expect(button.getAttribute('aria-disabled')).to.equal('false');
      await page.press('Enter', 'Enter');
      expect(shownPlan(page).inputs[field]).to.equal(end);
      expect(button.getAttribute('aria-disabled')).to.equal('true');
    });

    it('the button keeps the focus, and the other one leads back', async () => {
      const page = await openPlanner(attributes);
      const button = page.stepButton(field, direction);
      button.focus();
      await page.press('Enter');
      expect(page.hasFocus(button)).to.equal(true);
      const before = shownPlan(page).inputs[field];
      await page.click(page.stepButton(field, direction === 'more' ? 'less' : 'more'));
      expect(shownPlan(page).inputs[field]).to.not.equal(before);
      expect(button.getAttribute('aria-disabled')).to.equal('false');
    });
  });
