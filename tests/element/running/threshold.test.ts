import { expect } from '@open-wc/testing';
import { clock, paces, shares, speedAt, uptake } from './equations.js';
import { openRunning, scene, type RunningPage } from './running-page.js';

const byFeel = 'A race or a threshold pace gives paces and distances; until then runs go by feel.';
const kinds = ['slow', 'tempo', 'intervals'] as const;

/** The paces of all kinds are those of an uptake. */
function expectPaces(page: RunningPage, greatest: number): void {
  for (const kind of kinds) expect(page.paceOf(kind), kind).to.equal(`${paces(kind, greatest)} a kilometre`);
}

const withRace = (): Promise<RunningPage> => openRunning(`${scene} race="10k 45:00"`);

describe('the threshold pace', () => {
  it('gives paces as a race of an hour does', async () => {
    const page = await openRunning();
    await page.heardOnce(() => page.typeIn('running-threshold', '4:30'));
    expectPaces(page, uptake((3600 / 270) * 1000, 3600));
    expect([page.running.basis?.from, page.has('.running-equal')]).to.deep.equal(['threshold', true]);
  });

  it('is typed a mile where miles are counted', async () => {
    const page = await openRunning();
    await page.chooseText(page.selectOf('running-unit'), 'miles');
    await page.typeIn('running-threshold', '7:15');
    const kilometre = 435 / 1.609344;
    expect(page.running.wishes.thresholdPace).to.be.closeTo(kilometre, 1e-9);
    const greatest = uptake((3600 / kilometre) * 1000, 3600);
    expect(page.paceOf('slow')).to.equal(`${paces('slow', greatest, 1609.344)} a mile`);
    expect(page.typedIn('running-threshold').value).to.equal('7:15');
    await page.chooseText(page.selectOf('running-unit'), 'kilometres');
    expect(page.typedIn('running-threshold').value).to.equal(clock(kilometre));
  });

  it('does not count while there is a race, which is said', async () => {
    const page = await withRace();
    await page.typeIn('running-threshold', '3:30');
    expectPaces(page, uptake(10_000, 2700));
    expect(page.panelText).to.contain('The race counts while there is one.');
    await page.chooseDistance('no race');
    expectPaces(page, uptake((3600 / 210) * 1000, 3600));
  });

  for (const [text, says] of [
    ['quick', /a time such as/],
    // 2:30 to 12:00 a kilometre: src/plan/running/wishes.ts.
    ['1:30', /"1:30"; allowed: 2:30 to 12:00\.$/],
  ] as const)
    it(`"${text}" is refused and stays`, async () => {
      const page = await openRunning();
      await page.typeIn('running-threshold', text);
      expect(page.typedIn('running-threshold').value).to.equal(text);
      expect(page.hintOf('running-threshold')).to.match(says);
      expect([page.lead, page.told]).to.deep.equal([byFeel, page.hintOf('running-threshold')]);
    });

  it('is refused in miles with what is allowed a mile', async () => {
    const page = await openRunning();
    await page.chooseText(page.selectOf('running-unit'), 'miles');
    await page.typeIn('running-threshold', '2:00');
    // 150 and 720 seconds a kilometre, times 1.609344: 241.4 and 1158.7, and whole seconds within.
    expect(page.hintOf('running-threshold')).to.match(/allowed: 4:02 to 19:18\.$/);
  });

  it('is left out again', async () => {
    const page = await openRunning();
    await page.typeIn('running-threshold', '4:30');
    await page.typeIn('running-threshold', '');
    expect([page.lead, page.running.wishes.thresholdPace]).to.deep.equal([byFeel, null]);
  });
});

it('miles are counted in miles everywhere, and back', async () => {
  const page = await withRace();
  const { lead, runHeads } = page;
  await page.heardOnce(() => page.chooseText(page.selectOf('running-unit'), 'miles'));
  const greatest = uptake(10_000, 2700);
  for (const kind of kinds) expect(page.paceOf(kind)).to.equal(`${paces(kind, greatest, 1609.344)} a mile`);
  const miles = shares.slow.map((share) => ((35 * speedAt(share, greatest)) / 1609.344).toFixed(1)).join(' to ');
  expect(page.runHeads[0]).to.equal(`Slow running 35 min ${miles} mi`);
  expect(page.lead).to.match(/a mile: \d+ to \d+ mi this week\.$/);
  expect(page.runLines.join(' ')).to.not.contain('kilometre');
  await page.chooseText(page.selectOf('running-unit'), 'kilometres');
  expect([page.lead, page.runHeads]).to.deep.equal([lead, runHeads]);
});
