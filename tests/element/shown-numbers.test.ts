import { expect } from '@open-wc/testing';
import { categoryIds, planWeek, type CategoryId, type Plan, type PlanRequest } from '../../src/core.js';
import { openPlanner, type PlannerPage } from './planner-page.js';
import { figure, percent, sum } from './week.js';

/** Under, at and over the thresholds of design.md section 4, and what people may well ask for. */
const requests: readonly PlanRequest[] = [
  { hours: 4, phase: 'build', level: 'developing', event: 'half-marathon' },
  { hours: 4, phase: 'off-season' },
  { hours: 4, phase: 'taper' },
  { hours: 4, phase: 'recovery' },
  { hours: 4, level: 'new' },
  { hours: 6, strengthCap: 90 },
  { hours: 6.25, strengthCap: 90 },
  { hours: 6.75, strengthCap: 120 },
  { hours: 7, strengthCap: 120 },
  { hours: 2.75, event: 'none' },
  { hours: 3, event: '5k' },
  { hours: 3.25, event: '10k' },
  { hours: 3.5, event: 'longer' },
  { hours: 2, phase: 'base' },
  { hours: 0.5 },
  { hours: 0.75, phase: 'recovery', level: 'new' },
  { hours: 1.1 },
  { hours: 20, phase: 'peak', level: 'elite', event: 'marathon', strengthCap: 105 },
];

const names: Readonly<Record<CategoryId, string>> = {
  slow: 'slow running',
  tempo: 'tempo running',
  intervals: 'intervals',
  cross: 'cross-training',
  strength: 'strength',
};

const minutes = (count: number): string => `${figure(count)} minute${count === 1 ? '' : 's'}`;

/** The core's own answer. */
function planOf(request: PlanRequest): Plan {
  const outcome = planWeek(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

async function open(request: PlanRequest): Promise<PlannerPage> {
  const page = await openPlanner();
  Object.assign(page.element, request);
  return page.settled();
}

for (const request of requests)
  describe(`the screen for ${JSON.stringify(request)}`, () => {
    const plan = planOf(request);

    it('has the plan of the core', async () => {
      expect((await open(request)).element.plan).to.deep.equal(plan);
    });

    it('has its numbers in the table', async () => {
      const page = await open(request);
      for (const id of categoryIds)
        expect(page.row(id)).to.deep.include({
          share: percent(plan.split.shares[id]),
          exact: figure(plan.minutes[id]),
          planned: figure(plan.rounded[id]),
          sessions: sum(plan.sessions[id]),
        });
      expect(page.totals).to.deep.include({ exact: figure(plan.total.exact), planned: figure(plan.total.rounded) });
    });

    it('says the strength and its sessions first', async () => {
      const { headline } = await open(request);
      const { rounded, sessions } = plan;
      if (rounded.strength === 0) expect(headline).to.match(/no strength this week\.$/);
      else expect(headline).to.include(`: ${minutes(rounded.strength)} of strength`);
      if (sessions.strength.length > 1) expect(headline).to.include(`as ${sum(sessions.strength)}.`);
    });

    it('draws and tells a ring of the same minutes', async () => {
      const page = await open(request);
      const present = categoryIds.filter((id) => plan.rounded[id] > 0);
      const told = page.find('.ring').getAttribute('aria-label') ?? '';
      for (const id of categoryIds) {
        const part = `${minutes(plan.rounded[id])} of ${names[id]}`;
        expect(told.includes(part), `${part} in “${told}”`).to.equal(present.includes(id));
      }
      const label = (id: CategoryId): string => `${names[id]} ${figure(plan.rounded[id])} min`.toLowerCase();
      const shown = page.texts('.ring-label').map((text) => text.toLowerCase());
      expect(shown.sort()).to.deep.equal(present.map(label).sort());
      expect(page.all('.arc')).to.have.length(present.length);
    });

    it('lists the rules that acted, and nothing else', async () => {
      const page = await open(request);
      const acted = plan.rules.filter(({ kind, acted }) => kind === 'change' && acted);
      expect(page.rules).to.have.length(acted.length);
      expect(page.notices).to.have.length(plan.notices.length);
    });
  });

it('a rule that acted is told with its minutes and how well it is founded', async () => {
  const page = await open({ hours: 9, strengthCap: 120 });
  const [rule] = page.rules;
  expect(rule).to.equal(
    'Strength is held at 120 minutes: 42 minutes moved to slow running. common practice, no published source',
  );
});
