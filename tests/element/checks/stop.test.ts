import { aTimeout, expect } from '@open-wc/testing';
import { builtInMethod } from '../../../src/training/method/built-in.js';
import { builtInWeek } from '../../../src/training/method/built-in-week.js';
import { copiedHash } from '../copied-hash.js';
import { collapsed } from '../text.js';
import { openChecks, questions, scene, type ChecksPage, type Question } from './checks-page.js';
import { openWhole, shownPanels, state } from './whole-page.js';

/** The sentences of shared/locales/en.json that the published screening leads to (E01, E02, E05 in shared/evidence). */
const stopping: readonly { readonly answers: readonly Question[]; readonly says: RegExp }[] = [
  { answers: ['symptoms'], says: /^Do not train now\..*get medical help at once\.$/ },
  { answers: ['bone-pain'], says: /^Do not train now\./ },
  { answers: ['known-disease', 'not-active'], says: /^With a known disease, and not active.*ask a doctor before/ },
];

for (const { answers, says } of stopping)
  describe(`the answers ${answers.join(' and ')}`, () => {
    it('leave no plan, no other panel, and one advice that is announced', async () => {
      const page = await (await openWhole()).opens('start');
      expect(shownPanels(page)).to.have.length.greaterThan(8);
      const events = await page.heard(() => page.ticks(...answers));
      expect([events, page.element.plan, shownPanels(page)]).to.deep.equal([[], null, []]);
      expect(page.title).to.equal('No plan for now');
      expect(page.has('.check, .checks-load, .checks-own, .checks .lead, #checks-age')).to.equal(false);
      expect(page.find('.advice').getAttribute('role')).to.equal('alert');
      expect(page.all('[role="alert"]')).to.have.length(1);
      const [first = '', second, ...rest] = page.advice;
      expect(first).to.match(says);
      expect([second, rest]).to.deep.equal([
        'While this holds, no plan is shown.',
        ['Local rules and the judgement of licensed practitioners come first.'],
      ]);
      expect(page.element.problems).to.deep.equal([]);
    });

    it('leave no number of the plan in what is read out', async () => {
      const page = await (await openWhole()).opens('start');
      await page.drag('hours', 5);
      await page.ticks(...answers);
      expect(page.texts('[role="status"]').join(' ')).to.not.match(/\d/);
    });

    it('leave the focus on the box that was ticked by keyboard', async () => {
      const page = await (await openWhole()).opens('start');
      for (const id of answers) {
        await page.goTo(page.question(id));
        await page.press(' ');
        expect(page.hasFocus(page.question(id))).to.equal(true);
      }
      expect(page.element.plan).to.equal(null);
      await page.press(' ');
      expect(page.hasFocus(page.question(answers.at(-1) ?? 'pain'))).to.equal(true);
      expect(page.element.plan).to.not.equal(null);
    });

    it('taken back bring everything back as it was, drafts, scenarios and all', async () => {
      const page = await openWhole();
      await workOn(page);
      await page.opens('start');
      const [before, plan] = [state(page), JSON.stringify(page.element.plan)];
      await page.ticks(...answers);
      expect(page.element.plan).to.equal(null);
      expect(await page.heard(() => page.ticks(...answers.slice(0, 1)))).to.deep.equal([]);
      await page.until(
        () => page.has('.grid') && page.has('.board .day') && page.has('.strength .lead'),
        'all is back',
      );
      await page.until(() => page.has('#season-week-title') && page.has('.running .lead'), 'the season is back');
      await page.answered();
      const after = state(page);
      for (const [place, text] of Object.entries(before)) expect(after[place], place).to.equal(text);
      expect(JSON.stringify(page.element.plan)).to.equal(plan);
      expect([page.typedIn('checks-age').value, page.typedIn('checks-run').value]).to.deep.equal(['67', 'far']);
    });
  });

const allThree = 'split week checks';

/** What a person might have done before: inputs, drafts, a scenario, wishes of other panels. */
async function workOn(page: ChecksPage): Promise<void> {
  await page.drag('hours', 5);
  await page.add();
  await page.rename(1, 'More of it');
  await page.set(1, 'hours', 7);
  await page.click(page.find('.strength-lifted > summary'));
  await page.until(() => page.has('#strength-age'), 'the box opens');
  await page.typeIn('strength-age', 'old');
  await page.typeIn('checks-age', '67');
  await page.typeIn('checks-run', 'far');
  await page.type('hours', 'abc');
}

