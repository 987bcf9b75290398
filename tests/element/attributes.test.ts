import { expect } from '@open-wc/testing';
import { WeekwrightPlanner } from '../../src/index.js';
import type { PlanInputs } from '../../src/plan.js';
import { openPlanner, PlannerPage, shownPlan } from './planner-page.js';

const starting: PlanInputs = {
  hours: 4,
  phase: 'build',
  level: 'developing',
  event: 'half-marathon',
  strengthCap: 120,
};

describe('a planner without attributes', () => {
  it('starts from the starting values of the built-in method', async () => {
    expect(shownPlan(await openPlanner()).inputs).to.deep.equal(starting);
  });

  it('has nothing to complain of', async () => {
    const page = await openPlanner();
    expect(page.element.problems).to.deep.equal([]);
    expect(page.problems).to.deep.equal([]);
  });
});

describe('attributes and properties', () => {
  const cases: readonly [attribute: string, property: keyof PlanInputs, value: string | number][] = [
    ['hours', 'hours', 7.5],
    ['phase', 'phase', 'taper'],
    ['level', 'level', 'elite'],
    ['event', 'event', 'marathon'],
    ['strength-cap', 'strengthCap', 95],
  ];

  for (const [attribute, property, value] of cases) {
    it(`${attribute}="${String(value)}" is planned with`, async () => {
      const page = await openPlanner(`${attribute}="${String(value)}"`);
      expect(shownPlan(page).inputs).to.deep.equal({ ...starting, [property]: value });
      expect(page.element[property]).to.equal(value);
    });

    it(`.${property} = ${String(value)} is planned with`, async () => {
      const page = await openPlanner();
      Object.assign(page.element, { [property]: value });
      expect(shownPlan(await page.settled()).inputs).to.deep.equal({ ...starting, [property]: value });
    });

    it(`${attribute} goes back to the starting value when it is removed`, async () => {
      const page = await openPlanner(`${attribute}="${String(value)}"`);
      page.element.removeAttribute(attribute);
      expect(shownPlan(await page.settled()).inputs).to.deep.equal(starting);
    });
  }

  it('an attribute that is set again after somebody moved the slider is planned with', async () => {
    const page = await openPlanner('hours="4"');
    await page.drag('hours', 9);
    page.element.setAttribute('hours', '4');
    expect(shownPlan(await page.settled()).inputs.hours).to.equal(4);
  });

  it('panels="" shows no panel, and without the attribute the split is shown', async () => {
    const page = await openPlanner('panels=""');
    expect(page.all('.week')).to.have.length(0);
    page.element.removeAttribute('panels');
    await page.settled();
    expect(page.all('.week')).to.have.length(1);
  });

  it('hidden hides it', async () => {
    const { element } = await openPlanner('hidden');
    expect(getComputedStyle(element).display).to.equal('none');
  });
});

describe('a planner that is defined after it was set up', () => {
  class LatePlanner extends WeekwrightPlanner {}

  it('takes the attributes and the properties that it was given before', async () => {
    const element = document.createElement('late-planner');
    element.setAttribute('hours', '6');
    Object.assign(element, { phase: 'peak', strengthCap: 100 });
    document.body.append(element);

    customElements.define('late-planner', LatePlanner);
    if (!(element instanceof LatePlanner)) throw new Error('the tag was not upgraded');
    const page = await new PlannerPage(element).settled();

    expect(shownPlan(page).inputs).to.deep.equal({ ...starting, hours: 6, phase: 'peak', strengthCap: 100 });
    expect(page.headline).to.match(/^Six hours in peak/);
    element.remove();
  });
});
