import { expect } from '@open-wc/testing';
import { openChecks, questions, type ChecksPage, type Question } from './checks-page.js';

const opened = async (): Promise<ChecksPage> => (await openChecks()).opens('start');

const local = 'Local rules and the judgement of licensed practitioners come first.';
const start = 'Nothing that was said here stands against starting. When something changes, answer again.';

/** What is said by the published screening (E01, E02 in shared/evidence), and that a plan stays. */
const advised: readonly (readonly [readonly Question[], RegExp])[] = [
  [['known-disease'], /^With a known disease: ask a doctor before hard training\./],
  [['not-active'], /^Not active in the last months: begin with easy to moderate training/],
  [
    ['known-disease', 'easy-only'],
    /^With a known disease and no symptoms, easy to moderate.*nearly all running counts as vigorous.*ask a doctor/,
  ],
  [['easy-only'], new RegExp(`^${start}`)],
  [['not-active', 'easy-only'], /^Not active in the last months/],
];

const helped: readonly (readonly [Question, RegExp])[] = [
  ['pain', /^Pain in training: lower the load or pause.*physiotherapist or a doctor\./],
  ['pregnant', /^Pregnant: .*Plan with your maternity team/],
  ['recent-birth', /^After a birth: .*specialised physiotherapist/],
  ['low-energy', /^Too little energy .*see a doctor or a dietitian/],
];

describe('answers that stop nothing', () => {
  for (const [answers, says] of advised)
    it(`${answers.join(' and ')}: there is advice, and the plan stays as it is`, async () => {
      const page = await opened();
      const before = JSON.stringify(page.element.plan);
      const events = await page.heard(() => page.ticks(...answers));
      expect([events, JSON.stringify(page.element.plan)]).to.deep.equal([[], before]);
      expect([page.advice.length, page.advice[1]]).to.deep.equal([2, local]);
      expect(page.advice[0]).to.match(says);
      expect(page.find('.advice').getAttribute('role')).to.equal('alert');
      expect([page.answers, page.has('[part="answer"]'), page.has('.check')]).to.deep.equal([
        ...[questions.filter((id) => answers.includes(id)), true, true],
      ]);
    });

  for (const [answer, says] of helped)
    it(`${answer}: its caution is there, and that local rules and judgement come first`, async () => {
      const page = await opened();
      await page.ticks(answer);
      expect([page.advice.length, page.advice[1]]).to.deep.equal([2, local]);
      expect(page.advice[0])
        .to.match(says)
        .and.to.match(/local rules|that judgement|its judgement|whose judgement/i);
      expect(page.element.plan).to.not.equal(null);
    });

  it('all cautions at once stand in the order of the questions, beside a stop too', async () => {
    const page = await opened();
    await page.ticks('low-energy', 'pregnant', 'pain', 'recent-birth');
    const order = /Pain in training.*Pregnant:.*After a birth.*Too little energy/;
    expect(page.advice.join(' ')).to.match(order);
    await page.ticks('symptoms');
    expect(page.advice.join(' '))
      .to.match(/^Do not train now.*no plan is shown/)
      .and.to.match(order);
  });

  it('are ticked and unticked by Space, each with the focus where it is', async () => {
    const page = await opened();
    for (const id of questions.filter((each) => !/symptoms|bone-pain|not-active/.test(each))) {
      await page.goTo(page.question(id));
      await page.press(' ');
      expect([page.answers, page.hasFocus(page.question(id))]).to.deep.equal([[id], true]);
      await page.press(' ');
      expect([page.answers, page.advice, page.hasFocus(page.question(id))]).to.deep.equal([[], [], true]);
    }
  });
});

describe('“forget the answers”', () => {
  it('is there only where there are answers, and forgets all of them', async () => {
    const page = await opened();
    expect(page.texts('.checks-start button')).to.deep.equal([]);
    await page.ticks('pain', 'easy-only', 'pregnant');
    const events = await page.heard(() => page.click(page.forgetButton));
    expect([events, page.answers, page.advice, page.texts('.checks-start button')]).to.deep.equal([[], [], [], []]);
  });

  it('brings the plan back', async () => {
    const page = await opened();
    await page.ticks('symptoms');
    await page.click(page.forgetButton);
    expect([page.answers, page.element.plan !== null, page.has('[part="answer"]')]).to.deep.equal([[], true, true]);
    expect(page.title).to.equal('Held against what is known');
  });

  it('does not lose the focus', async () => {
    const page = await opened();
    await page.ticks('pain');
    await page.goTo(page.forgetButton);
    await page.press('Enter');
    expect(page.answers).to.deep.equal([]);
    expect(page.root.activeElement).to.not.equal(null);
  });
});
