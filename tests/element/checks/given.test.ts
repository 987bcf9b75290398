import { expect, fixtureSync } from '@open-wc/testing';
import { html } from 'lit';
import builtIn from '../../../shared/methods/default.json';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { ChecksPage, openChecks, scene } from './checks-page.js';
import { shownPanels } from './whole-page.js';

async function openWith(checks: unknown, panels = 'split checks'): Promise<ChecksPage> {
  const page = await openChecks(scene, panels);
  page.element.checks = checks;
  return page.settled();
}

describe('the property checks', () => {
  it('tells what it has, and shows it in the fields', async () => {
    const checks = { age: 67, hoursBefore: 3.2, longestRun: 60, weeks: [[900], [1, 2, 3, 4, 5, 6, 7]] };
    const page = await (await openWith({ ...checks, efforts: { slow: 4 } })).opens('own');
    expect(page.ids).to.include.members(['balance-days', 'hours-rise', 'longest-run', 'load']);
    expect(['age', 'hours', 'run', 'effort-slow'].map((id) => page.typedIn(`checks-${id}`).value)).to.deep.equal([
      ...['67', '3.2', '60', '4'],
    ]);
    expect([page.weeks.value, page.load.efforts.slow]).to.deep.equal(['900\n1 2 3 4 5 6 7', 4]);
  });

  it('is not touched by what a person tells, and counts again when it is set again', async () => {
    const checks = Object.freeze({ age: 67 });
    const page = await openWith(checks);
    await page.heardOnce(() => page.typeIn('checks-age', '15'));
    expect(page.element.checks).to.equal(checks);
    const events = await page.heard(async () => {
      page.element.checks = { age: 66 };
      await page.settled();
    });
    expect([events, page.typedIn('checks-age').value]).to.deep.equal([[], '66']);
  });

  it('that is null or left out tells nothing', async () => {
    const page = await openWith({ age: 67 });
    page.element.checks = null;
    await page.settled();
    expect([page.typedIn('checks-age').value, page.element.problems]).to.deep.equal(['', []]);
  });

  for (const answers of [['symptoms'], ['bone-pain'], ['not-active', 'known-disease']] as const)
    it(`stops with the answers ${answers.join(' and ')}, and opens the questions`, async () => {
      const page = await openWith({ answers });
      expect([page.element.plan, shownPanels(page), page.element.problems]).to.deep.equal([null, [], []]);
      expect(page.answers).to.have.members([...answers]);
      expect([page.find('.advice').checkVisibility(), page.title]).to.deep.equal([true, 'No plan for now']);
      await page.click(page.forgetButton);
      expect([page.answers, page.element.plan !== null]).to.deep.equal([[], true]);
    });

  it('with answers that do not stop has them ticked, and in no plan', async () => {
    const page = await openWith({ age: 40, answers: ['pregnant'] });
    await page.opens('start');
    expect([page.answers, page.advice.length]).to.deep.equal([['pregnant'], 2]);
    const plan = await page.heardOnce(() => page.typeIn('checks-age', '41'));
    expect(JSON.stringify(plan)).to.not.contain('"pregnant"').and.to.not.contain('"answers"');
  });

  it('with answers that stop, and a fault beside them, stops all the same', async () => {
    const page = await openWith({ age: 'old', answers: ['symptoms'] });
    expect(page.element.problems.map(({ path }) => path)).to.deep.equal(['checks.age']);
    expect(page.element.plan).to.equal(null);
  });

  it('with answers that stop never shows a plan, not even before the panel is fetched', async () => {
    const seen: string[] = [];
    const element = fixtureSync<WeekwrightPlanner>(
      html`<weekwright-planner panels="split checks" .checks=${{ answers: ['symptoms'] }}></weekwright-planner>`,
    );
    const look = (): void => {
      if (element.plan !== null) seen.push('a plan');
      if (element.shadowRoot?.querySelector('[part="answer"]')) seen.push('an answer on the screen');
    };
    const watch = new MutationObserver(look);
    watch.observe(element.renderRoot, { childList: true, subtree: true });
    const page = new ChecksPage(element);
    await page.until(() => page.has('.advice'), 'the advice comes');
    look();
    watch.disconnect();
    expect(seen).to.deep.equal([]);
  });
});

