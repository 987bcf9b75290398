import { expect } from '@open-wc/testing';
import { collapsed } from '../text.js';
import { openStrength, type StrengthPage } from './strength-page.js';

const all = (page: StrengthPage): string[] => page.sessions.flatMap((_, index) => page.movements(index));
const pattern = (page: StrengthPage, session: number): string[] => page.movements(session).sort();
const leftOut = (page: StrengthPage, session: number): string[] => {
  const line = [...(page.sessions[session]?.querySelectorAll(':scope > p') ?? [])]
    .map(collapsed)
    .find((text) => text.startsWith('Left out for want of time: '));
  return (line ?? '')
    .replace(/^.*?: |\.$/g, '')
    .split(/, and | and |, /)
    .filter((name) => name !== '');
};

describe('what there is to train with', () => {
  // The forms of a pattern, and what they need: shared/movements/movements.json; the stage goes up to grade 4.
  it('is that of the attribute, and each tick changes the movements and tells the page once', async () => {
    const page = await openStrength();
    expect(['a band', 'dumbbells', 'a barbell'].map((each) => page.equipment(each).checked)).to.deep.equal([
      ...[true, true, false],
    ]);
    expect(page.movements(0)).to.include('Goblet squat');
    const { strength } = await page.heardOnce(() => page.ticks('a barbell'));
    expect(strength?.wishes.equipment).to.deep.equal(['band', 'dumbbells', 'barbell']);
    expect(page.movements(0)).to.include('Squat with a barbell');
    expect(page.movements(1)).to.include('Deadlift with a barbell');
    await page.ticks('a barbell');
    await page.ticks('dumbbells');
    expect(page.movements(0)).to.include.members(['Squat', 'Split squat']);
    expect(all(page).join()).to.not.match(/dumbbell|barbell|Goblet/);
    await page.ticks('a band');
    expect(all(page).join()).to.not.match(/band/);
    expect(page.strength.wishes.equipment).to.deep.equal([]);
  });

  it('needs no ground of its own: with nothing, every pattern has a form', async () => {
    const page = await openStrength();
    const before = page.sessions.map((_, index) => page.movements(index).length + leftOut(page, index).length);
    await page.ticks('dumbbells');
    await page.ticks('a band');
    expect(page.sessions.map((_, index) => page.movements(index).length + leftOut(page, index).length)).to.deep.equal(
      before,
    );
  });
});

describe('the minutes of a session', () => {
  it('are as planned until the slider is moved, and then the same for all', async () => {
    const page = await openStrength();
    expect(page.panelText).to.contain('As planned: 35 min and 40 min.');
    await page.heardOnce(() => page.dragTo('strength-minutes', 30));
    expect(page.lead).to.equal('Heavier: sessions of 30 minutes and 30 minutes.');
    expect([page.typedIn('strength-minutes').value, page.strength.wishes.minutes]).to.deep.equal(['30', 30]);
    // The week on the planner stays as it is.
    expect(page.row('strength').sessions).to.equal('35 + 40');
  });

  it('at 20 leave out by name what is least important, and fit', async () => {
    const page = await openStrength();
    await page.dragTo('strength-minutes', 90);
    const whole = page.sessions.map((_, index) => pattern(page, index));
    expect(page.sessions.map((_, index) => leftOut(page, index))).to.deep.equal([[], []]);
    await page.dragTo('strength-minutes', 20);
    for (const [index] of page.sessions.entries()) {
      expect(leftOut(page, index)).to.not.deep.equal([]);
      expect([...page.movements(index), ...leftOut(page, index)].sort()).to.deep.equal(whole[index]);
      const used = /([\d.]+) minutes of 20 minutes/.exec(collapsed(page.sessions[index] ?? page.root))?.[1];
      expect(Number(used)).to.be.at.most(20);
    }
    // The lists of shared/methods/default.json: squat first, then the calf; push, pull and hip last.
    expect(page.movements(0)).to.include('Goblet squat');
    expect(leftOut(page, 0)).to.include.members(['Row with a dumbbell', 'Overhead press with dumbbells']);
    expect(page.movements(1)).to.include('Hip hinge with dumbbells');
  });

  it('more never have a movement less', async () => {
    const page = await openStrength();
    let before = 0;
    for (const minutes of [5, 10, 15, 20, 25, 30, 40, 50, 60]) {
      await page.dragTo('strength-minutes', minutes);
      const now = page.movements(0).length;
      expect(now, String(minutes)).to.be.at.least(before);
      before = now;
    }
  });

  it('“as planned again” come back', async () => {
    const page = await openStrength();
    const before = page.panelText;
    await page.dragTo('strength-minutes', 20);
    await page.heardOnce(() => page.click(page.named('.strength button.act', 'As planned again')));
    expect([page.panelText, page.strength.wishes.minutes]).to.deep.equal([before, null]);
  });

  it('“as planned again” does not lose the focus', async () => {
    const page = await openStrength();
    await page.dragTo('strength-minutes', 20);
    await page.goTo(page.named('.strength button.act', 'As planned again'));
    await page.press('Enter');
    expect(page.root.activeElement).to.not.equal(null);
  });

  it('can be typed, and stay when the hours change', async () => {
    const page = await openStrength();
    await page.typeIn('strength-minutes', '25');
    await page.drag('hours', 5);
    expect(new Set(page.lead.match(/\d+ minutes/g))).to.deep.equal(new Set(['25 minutes']));
  });

  it('too few for anything are told, session by session', async () => {
    const page = await openStrength('hours="4" phase="build" equipment="none"');
    await page.typeIn('strength-minutes', '5');
    const empty = page.sessions.map((_, index) => page.movements(index).length === 0);
    expect(empty).to.include(true);
    for (const [index, isEmpty] of empty.entries()) {
      const line = `Session ${String(index + 1)}: 5 minutes are too few for a movement with its sets.`;
      expect(page.notes.includes(line), line).to.equal(isEmpty);
    }
  });

  for (const [text, says] of [
    ['3', /5 to 180/],
    ['many', /number/],
    ['', /number/],
  ] as const)
    it(`"${text}" stays with a sentence that is read out, and the sessions are as they were`, async () => {
      const page = await openStrength();
      const before = page.strength;
      const events = await page.heard(() => page.typeIn('strength-minutes', text));
      expect([events, page.strength]).to.deep.equal([[], before]);
      expect([page.typedIn('strength-minutes').value, page.typedIn('strength-minutes').ariaInvalid]).to.deep.equal([
        ...[text, 'true'],
      ]);
      expect(page.hintOf('strength-minutes')).to.match(says);
      expect(page.told).to.equal(page.hintOf('strength-minutes'));
    });
});

