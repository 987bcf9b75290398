import { expect, waitUntil } from '@open-wc/testing';
import { faultsOf } from './axe.js';
import { inScheme } from './scheme.js';
import { openPlanner, type PlannerPage } from './planner-page.js';

const faultyMethod = '<script type="application/json" slot="method">{ "format": 1 }</script>';

/** Every state that a planner can be in, and how a person gets there. */
const states: Readonly<Record<string, () => Promise<PlannerPage>>> = {
  'as it starts': () => openPlanner(),
  'where rules act and notices stand': () => openPlanner('hours="9" event="longer" level="elite"'),
  'with kinds that have no minutes': () => openPlanner('hours="1.1" level="new" event="none"'),
  'with a derivation open': async () => (await openPlanner()).ask('strength_minutes'),
  'with a derivation of a rule that acted': async () => (await openPlanner('hours="8"')).ask('strength_minutes'),
  'with the cautions open': async () => {
    const page = await openPlanner();
    page.find<HTMLDetailsElement>('.cautions').open = true;
    await waitUntil(() => page.all('.cautions li').length > 0, 'the lines come');
    return page;
  },
  'with a text that is no number': async () => (await openPlanner()).type('hours', 'abc'),
  'with attributes that cannot be used': () => openPlanner('hours="40" phase="summer" panels="split moon"'),
  'with a faulty method': () => openPlanner('', faultyMethod),
  'at the end of a slider': () => openPlanner('hours="20" strength-cap="90"'),
  'in German': () => openPlanner('lang="de"'),
  'from right to left': () => openPlanner('lang="ar"'),
};

for (const scheme of ['light', 'dark'] as const)
  describe(`axe finds nothing in a planner, ${scheme}`, () => {
    inScheme(scheme);

    for (const [state, open] of Object.entries(states))
      it(state, async () => {
        expect(await faultsOf(await open())).to.deep.equal([]);
      });
  });

it('axe finds a fault where there is one', async () => {
  const page = await openPlanner();
  page.find('#hours-label').remove();
  expect((await faultsOf(page)).join()).to.include('label: Form elements must have labels');
});
