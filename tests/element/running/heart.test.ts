import { expect } from '@open-wc/testing';
import { shares, speedAt, uptake } from './equations.js';
import { openRunning, scene, type RunningPage } from './running-page.js';

const opened = async (attributes = scene): Promise<RunningPage> => (await openRunning(attributes)).opens('heart');
const bands = (page: RunningPage): string[] => page.texts('.bands tr');
const kinds = ['slow', 'tempo', 'intervals'] as const;

describe('the heart rate', () => {
  it('from the age is an estimate, and says so', async () => {
    const page = await opened();
    const { running } = await page.heardOnce(() => page.typeIn('running-age', '40'));
    // Tanaka H and others 2001: 208 − 0.7 × age; Gellish RL and others 2007: 207 − 0.7 × age.
    expect(running?.highest?.beats).to.equal(180);
    expect(page.panelText).to.contain('Highest heart rate about 180, estimated from the age');
    expect(page.panelText).to.contain('Tanaka 2001 180 and Gellish 2007 179');
  });

  it('gives bands by the highest alone: 57, 64, 77 and 96 per cent', async () => {
    const page = await opened();
    await page.typeIn('running-highest', '180');
    // Garber CE and others, ACSM position stand 2011, of 180: 102.6, 115.2, 138.6, 172.8.
    expect(bands(page)).to.deep.equal([
      ...['light 103–115', 'moderate 116–138', 'vigorous 139–172', 'near maximal to maximal 173–180'],
    ]);
    expect(page.panelText).to.contain('Ranges by the highest heart rate alone');
    expect(page.panelText).to.contain('Highest heart rate 180, as measured.');
  });

  it('gives bands by the reserve where the resting one is told: 30, 40, 60 and 90 per cent', async () => {
    const page = await opened();
    await page.typeIn('running-highest', '180');
    await page.typeIn('running-resting', '60');
    // Karvonen MJ and others 1957, of 180 and 60: 96, 108, 132, 168.
    expect(bands(page)).to.deep.equal([
      ...['light 96–107', 'moderate 108–131', 'vigorous 132–167', 'near maximal to maximal 168–180'],
    ]);
    expect(page.panelText).to.contain('Ranges by the reserve');
  });

  it('stands on the card of each kind, and the highest with the intervals', async () => {
    const page = await opened();
    for (const kind of kinds) expect(page.guideOf(kind)).to.not.contain('Heart rate');
    await page.typeIn('running-highest', '180');
    for (const kind of kinds) expect(page.guideOf(kind)).to.match(/Heart rate \d+–\d+ a minute, /);
    // The whole uptake takes the whole heart.
    expect(page.guideOf('intervals')).to.match(/–180 a minute, .*near maximal/);
  });

  it('measured counts over the age, and far below it asks whether it was the highest', async () => {
    const page = await opened();
    await page.typeIn('running-age', '40');
    await page.typeIn('running-highest', '150');
    expect(page.panelText).to.contain('Highest heart rate 150, as measured.');
    // 180 − 150 is more than twice the 12 beats by which estimates are off.
    expect(page.notes).to.deep.equal([
      'A highest heart rate of 150 is far below the 180 estimated from the age: was it really the highest?',
    ]);
    await page.typeIn('running-highest', '160');
    expect(page.notes).to.deep.equal([]);
  });

  it('is left out again, one by one, and all is gone', async () => {
    const page = await opened();
    const before = page.panelText;
    for (const [id, text] of [
      ['age', '40'],
      ['highest', '180'],
      ['resting', '60'],
      ['weight', '70'],
    ] as const)
      await page.typeIn(`running-${id}`, text);
    expect(page.running.wishes).to.include({ age: 40, highestHeart: 180, restingHeart: 60, weight: 70 });
    for (const id of ['age', 'highest', 'resting', 'weight']) await page.typeIn(`running-${id}`, '');
    expect(page.running.wishes).to.include({ age: null, highestHeart: null, restingHeart: null, weight: null });
    expect([page.panelText, bands(page)]).to.deep.equal([before, []]);
  });

  it('under 18 comes with a caution', async () => {
    const page = await opened();
    await page.typeIn('running-age', '17');
    expect(page.notes[0]).to.match(/^Caution: under 18, plan with a coach trained for young athletes/);
    expect(page.find('.concrete-notes li').dataset['level']).to.equal('caution');
    await page.typeIn('running-age', '18');
    expect(page.notes).to.deep.equal([]);
  });
});

describe('a text in the box of the heart that is no value', () => {
  // What is allowed: src/plan/running/wishes.ts.
  for (const [id, text, says] of [
    ['age', '3', /^Age is "3"; allowed: 5 to 110\.$/],
    ['highest', '300', /allowed: 100 to 240\.$/],
    ['resting', '10', /allowed: 25 to 120\.$/],
    ['weight', '5', /allowed: 20 to 300\.$/],
    ['weight', 'heavy', /a number\.$/],
  ] as const)
    it(`"${text}" in ${id} stays with a sentence, and all is as it was`, async () => {
      const page = await opened();
      const before = page.running;
      const events = await page.heard(() => page.typeIn(`running-${id}`, text));
      expect([events, page.running]).to.deep.equal([[], before]);
      const field = page.typedIn(`running-${id}`);
      expect([field.value, field.ariaInvalid]).to.deep.equal([text, 'true']);
      expect(page.hintOf(`running-${id}`)).to.match(says);
      expect(page.told).to.equal(page.hintOf(`running-${id}`));
    });

  it('a resting rate above the highest is refused in the words of the screen', async () => {
    const page = await opened();
    await page.typeIn('running-highest', '110');
    await page.typeIn('running-resting', '115');
    expect(page.hintOf('running-resting')).to.match(/^Resting heart rate is "115"; /);
    expect(page.hintOf('running-resting')).to.not.match(/restingHeart|highestHeart/);
    expect(page.running.wishes.restingHeart).to.equal(null);
  });
});

describe('energy', () => {
  it('of a run follows the printed equation, and the week has its sum', async () => {
    const page = await opened(`${scene} race="10k 45:00"`);
    expect(page.panelText).to.not.contain('kcal');
    await page.heardOnce(() => page.typeIn('running-weight', '70'));
    // ACSM's Guidelines, 10th ed., table 6.3: 3.5 + 0.2 × speed ml a kilogram a minute; 5 kcal a litre.
    const [from, to] = shares.slow.map((share) => {
      const oxygen = 3.5 + 0.2 * speedAt(share, uptake(10_000, 2700));
      return 10 * Math.round(((oxygen * 70) / 1000) * 5 * 35 * 0.1);
    });
    expect(page.runHeads[0]).to.match(new RegExp(`· ${String(from)} to ${String(to)} kcal$`));
    expect(page.panelText).to.match(/Energy of the week, .*: about [\d,]+ to [\d,]+ kcal\. A rough estimate/);
    await page.typeIn('running-weight', '');
    expect(page.panelText).to.not.contain('kcal');
  });

  it('is not told without a pace', async () => {
    const page = await opened();
    await page.typeIn('running-weight', '70');
    expect(page.panelText).to.not.contain('kcal');
  });
});
