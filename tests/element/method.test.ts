import { expect } from '@open-wc/testing';
import club from '../../demo/club-method.json';
import { openPlanner, shownPlan, type PlannerPage } from './planner-page.js';

const script = (text: string): string => `<script type="application/json" slot="method">${text}</script>`;
const clubKinds = ['Easy running', 'Steady running', 'Track', 'Bike or pool', 'Strength'];
const builtInKinds = ['Slow running', 'Tempo running', 'Intervals', 'Cross-training', 'Strength'];
// The test server makes modules of JSON files, so this stands in for one; tests/pages reads the file itself.
const clubAddress = URL.createObjectURL(new Blob([JSON.stringify(club)]));
const kinds = (page: PlannerPage): string[] => page.texts('.week tbody .kind');

async function setMethod(page: PlannerPage, method: unknown): Promise<PlannerPage> {
  page.element.method = method;
  return page.settled();
}

describe("a coach's own method", () => {
  const ways: Readonly<Record<string, () => Promise<PlannerPage>>> = {
    'as a property': async () => setMethod(await openPlanner(), club),
    'as a script child': () => openPlanner('', script(JSON.stringify(club))),
    "as an address of the page's own": () => openPlanner(`method-src="${clubAddress}"`),
  };

  for (const [way, open] of Object.entries(ways))
    it(`${way} gives the names, the shares, the limits and the starting values`, async () => {
      const page = await open();
      expect(page.problems).to.deep.equal([]);
      expect(kinds(page)).to.deep.equal(clubKinds);
      expect(shownPlan(page).method).to.deep.equal({ id: club.id, name: club.name });
      expect(shownPlan(page).inputs).to.include({ hours: 6, event: '10k' });
      expect(page.row('slow').share).to.equal('40%');
      expect([page.slider('hours').min, page.slider('hours').max]).to.deep.equal(['1', '12']);
      expect(page.rules.join()).to.include('Half an hour of track is plenty for now: 6 minutes moved to easy running.');
    });

  it('is driven and asked why as the built-in one', async () => {
    const page = await setMethod(await openPlanner(), club);
    await page.drag('hours', 8);
    expect(page.rules.join()).to.include('Strength is held at 120 minutes: 24 minutes moved to easy running.');
    await page.ask('intervals_minutes');
    expect(page.texts('#why-title')).to.deep.equal(['Why 30 minutes of track?']);
  });

  it('can be swapped for another, and for the built-in one again, at run time', async () => {
    const page = await setMethod(await openPlanner(), club);
    const other = structuredClone(club);
    Object.assign(other, { id: 'other', splits: club.splits.map((split) => ({ ...split, shares: { slow: 1 } })) });
    for (const split of other.splits)
      split.shares = { slow: 0.5, tempo: 0.1, intervals: 0.1, cross: 0.1, strength: 0.2 };
    await setMethod(page, other);
    expect(page.problems).to.deep.equal([]);
    expect(page.row('slow').share).to.equal('50%');
    await setMethod(page, null);
    expect(kinds(page)).to.deep.equal(builtInKinds);
  });

  it('keeps what a person set, where it allows it', async () => {
    const page = await openPlanner();
    await page.drag('hours', 5);
    await setMethod(page, club);
    expect(shownPlan(page).inputs.hours).to.equal(5);
  });

  it('is the last one asked for, however long the others take', async () => {
    const page = await openPlanner(`method-src="${clubAddress}"`);
    page.element.method = { ...club, id: 'first' };
    await Promise.resolve();
    page.element.method = { ...club, id: 'second' };
    await page.settled();
    expect(shownPlan(page).method.id).to.equal('second');
  });

  it('as a property goes before a script child, and that before an address', async () => {
    const page = await openPlanner('method-src="/demo/nothing.json"', script(JSON.stringify({ ...club, id: 'child' })));
    expect(shownPlan(page).method.id).to.equal('child');
    await setMethod(page, { ...club, id: 'property' });
    expect(shownPlan(page).method.id).to.equal('property');
  });
});

describe('an address that cannot be read', () => {
  const cases: readonly [source: string, code: string, says: RegExp][] = [
    [
      'https://elsewhere.invalid/method.json',
      'other-origin',
      /is "https:\/\/elsewhere\.invalid\/method\.json"; allowed: addresses of http/,
    ],
    ['//elsewhere.invalid/method.json', 'other-origin', /allowed: addresses of http/],
    ['data:application/json,{}', 'other-origin', /allowed: addresses of http/],
    ['http://[', 'other-origin', /is "http:\/\/\["; allowed: addresses of http/],
    ['/demo/nothing.json', 'unreachable', /could not be read from "\/demo\/nothing\.json" \(404\)/],
    ['/demo/club.css', 'not-json', /is not valid JSON/],
  ];

  for (const [source, code, says] of cases)
    it(`${source} is reported, and the built-in method is used`, async () => {
      const page = await openPlanner(`method-src="${source}"`);
      expect(page.element.problems.map((problem) => problem.code)).to.deep.equal([code]);
      expect(page.problems.join()).to.match(says);
      expect(kinds(page)).to.deep.equal(builtInKinds);
    });

  it('of another origin is not asked for at all', async () => {
    await openPlanner('method-src="https://elsewhere.invalid/method.json"');
    const asked = performance.getEntriesByType('resource').map(({ name }) => name);
    expect(asked.filter((name) => name.includes('elsewhere'))).to.deep.equal([]);
  });
});
