import { expect } from '@open-wc/testing';
import { latePanels, openEmpty } from './built-page.js';

describe('a tag that is on the page before its script', () => {
  it('has the attributes and the properties that it was given meanwhile', async () => {
    const page = (await openEmpty()).put('hours="4" phase="base" level="new"');
    Object.assign(page.planner, { hours: 7.5, event: '10k', strengthCap: 95 });
    await page.load('/weekwright.js');
    expect(page.planner.plan?.inputs).to.include({
      ...{ hours: 7.5, phase: 'base', level: 'new', event: '10k', strengthCap: 95 },
    });
    page.planner.hours = 5;
    await page.settled();
    expect(page.planner.plan?.inputs.hours, 'a property later').to.equal(5);
    page.planner.setAttribute('phase', 'peak');
    await page.settled();
    expect(page.planner.plan?.inputs.phase, 'an attribute later').to.equal('peak');
    expect(page.heard).to.deep.equal([]);
  });

  it('has the panels, the days and the documents that it was given meanwhile', async () => {
    const page = (await openEmpty()).put('panels="split"');
    const season = { date: '2027-05-02', mostHours: 8 };
    Object.assign(page.planner, { panels: latePanels.join(' '), days: '30,0,60,0,45,0,120', season });
    await page.load('/weekwright.js');
    await page.show(latePanels);
    await page.rests();
    expect(page.planner.plan?.season?.wishes).to.include(season);
    // Days without minutes have no session, and some other day has one.
    const sessions = page.planner.plan?.week?.days?.map(({ length }) => length) ?? [];
    expect([sessions[1], sessions[3], sessions[5]]).to.deep.equal([0, 0, 0]);
    expect(Math.max(...sessions)).to.be.greaterThan(0);
    expect(page.heard).to.deep.equal([]);
  });

  it('tells of its plan those who listened before', async () => {
    const page = (await openEmpty()).put('hours="4"');
    const told: number[] = [];
    page.planner.addEventListener('plan-change', ({ detail }) => told.push(detail.inputs.hours));
    await page.load('/weekwright.js');
    const slider = page.all<HTMLInputElement>('input[type="range"]')[0];
    if (!slider) throw new Error('there is no slider');
    slider.stepUp();
    slider.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    slider.dispatchEvent(new Event('change', { bubbles: true }));
    await page.settled();
    expect(told.at(-1)).to.equal(4.25);
  });
});
