import { expect } from '@open-wc/testing';
import { categoryIds, phaseIds, type PhaseId } from '../../src/core.js';
import { openPlanner, shownPlan, type PlannerPage } from './planner-page.js';
import { sum } from './week.js';

/** What was on the screen at one place of the sliders. */
interface Sight {
  readonly at: string;
  readonly text: string;
  readonly labels: string;
  readonly planned: readonly number[];
  readonly total: number;
  readonly sessions: readonly string[];
  readonly used: readonly string[];
}

function sight(page: PlannerPage, at: string): Sight {
  const rows = categoryIds.map((id) => page.row(id));
  return {
    at,
    text: page.text,
    labels: page.all('[aria-label], [aria-valuetext], [title]').map(attributes).join(),
    planned: rows.map(({ planned }) => Number(planned)),
    total: Number(page.totals.planned.replace(',', '')),
    sessions: rows.map(({ sessions }) => sessions),
    used: categoryIds.map((id) => sum(shownPlan(page).sessions[id])),
  };
}

function attributes(element: Element): string {
  return ['aria-label', 'aria-valuetext', 'title'].map((name) => element.getAttribute(name) ?? '').join(' ');
}

/** Every quarter of an hour, up in one phase and down in the next. */
async function sweep(phase: PhaseId, index: number): Promise<Sight[]> {
  const page = await openPlanner(`hours="0.5" phase="${phase}"`);
  const hours = Array.from({ length: 79 }, (_, step) => 0.5 + step / 4);
  const sights: Sight[] = [];
  for (const value of index % 2 === 0 ? hours : hours.reverse()) {
    await page.drag('hours', value);
    sights.push(sight(page, `${String(value)} h in ${phase}`));
  }
  return sights;
}

describe('over all hours of all phases', () => {
  let sights: Sight[] = [];

  before(async () => {
    for (const [index, phase] of phaseIds.entries()) sights.push(...(await sweep(phase, index)));
  });

  after(() => {
    sights = [];
  });

  const none = (isWrong: (sight: Sight) => boolean): void => {
    expect(sights).to.have.length(79 * 6);
    expect(sights.filter(isWrong).map(({ at }) => at)).to.deep.equal([]);
  };

  it('no screen shows what is no word and no number', () => {
    none(({ text, labels }) => /NaN|undefined|null|Infinity|\[object|no value|[{}]/.test(text + labels));
  });

  it('no screen shows the key of a text in place of the text', () => {
    none(({ text, labels }) =>
      /\b(?:input|notice|planner|rule|says|split|status|table|unit|headline)\.\w/.test(text + labels),
    );
  });

  it('the planned minutes add up to the planned week', () => {
    none(({ planned, total }) => planned.reduce((added, each) => added + each, 0) !== total);
  });

  it('every list shows the sessions in use', () => {
    none(({ sessions, used }) => sessions.join() !== used.join());
  });
});
