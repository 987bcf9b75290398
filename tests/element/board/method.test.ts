import { expect } from '@open-wc/testing';
import { createPlanner } from '../../../src/core.js';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { builtInWeek } from '../../../src/training/method/built-in-week.js';
import { shownPlan } from '../planner-page.js';
import type { BoardPage } from './board-page.js';
import { openBoard } from './open-board.js';

/** A coach of an invented club, to whom every clash weighs ten times as much. */
const coach = {
  ...builtInMethod,
  id: 'harbour-evenings',
  name: 'Harbour evenings',
  week: {
    ...builtInWeek,
    sessions_a_day: 3,
    rest_days: 2,
    clashes: builtInWeek.clashes.map((clash) => ({ ...clash, cost: clash.cost * 10 })),
    templates: [
      { id: 'evenings', name: 'Harbour evenings', minutes: [50, 50, 50, 50, 0, 80, 110] },
      { id: 'winter', name: 'Dark evenings', minutes: [0, 60, 0, 60, 0, 120, 120] },
    ],
  },
};
const inTag = `<script type="application/json" slot="method">${JSON.stringify(coach)}</script>`;
const open = (attributes = 'hours="4" phase="base"'): Promise<BoardPage> => openBoard(attributes, 'split week', inTag);

describe("a coach's own week", () => {
  it('begins with the first of its templates, and offers all of them', async () => {
    const page = await open();
    expect(page.element.problems).to.deep.equal([]);
    expect(page.week.wishes.days).to.deep.equal([50, 50, 50, 50, 0, 80, 110]);
    expect(page.texts('#board-template option')).to.deep.equal(['Harbour evenings', 'Dark evenings']);
    await page.choose(page.wishList('template'), 1);
    await page.laid();
    expect(page.week.wishes.days).to.deep.equal([0, 60, 0, 60, 0, 120, 120]);
  });

  it('has its rest days and sessions a day', async () => {
    const page = await open();
    expect([page.week.wishes.restDays, page.week.wishes.sessionsADay]).to.deep.equal([2, 3]);
    expect(page.shownDays.filter(({ length }) => length === 0).length).to.be.at.least(2);
  });

  it('costs what the costs of the coach are, as the plan of that method has it', async () => {
    const page = await open('hours="4" phase="base" days="60,0,45,60,0,90,120"');
    const planner = await createPlanner(coach);
    if (!planner.ok) throw new Error(JSON.stringify(planner.problems));
    const plan = planner.value.plan({ ...shownPlan(page).inputs, week: { days: page.week.wishes.days } });
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
    expect(page.week).to.deep.equal(plan.value.week);
    const costs = page.texts('.clashes summary b').map(Number);
    expect(costs.reduce((sum, cost) => sum + cost, 0)).to.equal(page.week.cost);
    for (const cost of costs) expect(cost % 10, String(cost)).to.equal(0);
  });

  it('given later is used from then on: its template where a person has set nothing', async () => {
    const page = await openBoard('hours="4" phase="base"');
    page.element.method = coach;
    await page.settled();
    await page.laid();
    expect(page.week.wishes.days).to.deep.equal([50, 50, 50, 50, 0, 80, 110]);
    page.element.method = null;
    await page.settled();
    await page.laid();
    expect(page.week.wishes.days).to.deep.equal(builtInWeek.templates[0]?.minutes);
  });

  it('given later leaves what a person has set', async () => {
    const page = await openBoard();
    await page.typeMinutes(0, '75');
    page.element.method = coach;
    await page.settled();
    await page.laid();
    expect(page.week.wishes.days[0]).to.equal(75);
  });
});