describe('a faulty property checks', () => {
  for (const value of ['fine', 12, ['symptoms'], true])
    it(`that is no object is told: ${JSON.stringify(value)}`, async () => {
      const page = await openWith(value);
      expect(page.element.problems.map(({ path }) => path)).to.deep.equal(['checks']);
      expect(page.problems.join()).to.match(/^checks is .*an object\.$/);
      expect(page.headline).to.match(/^Four hours in build/);
    });

  for (const [value, path, says] of [
    [{ sport: 1 }, 'checks.sport', 'checks.sport'],
    [{ age: 'old' }, 'checks.age', 'Age is "old"'],
    [{ age: 3 }, 'checks.age', 'Age is 3; allowed: 5 to 110.'],
    [{ hoursBefore: 0 }, 'checks.hoursBefore', 'Hours of a usual week so far is 0; allowed: 0.25 to 60.'],
    [{ longestRun: [] }, 'checks.longestRun', 'Longest run in 30 days, minutes is'],
    [{ weeks: [[1, 2, 3]] }, 'checks.weeks[0]', 'seven days, or one number for the week'],
    [{ weeks: [[900], ['x']] }, 'checks.weeks[1][0]', 'a number'],
    [{ weeks: 900 }, 'checks.weeks', 'checks.weeks'],
    [{ efforts: { slow: 11 } }, 'checks.efforts.slow', 'allowed: 0 to 10.'],
    [{ efforts: { swim: 3 } }, 'checks.efforts.swim', 'checks.efforts.swim'],
    [{ answers: ['tired'] }, 'checks.answers[0]', '"tired"'],
    [{ answers: 'symptoms' }, 'checks.answers', 'checks.answers'],
  ] as const)
    it(`is told as a problem of ${path}: ${JSON.stringify(value)}`, async () => {
      const page = await openWith(value);
      expect(page.element.problems.map((problem) => problem.path)).to.contain(path);
      expect(page.problems.join('|')).to.contain(says);
      expect([page.headline.slice(0, 19), page.has('.check')]).to.deep.equal(['Four hours in build', true]);
      await page.drag('hours', 5);
      expect(page.element.plan?.inputs.hours).to.equal(5);
      page.element.checks = { age: 67 };
      await page.settled();
      expect([page.problems, page.typedIn('checks-age').value]).to.deep.equal([[], '67']);
    });

  it('is forgiven as soon as a person tells something', async () => {
    const page = await openWith({ age: 3 });
    await page.typeIn('checks-age', '30');
    expect([page.problems, page.element.problems]).to.deep.equal([[], []]);
  });

  it('leaves the last that was good', async () => {
    const page = await openWith({ age: 67 });
    page.element.checks = { age: 3 };
    await page.settled();
    expect(page.ids).to.include('balance-days');
  });

  it('without the panel is not looked at', async () => {
    const page = await openWith({ age: 3 });
    page.element.panels = 'split';
    await page.settled();
    expect(page.element.plan).to.not.equal(null);
  });
});

describe('a clinic’s method', () => {
  const clinic = (advice: Readonly<Record<string, string>>): unknown => ({
    ...builtIn,
    ...{ id: 'clinic', name: 'Clinic' },
    checks: { ...builtIn.checks, screening: { ...builtIn.checks.screening, advice } },
  });

  it('has its own wording of a stop, and stops all the same', async () => {
    const page = await (await openChecks()).opens('start');
    page.element.method = clinic({ stop: 'Ring our desk before you go on.', go: 'Fine by us.' });
    await page.settled();
    expect(page.element.problems).to.deep.equal([]);
    await page.ticks('symptoms');
    expect([page.advice[0], page.element.plan]).to.deep.equal(['Ring our desk before you go on.', null]);
    await page.ticks('symptoms');
    await page.ticks('easy-only');
    expect([page.advice[0], page.element.plan !== null]).to.deep.equal(['Fine by us.', true]);
    await page.ticks('known-disease', 'not-active', 'easy-only');
    expect(page.advice[0]).to.match(/^With a known disease, and not active/);
    expect(page.element.plan).to.equal(null);
  });

  it('cannot switch the stop off', async () => {
    const page = await openChecks();
    page.element.method = {
      ...builtIn,
      checks: { ...builtIn.checks, screening: { ...builtIn.checks.screening, stops: false } },
    };
    await page.settled();
    await page.until(() => page.problems.length > 0, 'it is told');
    await (await page.opens('start')).ticks('symptoms');
    expect(page.element.plan).to.equal(null);
  });

  it('that comes while there is no plan shows none', async () => {
    const page = await (await openChecks()).opens('start');
    await page.ticks('symptoms');
    page.element.method = clinic({ stop: 'Ring our desk before you go on.' });
    await page.until(() => page.advice[0] === 'Ring our desk before you go on.', 'its words come');
    expect([page.element.plan, shownPanels(page)]).to.deep.equal([null, []]);
  });
});
