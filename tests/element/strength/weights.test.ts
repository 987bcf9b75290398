import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import { openStrength, type StrengthPage } from './strength-page.js';

const squat = 'Goblet squat';
const kilograms = 'strength-goblet-squat-kilograms';
const repetitions = 'strength-goblet-squat-repetitions';
const opened = async (): Promise<StrengthPage> => (await openStrength()).opens('lifted');

/** Epley B. Poundage chart. 1985. */
const epley = (weight: number, times: number): number => weight * (1 + times / 30);
/** Brzycki M. J Phys Educ Recreat Dance 1993;64(1):88–90. */
const brzycki = (weight: number, times: number): number => (weight * 36) / (37 - times);
/** Seven repetitions can be done with 83 per cent (Sheppard and Triplett 2016), and plates come in steps of 2.5 kg. */
const ofSeven = (most: number): string => `${String(2.5 * Math.floor((most * 0.83) / 2.5 + 1e-9))} kg`;

async function told(weight: string, times: string): Promise<StrengthPage> {
  const page = await opened();
  await page.typeIn(kilograms, weight);
  await page.typeIn(repetitions, times);
  return page;
}

describe('a set that tells the weights', () => {
  it('of kilograms alone is held: no weight yet, and the number stays', async () => {
    const page = await opened();
    await page.typeIn(kilograms, '40');
    expect([page.strength.wishes.lifted, page.strength.maxima]).to.deep.equal([[], []]);
    expect([page.typedIn(kilograms).value, page.hintOf(kilograms), page.maximumOf(squat)]).to.deep.equal([
      '40',
      '',
      '',
    ]);
    expect(page.lineOf(squat)).to.not.contain('kg');
    await page.drag('hours', 4.5);
    expect(page.typedIn(kilograms).value).to.equal('40');
  });

  for (const first of ['kilograms', 'repetitions'] as const)
    it(`gives a weight and the heaviest single as soon as both are there, ${first} first`, async () => {
      const page = await opened();
      if (first === 'kilograms') await page.typeIn(kilograms, '40');
      else await page.typeIn(repetitions, '5');
      const { strength } = await page.heardOnce(() =>
        first === 'kilograms' ? page.typeIn(repetitions, '5') : page.typeIn(kilograms, '40'),
      );
      expect(strength?.wishes.lifted).to.deep.equal([{ movement: 'goblet-squat', kilograms: 40, repetitions: 5 }]);
      expect(page.maximumOf(squat)).to.equal(
        `Heaviest single about ${brzycki(40, 5).toFixed(0)} to ${epley(40, 5).toFixed(1)} kg, by two equations; the lower is used.`,
      );
      expect(page.lineOf(squat)).to.contain(` ${ofSeven(brzycki(40, 5))} effort`);
      await page.opensMovement(squat);
      // 2 to 10 per cent more than 35 kg are 35.7 to 38.5 kg: of whole steps of 2.5 kg there is one.
      expect(collapsed(page.detailsOf(squat))).to.contain('go on with 37.5 kg.');
    });

  it('of ten repetitions has one heaviest single: both equations meet there', async () => {
    const page = await told('30', '10');
    expect(epley(30, 10)).to.be.closeTo(brzycki(30, 10), 1e-9);
    expect(page.maximumOf(squat)).to.equal('Heaviest single 40 kg.');
    expect(page.lineOf(squat)).to.contain(` ${ofSeven(40)} effort`);
  });

  it('loses its weight where one number is taken out, and keeps the other', async () => {
    const page = await told('40', '5');
    await page.typeIn(kilograms, '');
    expect([page.strength.wishes.lifted, page.maximumOf(squat)]).to.deep.equal([[], '']);
    expect([page.typedIn(kilograms).value, page.typedIn(repetitions).value]).to.deep.equal(['', '5']);
    expect(page.lineOf(squat)).to.not.contain('kg');
    await page.typeIn(kilograms, '45');
    expect(page.strength.wishes.lifted).to.deep.equal([{ movement: 'goblet-squat', kilograms: 45, repetitions: 5 }]);
    await page.typeIn(repetitions, '');
    expect([page.typedIn(kilograms).value, page.typedIn(repetitions).value]).to.deep.equal(['45', '']);
  });

  it('is changed by either number', async () => {
    const page = await told('40', '5');
    await page.typeIn(repetitions, '8');
    expect(page.lineOf(squat)).to.contain(` ${ofSeven(Math.min(brzycki(40, 8), epley(40, 8)))} effort`);
    await page.typeIn(kilograms, '42.5');
    expect(page.strength.wishes.lifted).to.deep.equal([{ movement: 'goblet-squat', kilograms: 42.5, repetitions: 8 }]);
  });

  it('leaves those of other movements alone', async () => {
    const page = await told('40', '5');
    await page.typeIn('strength-dumbbell-hinge-kilograms', '50');
    await page.typeIn('strength-dumbbell-hinge-repetitions', '6');
    expect(page.strength.maxima.map(({ movement }) => movement)).to.deep.equal(['goblet-squat', 'dumbbell-hinge']);
    expect(page.maximumOf(squat)).to.contain('46.7 kg');
  });

  it('stays where its movement is no longer in the week', async () => {
    const page = await told('40', '5');
    await page.ticks('dumbbells');
    expect(page.movements(0)).to.not.include(squat);
    expect(page.typedIn(kilograms).value).to.equal('40');
    await page.ticks('dumbbells');
    expect(page.lineOf(squat)).to.contain(' kg');
  });

  it('is asked for only where a movement takes a weight', async () => {
    const page = await (await openStrength('hours="4" phase="build" equipment="none"')).opens('lifted');
    expect(page.panelText).to.contain('No movement of this week takes a weight');
    expect(page.all('.lifted input')).to.deep.equal([]);
  });
});

