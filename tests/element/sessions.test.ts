import { expect } from '@open-wc/testing';
import { categoryIds } from '../../src/core.js';
import { openPlanner, shownPlan, type PlannerPage } from './planner-page.js';
import { sum } from './week.js';

/** Picks a way to cut a kind's minutes by what it is called. */
async function pick(page: PlannerPage, kind: 'strength' | 'slow', name: string): Promise<PlannerPage> {
  const list = page.sessionList(kind);
  const index = [...list.options].findIndex(({ text }) => text === name);
  expect(index, `${name} among the ways`).to.be.at.least(0);
  return page.choose(list, index);
}

describe('the list of sessions', () => {
  it('offers the ways of the plan, the best first', async () => {
    const page = await openPlanner('hours="4"');
    for (const id of categoryIds) {
      const offered = [...page.sessionList(id).options].map(({ text }) => text);
      expect(offered).to.deep.equal(shownPlan(page).options[id].map(sum));
    }
  });

  it('has both 30 + 45 and 3 × 25 for 72 minutes of strength', async () => {
    const page = await openPlanner('hours="4"');
    const offered = [...page.sessionList('strength').options].map(({ text }) => text);
    expect(offered).to.include.members(['30 + 45', '3 × 25']);
  });

  it('is a dash where there are no minutes', async () => {
    const page = await openPlanner('phase="off-season"');
    expect(page.row('intervals')).to.deep.include({ planned: '0', sessions: '–' });
  });

  it('says which minutes it cuts', async () => {
    const page = await openPlanner('hours="4"');
    expect(page.sessionList('strength').getAttribute('aria-label')).to.equal('Pick how to cut 75 minutes of strength');
  });
});

describe('sessions that were picked', () => {
  it('are planned with and said', async () => {
    const page = await pick(await openPlanner('hours="4"'), 'strength', '30 + 45');
    expect(shownPlan(page).sessions.strength).to.deep.equal([30, 45]);
    expect(page.headline).to.equal('Four hours in build: 75 minutes of strength, as 30 + 45.');
  });

  it('stay picked where they still fit, also when they are no longer the best', async () => {
    const page = await pick(await openPlanner('hours="4"'), 'strength', '3 × 25');
    await page.drag('hours', 4.25);
    expect(shownPlan(page).sessions.strength).to.deep.equal([25, 25, 25]);
    expect(page.row('strength').sessions).to.equal('3 × 25');
    expect(page.notices.join()).to.not.include('picked');
  });

  it('stay when another input changes', async () => {
    const page = await pick(await openPlanner('hours="4"'), 'strength', '3 × 25');
    await page.drag('level', 3);
    expect(page.row('strength').sessions).to.equal('3 × 25');
  });

  it('give way to the best where they no longer fit, and that is said', async () => {
    const page = await pick(await openPlanner('hours="4"'), 'strength', '3 × 25');
    await page.drag('hours', 8);
    expect(shownPlan(page).sessions.strength).to.deep.equal(shownPlan(page).options.strength[0]);
    expect(page.notices).to.include(
      'Strength: the sessions picked no longer fit 120 minutes; the best fit is used instead.',
    );
  });

  it('come back when they fit again', async () => {
    const page = await pick(await openPlanner('hours="4"'), 'strength', '3 × 25');
    await page.drag('hours', 8);
    await page.drag('hours', 4);
    expect(page.row('strength').sessions).to.equal('3 × 25');
    expect(page.notices).to.deep.equal([]);
  });

  it('are forgotten when the best is picked: it is the best at other hours too', async () => {
    const page = await pick(await openPlanner('hours="4"'), 'strength', '3 × 25');
    await page.choose(page.sessionList('strength'), 0);
    await page.drag('hours', 8);
    expect(page.notices.join()).to.not.include('picked');
  });

  it('of one kind leave the others alone', async () => {
    const page = await pick(await openPlanner('hours="4"'), 'strength', '3 × 25');
    await pick(page, 'slow', '30 + 40');
    expect(shownPlan(page).sessions).to.deep.include({ strength: [25, 25, 25], slow: [30, 40], tempo: [35] });
  });
});
