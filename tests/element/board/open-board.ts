import { expect, fixture } from '@open-wc/testing';
import { planWeek } from '../../../src/core.js';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { shownPlan } from '../planner-page.js';
import { BoardPage } from './board-page.js';
import './workers.js';

export const scene = 'hours="4" phase="base" days="60,0,45,60,0,90,120"';

/** A planner with the board on an empty page, the week being laid. */
export async function openBoard(attributes = scene, panels = 'split week', content = ''): Promise<BoardPage> {
  const tag = `<weekwright-planner panels="${panels}" ${attributes}>${content}</weekwright-planner>`;
  const page = new BoardPage(await fixture<WeekwrightPlanner>(tag));
  await page.until(() => page.root.querySelector('.board .day') !== null, 'the board comes');
  return page.laid();
}

type Picks = NonNullable<Parameters<typeof planWeek>[0]>['sessions'];

/** That the board shows the week of the plan, and that the plan is the one that its wishes ask for. */
export function expectWeek(page: BoardPage, picks: Picks = {}): void {
  const { week } = page;
  expect(page.shownDays).to.deep.equal(week.days ?? page.all('.day').map(() => []));
  const { inputs } = shownPlan(page);
  const again = planWeek({ ...inputs, sessions: picks, week: week.wishes });
  if (!again.ok || !again.value.week) throw new Error('the wishes of the week cannot be read');
  const { state, cost, days } = again.value.week;
  expect({ state: week.state, cost: week.cost, days: week.days }).to.deep.equal({ state, cost, days });
  for (const [day, sessions] of page.shownDays.entries()) {
    const used = sessions.reduce((sum, { minutes }) => sum + minutes, 0);
    const clashes = week.clashes.filter(({ days }) => days.includes(day)).length;
    expect(Number.parseInt(page.dayClashes(day).replace('One', '1') || '0', 10)).to.equal(clashes);
    if (used > 0) expect(page.dayTotal(day)).to.equal(`${used} of ${week.wishes.days[day] ?? ''} min`);
  }
}