describe('a movement', () => {
  it('opens, and shows how it is done and what to mind', async () => {
    const page = await (await openStrength()).opensMovement('Squat jump');
    const said = collapsed(page.detailsOf('Squat jump'));
    expect(said).to.contain('jump up; land softly');
    for (const caution of ['Jump on soft, even ground.', 'Not with pain in a bone or tendon.', 'Few jumps at first'])
      expect(said).to.contain(caution);
    await page.opensMovement('Goblet squat');
    expect(collapsed(page.detailsOf('Goblet squat'))).to.contain('Hold a dumbbell upright before the chest and squat.');
    expect(collapsed(page.detailsOf('Goblet squat'))).to.not.contain('Jump on soft');
  });

  it('tells what its sets weigh of the heaviest single: five and two in hand are seven, 83 per cent', async () => {
    const page = await (await openStrength()).opensMovement('Goblet squat');
    expect(page.lineOf('Goblet squat')).to.match(/^\d × 5 effort 8 of 10, 2 repetitions in hand$/);
    // Sheppard JM, Triplett NT 2016, table of loads and repetitions.
    expect(collapsed(page.detailsOf('Goblet squat'))).to.contain('About 83% of the heaviest single.');
  });

  it('is changed in all sessions that have its pattern, and the page hears of it once', async () => {
    const page = await (await openStrength()).opensMovement('Split squat with the back foot raised');
    await page.heardOnce(() => page.chooseText(page.formsOf('Split squat with the back foot raised'), 'Step-up'));
    for (const session of [0, 1]) {
      expect(page.movements(session)).to.include('Step-up');
      expect(page.movements(session).join()).to.not.contain('Split squat');
    }
    expect(page.strength.wishes.forms).to.deep.equal({ 'single-leg': 'step-up' });
    expect(page.detailsOf('Step-up').open).to.equal(true);
  });

  it('lists its forms from the easiest on, each with what it lacks', async () => {
    const page = await (await openStrength()).opensMovement('Goblet squat');
    const texts = (): string[] => [...page.formsOf('Goblet squat').options].map(({ text }) => text.trim());
    expect(texts()).to.deep.equal([
      ...['Sit to stand', 'Squat', 'Goblet squat', 'Squat with a barbell (needs a barbell)'],
    ]);
    expect(page.formsOf('Goblet squat').selectedOptions[0]?.text.trim()).to.equal('Goblet squat');
  });

  it('wished for without what it needs is told, and comes as soon as that is there', async () => {
    const page = await (await openStrength()).opensMovement('Goblet squat');
    await page.chooseText(page.formsOf('Goblet squat'), 'Squat with a barbell (needs a barbell)');
    expect(page.movements(0)).to.include('Goblet squat');
    expect(page.notes).to.include('Squat with a barbell needs what is not there: the usual form stands in for it.');
    expect(page.formsOf('Goblet squat').selectedOptions[0]?.text.trim()).to.equal('Goblet squat');
    await page.ticks('a barbell');
    expect(page.movements(0)).to.include('Squat with a barbell');
    expect(page.notes.join()).to.not.contain('needs what is not there');
  });

  it('stays the one that is open when others before it go', async () => {
    const page = await (await openStrength()).opensMovement('Goblet squat');
    // With less time the jump before it is left out.
    for (const minutes of [30, 25, 20, 15, 10]) {
      await page.dragTo('strength-minutes', minutes);
      for (const details of page.all<HTMLDetailsElement>('.exercise')) {
        const name = collapsed(details.querySelector('summary b') ?? details);
        expect(`${String(minutes)} ${name} ${String(details.open)}`).to.equal(
          `${String(minutes)} ${name} ${String(name === 'Goblet squat')}`,
        );
        expect(details.querySelector('select') !== null, `${String(minutes)} ${name}`).to.equal(details.open);
      }
    }
  });
});