describe('a number that cannot be', () => {
  // 1 to 500 kg: src/plan/strength/wishes.ts; one to ten repetitions: shared/methods/default.json.
  for (const [id, text, says] of [
    [kilograms, '0', /1 to 500/],
    [kilograms, '999', /1 to 500/],
    [kilograms, 'heavy', /number/],
    [repetitions, '11', /1 to 10/],
    [repetitions, '2.5', /steps of 1\./],
  ] as const) {
    it(`"${text}" stays in ${id} with a sentence, and the set before it counts`, async () => {
      const page = await told('40', '5');
      const before = page.strength;
      const events = await page.heard(() => page.typeIn(id, text));
      expect([events, page.strength]).to.deep.equal([[], before]);
      expect([page.typedIn(id).value, page.typedIn(id).ariaInvalid]).to.deep.equal([text, 'true']);
      expect(page.hintOf(id)).to.match(says);
      expect(page.told).to.equal(page.hintOf(id));
    });

    it(`"${text}" is told in ${id} at once, also where the other number is not there yet`, async () => {
      const page = await opened();
      await page.typeIn(id, text);
      expect([page.typedIn(id).value, page.typedIn(id).ariaInvalid]).to.deep.equal([text, 'true']);
      expect(page.hintOf(id)).to.match(says);
    });
  }
});

describe('the age', () => {
  it('under 18 comes with a caution, from 65 on with advice, and is left out again', async () => {
    const page = await opened();
    const { notes } = page;
    await page.heardOnce(() => page.typeIn('strength-age', '17'));
    expect(page.notes.join('|')).to.contain('Caution: under 18, lift with a qualified person beside you');
    await page.typeIn('strength-age', '18');
    expect(page.notes).to.deep.equal(notes);
    await page.typeIn('strength-age', '65');
    expect(page.notes.join('|')).to.contain('From 65 on two sessions a week keep strength');
    await page.typeIn('strength-age', '');
    expect([page.notes, page.strength.wishes.age]).to.deep.equal([notes, null]);
  });

  it('that cannot be stays', async () => {
    const page = await opened();
    await page.typeIn('strength-age', '200');
    expect(page.typedIn('strength-age').value).to.equal('200');
    expect(page.hintOf('strength-age')).to.match(/^Age is "200"; allowed: 5 to 110\.$/);
  });
});