describe('while there is no plan', () => {
  const stopped = async (): Promise<ChecksPage> =>
    (await (await openChecks(scene, 'split season checks')).opens('start')).ticks('symptoms');

  it('a script that changes the hours gets none, and the page hears nothing', async () => {
    const page = await stopped();
    const events = await page.heard(async () => {
      page.element.hours = 7;
      await page.settled();
      page.element.setAttribute('phase', 'base');
      await page.settled();
    });
    expect([events, page.element.plan, shownPanels(page)]).to.deep.equal([[], null, []]);
    await page.ticks('symptoms');
    expect([page.element.plan?.inputs.hours, page.element.plan?.inputs.phase]).to.deep.equal([7, 'base']);
  });

  it('a link that is opened shows none, and the page hears nothing', async () => {
    const other = await openChecks('hours="8"', 'split sheet checks');
    await other.until(() => other.has('.grid'), 'the sheet comes');
    const hash = await copiedHash(other);
    other.element.remove();
    const page = await openChecks(scene, 'split sheet checks');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    await (await page.opens('start')).ticks('symptoms');
    const events = await page.heard(async () => {
      location.hash = hash;
      await page.answered();
    });
    history.replaceState(null, '', location.pathname + location.search);
    expect([events, page.element.plan, shownPanels(page)]).to.deep.equal([[], null, []]);
    await page.ticks('symptoms');
    expect(page.element.plan?.inputs.hours).to.equal(8);
  });

  it('a panel that the page adds does not show one either', async () => {
    const page = await stopped();
    page.element.panels = 'strength checks sheet basis running';
    await page.settled();
    await page.answered();
    expect([page.element.plan, shownPanels(page), page.has('.basis-panel')]).to.deep.equal([null, [], false]);
  });

  it('the page that takes the checks away shows its plan again, and puts them back as they were', async () => {
    const page = await stopped();
    page.element.panels = 'split';
    await page.settled();
    expect(page.has('.checks')).to.equal(false);
    expect([page.element.plan !== null, page.has('[part="answer"]')]).to.deep.equal([true, true]);
    page.element.panels = 'split checks';
    await page.until(() => page.has('.checks .panel-title'), 'the checks are back');
    expect([page.element.plan, shownPanels(page), page.answers]).to.deep.equal([null, [], ['symptoms']]);
  });

  it('another language is spoken at once', async () => {
    const page = await stopped();
    page.element.lang = 'de';
    await page.until(() => page.title === 'Vorerst kein Plan', 'German comes');
    expect([page.element.plan, shownPanels(page)]).to.deep.equal([null, []]);
    expect(page.advice.join()).to.match(/^Jetzt nicht trainieren\..*Örtliche Regeln/);
  });

  it('the sentence that this is no medical advice is still there', async () => {
    for (const panels of ['split checks', 'checks split', 'checks sheet', 'checks']) {
      const page = await (await openChecks(scene, panels)).opens('start');
      await page.ticks('symptoms');
      expect(page.all('.cautions').length, panels).to.equal(1);
    }
  });

  it('closing the questions does not hide the advice', async () => {
    const page = await stopped();
    await page.goTo(page.find('.checks-start > summary'));
    await page.press('Enter');
    await page.settled();
    expect(page.find('.advice').checkVisibility()).to.equal(true);
  });

  it('every further answer keeps the stop; only the last that stops lifts it', async () => {
    const page = await stopped();
    await page.ticks('bone-pain', 'easy-only', 'pain');
    await page.ticks('symptoms');
    expect(page.element.plan).to.equal(null);
    await page.ticks('bone-pain');
    expect(page.element.plan).to.not.equal(null);
  });
});

describe('a week that is still being looked for when an answer stops the plan', () => {
  it('arrives without telling the page of a plan', async () => {
    const page = await openChecks('hours="6" phase="build" level="elite" days="100,110,120,130,140,150,160"', allThree);
    await page.until(() => page.element.plan?.week?.state === 'laid', 'the first week is laid');
    const full = { ...builtInMethod, id: 'full-weeks', week: { ...builtInWeek, sessions_a_day: 3, rest_days: 0 } };
    page.element.method = full;
    await page.until(() => page.element.plan?.method.id === 'full-weeks', 'weeks can be full');
    await page.opens('start');
    const events = await page.heard(async () => {
      // Somebody asks for a week that takes long, and answers before it is there.
      await page.drag('hours', 16);
      page.question('symptoms').click();
      await page.settled();
      expect(page.element.plan).to.equal(null);
      await aTimeout(5000);
    });
    expect(events.map(({ detail }) => detail.week?.state)).to.deep.equal(['looking']);
    expect(page.texts('[role="status"]').join(' ')).to.not.match(/\d/);
    await page.ticks('symptoms');
    await page.until(() => page.element.plan?.week?.state === 'laid', 'the week is there');
  });
});

describe('the questions before the start', () => {
  it('are nine, none of them answered', async () => {
    const page = await (await openChecks()).opens('start');
    expect(page.all('.answers input[type="checkbox"]')).to.have.length(9);
    expect([page.answers, page.advice]).to.deep.equal([[], []]);
    expect(page.texts('.answers label')).to.have.length(questions.length);
    expect(collapsed(page.find('.answers legend'))).to.contain('The answers stay on this device');
    expect(page.texts('.answers label')[0]).to.match(/^Chest pain or pressure, faintness/);
  });

  it('have their source one press away', async () => {
    const page = await (await openChecks()).opens('start');
    await page.click(page.find('.checks-start details > summary'));
    const text = page.texts('.checks-start details .cited').join();
    expect(text).to.contain('doi:10.1249/MSS.0000000000000664').and.to.contain('doi:10.2519/jospt.2014.5334');
  });
});
