import { expect } from '@open-wc/testing';
import { clock, paces, uptake } from './equations.js';
import { openRunning, scene, type RunningPage } from './running-page.js';

const open = (): Promise<RunningPage> => openRunning(`${scene} race="10k 45:00"`);

describe('the attribute race', () => {
  for (const [race, metres, seconds] of [
    ['10k 45:00', 10_000, 2700],
    ['21.1km 1:39:00', 21_100, 5940],
    ['5000m 20:00', 5000, 1200],
    ['half-marathon 1:39:17', 21_097.5, 5957],
  ] as const)
    it(`"${race}" is a race, and a property too`, async () => {
      const page = await openRunning(`${scene} race="${race}"`);
      expect(page.paceOf('slow')).to.equal(`${paces('slow', uptake(metres, seconds))} a kilometre`);
      expect(page.typedIn('running-time').value).to.equal(clock(seconds));
      page.element.race = '10k 50:00';
      await page.settled();
      expect(page.running.wishes.race).to.include({ metres: 10_000, seconds: 3000 });
    });

  it('changed later counts over what a person typed; nothing is fired', async () => {
    const page = await open();
    await page.typeIn('running-time', '40:00');
    const events = await page.heard(async () => {
      page.element.setAttribute('race', '5k 20:00');
      await page.settled();
    });
    expect([events, page.running.wishes.race?.metres, page.optionOf('running-distance')]).to.deep.equal([
      ...[[], 5000, '5 km'],
    ]);
    expect(page.typedIn('running-time').value).to.equal('20:00');
  });

  it('does not count over what a person types after it', async () => {
    const page = await open();
    await page.typeIn('running-time', '40:00');
    await page.drag('hours', 5);
    expect(page.running.wishes.race?.seconds).to.equal(2400);
  });

  it('changed later forgets what was typed and is no value', async () => {
    const page = await open();
    await page.typeIn('running-time', 'soon');
    page.element.race = '10k 44:00';
    await page.settled();
    expect([page.typedIn('running-time').value, page.hintOf('running-time')]).to.deep.equal(['44:00', '']);
  });

  it('removed leaves runs by feel', async () => {
    const page = await open();
    page.element.removeAttribute('race');
    await page.settled();
    expect(page.running.basis).to.equal(null);
  });

  for (const race of ['fast', '10k', '45:00', '10k 45', '10 parsecs 45:00'])
    it(`"${race}" is told, and the planner is there`, async () => {
      const page = await open();
      page.element.race = race;
      await page.settled();
      expect(page.element.problems.map(({ path, value }) => [path, value])).to.deep.equal([['race', race]]);
      expect(page.problems).to.deep.equal([`race is "${race}"; it has to be a distance and a time such as 10k 45:00.`]);
      expect(page.headline).to.match(/^Four hours in build/);
    });

  it('from the first on faulty leaves a panel that can be driven, and typing a race puts it right', async () => {
    const page = await openRunning(`${scene} race="fast"`);
    expect(page.problems).to.have.length(1);
    await page.chooseDistance('10 km');
    await page.heardOnce(() => page.typeIn('running-time', '45:00'));
    expect(page.paceOf('slow')).to.equal(`${paces('slow', uptake(10_000, 2700))} a kilometre`);
    // What the page said is no longer wanted.
    expect(page.problems).to.deep.equal([]);
  });

  it('with a time that nobody takes is told with times, not seconds', async () => {
    const page = await open();
    page.element.race = '10k 5:00';
    await page.settled();
    expect(page.problems.join()).to.match(/^Its time is "?5:00"?; allowed: 20:50 to 2:46:40\.$/);
  });

  it('is forgiven as soon as it is put right', async () => {
    const page = await open();
    page.element.race = 'fast';
    await page.settled();
    page.element.race = '10k 44:00';
    await page.settled();
    expect([page.problems, page.element.problems, page.running.wishes.race?.seconds]).to.deep.equal([[], [], 2640]);
  });
});

describe('the property running', () => {
  it('is the rest of what is known; the race of the attribute counts over its own', async () => {
    const page = await open();
    page.element.running = { unit: 'mile', age: 40, race: { metres: 5000, seconds: 1200 } };
    await page.settled();
    expect(page.running.wishes).to.include({ unit: 'mile', age: 40 });
    expect(page.running.wishes.race?.metres).to.equal(10_000);
    page.element.removeAttribute('race');
    await page.settled();
    expect(page.running.wishes.race?.metres).to.equal(5000);
  });

  it('is not touched', async () => {
    const running = Object.freeze({ unit: 'mile' });
    const page = await open();
    page.element.running = running;
    await page.settled();
    await page.chooseText(page.selectOf('running-unit'), 'kilometres');
    expect([page.element.running === running, running]).to.deep.equal([true, { unit: 'mile' }]);
  });

  it('set again takes over from what a person did', async () => {
    const page = await open();
    await page.typeIn('running-time', '40:00');
    page.element.running = { weight: 70 };
    await page.settled();
    expect([page.running.wishes.race?.seconds, page.running.wishes.weight]).to.deep.equal([2700, 70]);
    await page.typeIn('running-time', '40:00');
    page.element.running = { weight: 70 };
    await page.settled();
    expect(page.running.wishes.race?.seconds).to.equal(2700);
  });

  for (const value of ['fast', 12, [1], true])
    it(`that is no object is told: ${JSON.stringify(value)}`, async () => {
      const page = await open();
      page.element.running = value;
      await page.settled();
      expect(page.element.problems.map(({ path }) => path)).to.deep.equal(['running']);
      expect(page.problems.join()).to.match(/^running is .*an object\.$/);
      expect(page.headline).to.match(/^Four hours in build/);
    });

  for (const [value, path, says] of [
    [{ age: 3 }, 'running.age', 'Age is 3; allowed: 5 to 110.'],
    [{ unit: 'league' }, 'running.unit', 'allowed: km or mile'],
    [{ sport: 1 }, 'running.sport', 'running.sport'],
    [{ race: { metres: 10_000 } }, 'running.race.seconds', 'missing'],
    [{ restingHeart: 115, highestHeart: 110 }, 'running.restingHeart', 'Resting heart rate is 115'],
  ] as const)
    it(`is told as a problem of ${path}: ${JSON.stringify(value)}`, async () => {
      const page = await openRunning();
      page.element.running = value;
      await page.settled();
      expect(page.element.problems.map((problem) => problem.path)).to.contain(path);
      expect(page.problems.join('|')).to.contain(says);
      expect(page.headline).to.match(/^Four hours in build/);
      page.element.running = { age: 30 };
      await page.settled();
      expect([page.problems, page.running.wishes.age]).to.deep.equal([[], 30]);
    });

  it('that cannot be leaves the panel as it was', async () => {
    const page = await open();
    const { lead } = page;
    page.element.running = { age: 3 };
    await page.settled();
    expect(page.has('.running .lead') && page.lead).to.equal(lead);
  });

  it('null and undefined are nothing', async () => {
    const page = await open();
    for (const value of [null, undefined]) {
      page.element.running = value;
      await page.settled();
      expect([page.problems, page.running.wishes.race?.seconds]).to.deep.equal([[], 2700]);
    }
  });
});
