import { expect } from '@open-wc/testing';
import builtIn from '../../../shared/methods/default.json';
import { openStrength, type StrengthPage } from './strength-page.js';

const bare = 'hours="4" phase="build" level="developing"';
const names = (page: StrengthPage): string => page.sessions.flatMap((_, index) => page.movements(index)).join();
const checked = (page: StrengthPage): boolean[] =>
  page.all<HTMLInputElement>('.equipment input').map((box) => box.checked);

describe('the attribute equipment', () => {
  for (const [text, boxes] of [
    ['band dumbbells', [true, true, false]],
    ['barbell', [false, false, true]],
    ['  barbell   band ', [true, false, true]],
    ['none', [false, false, false]],
    ['', [false, false, false]],
  ] as const)
    it(`"${text}" ticks ${boxes.filter(Boolean).length} of the boxes`, async () => {
      const page = await openStrength(`${bare} equipment="${text}"`);
      expect([checked(page), page.problems]).to.deep.equal([boxes, []]);
    });

  it('"none" has movements that need nothing', async () => {
    const page = await openStrength(`${bare} equipment="none"`);
    expect(names(page)).to.not.match(/band|dumbbell|barbell|Goblet|back foot raised/);
    expect(page.movements(0)).to.include.members(['Squat', 'Split squat']);
  });

  it('left out is the usual of the method: a band and dumbbells', async () => {
    const page = await openStrength(bare);
    expect(checked(page)).to.deep.equal([true, true, false]);
  });

  it('changed later counts over what a person ticked; nothing is fired', async () => {
    const page = await openStrength(`${bare} equipment="band"`);
    await page.ticks('a barbell');
    const events = await page.heard(async () => {
      page.element.setAttribute('equipment', 'dumbbells');
      await page.settled();
    });
    expect([events, checked(page)]).to.deep.equal([[], [false, true, false]]);
    expect(page.movements(0)).to.include('Goblet squat');
  });

  it('does not count over what a person ticks after it', async () => {
    const page = await openStrength(`${bare} equipment="band"`);
    await page.ticks('a barbell');
    await page.drag('hours', 5);
    expect(checked(page)).to.deep.equal([true, false, true]);
  });

  it('with an unknown word is told, with what is allowed, and the planner is there', async () => {
    const page = await openStrength(`${bare} equipment="band kettle"`);
    expect(page.element.problems.map(({ path, value }) => [path, value])).to.deep.equal([['equipment', 'kettle']]);
    expect(page.problems).to.deep.equal(['equipment is "kettle"; allowed: band, dumbbells, barbell, or none.']);
    expect(page.headline).to.match(/^Four hours in build/);
    expect(page.sessions).to.have.length(2);
  });

  it('is forgiven as soon as the page puts it right', async () => {
    const page = await openStrength(`${bare} equipment="kettle"`);
    page.element.equipment = 'barbell';
    await page.settled();
    expect([page.problems, checked(page)]).to.deep.equal([[], [false, false, true]]);
  });

  it('is forgiven as soon as a person ticks something', async () => {
    const page = await openStrength(`${bare} equipment="kettle"`);
    await page.ticks('a barbell');
    expect(page.problems).to.deep.equal([]);
  });
});

describe('the property strength', () => {
  it('is the rest of what is wanted; the equipment of the attribute counts over its own', async () => {
    const page = await openStrength(`${bare} equipment="band"`);
    page.element.strength = { minutes: 30, equipment: ['barbell'], forms: { 'single-leg': 'step-up' } };
    await page.settled();
    expect([page.strength.wishes.minutes, checked(page)]).to.deep.equal([30, [true, false, false]]);
    expect(page.movements(0)).to.include('Step-up');
    page.element.removeAttribute('equipment');
    await page.settled();
    expect(checked(page)).to.deep.equal([false, false, true]);
  });

  it('set again takes over from what a person did, and is not touched', async () => {
    const page = await openStrength(bare);
    const strength = Object.freeze({ minutes: 30 });
    page.element.strength = strength;
    await page.settled();
    await page.dragTo('strength-minutes', 45);
    expect([page.element.strength === strength, strength.minutes]).to.deep.equal([true, 30]);
    page.element.strength = { minutes: 30 };
    await page.settled();
    expect(page.strength.wishes.minutes).to.equal(30);
  });

  for (const value of ['heavy', 12, ['band'], true])
    it(`that is no object is told: ${JSON.stringify(value)}`, async () => {
      const page = await openStrength(bare);
      page.element.strength = value;
      await page.settled();
      expect(page.element.problems.map(({ path }) => path)).to.deep.equal(['strength']);
      expect(page.problems.join()).to.match(/^strength is .*an object\.$/);
      expect(page.headline).to.match(/^Four hours in build/);
    });

  for (const [value, path, says] of [
    [{ minutes: 3 }, 'strength.minutes', 'Minutes for a session is 3; allowed: 5 to 180.'],
    [{ equipment: ['kettle'] }, 'strength.equipment[0]', 'band, dumbbells, or barbell'],
    [{ forms: { squat: 'plank' } }, 'strength.forms.squat', 'goblet-squat'],
    [{ lifted: [{ movement: 'squat', kilograms: 40, repetitions: 5 }] }, 'strength.lifted[0].movement', 'goblet-squat'],
    [{ sport: 1 }, 'strength.sport', 'strength.sport'],
  ] as const)
    it(`is told as a problem of ${path}: ${JSON.stringify(value)}`, async () => {
      const page = await openStrength(bare);
      page.element.strength = value;
      await page.settled();
      expect(page.element.problems.map((problem) => problem.path)).to.contain(path);
      expect(page.problems.join('|')).to.contain(says);
      expect(page.headline).to.match(/^Four hours in build/);
      page.element.strength = { minutes: 25 };
      await page.settled();
      expect([page.problems, page.strength.wishes.minutes]).to.deep.equal([[], 25]);
    });

  it('that cannot be leaves the panel as it was', async () => {
    const page = await openStrength(bare);
    const { lead } = page;
    page.element.strength = { minutes: 3 };
    await page.settled();
    expect(page.has('.strength .lead') && page.lead).to.equal(lead);
  });
});

describe('a form that only the coach’s own method has', () => {
  const sack = {
    ...{ id: 'sack-squat', name: 'Squat with a sack', how: 'Hold a sack and squat.', pattern: 'squat', grade: 3 },
    ...{ equipment: [], each_side: false, held: false, loaded: false },
  };
  const method = { ...builtIn, id: 'with-sack', strength: { ...builtIn.strength, movements: [sack] } };

  it('is a problem without that method, and none as soon as the method is there', async () => {
    const page = await openStrength(bare);
    page.element.method = method;
    page.element.strength = { forms: { squat: 'sack-squat' } };
    await page.until(() => page.movements(0).includes('Squat with a sack'), 'the movement comes');
    expect(page.problems).to.deep.equal([]);
    page.element.method = null;
    await page.until(() => page.problems.length > 0, 'the problem is told');
    expect(page.problems.join()).to.contain('sack-squat');
    page.element.method = method;
    await page.until(
      () => page.has('.strength .lead') && page.movements(0).includes('Squat with a sack'),
      'it is back',
    );
    expect(page.problems).to.deep.equal([]);
  });
});
