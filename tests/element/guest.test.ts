import { expect, fixture, waitUntil } from '@open-wc/testing';
import club from '../../demo/club-method.json';
import { WeekwrightPlanner } from '../../src/index.js';
import { openPlanner, PlannerPage, shownPlan } from './planner-page.js';

describe('a planner asks the network for nothing more', () => {
  const asked = (): string[] => performance.getEntriesByType('resource').map(({ name }) => name);

  it('while every input is used, once the details of what acted are there, and keeps nothing', async () => {
    const page = await openPlanner();
    await page.drag('hours', 8);
    await waitUntil(() => page.rules.length > 0, 'the rules that acted are told');
    const before = asked();
    for (const hours of [8, 1, 20, 4.25]) await page.drag('hours', hours);
    await page.drag('phase', 0);
    await page.drag('strengthCap', 90);
    await page.type('hours', '5');
    await page.choose(page.list('event'), 0);
    await page.choose(page.sessionList('slow'), 1);
    await page.click(page.stepButton('hours', 'more'));
    expect(asked()).to.deep.equal(before);
    expect([localStorage.length, sessionStorage.length, document.cookie]).to.deep.equal([0, 0, '']);
  });
});

describe('several planners on a page', () => {
  const open = async (): Promise<[PlannerPage, PlannerPage]> => {
    const holder = await fixture<HTMLElement>(
      '<div><weekwright-planner hours="4"></weekwright-planner><weekwright-planner hours="6"></weekwright-planner></div>',
    );
    const [one, other] = [...holder.querySelectorAll('weekwright-planner')].map((each) => new PlannerPage(each));
    if (!one || !other) throw new Error('two planners are needed');
    return [await one.settled(), await other.settled()];
  };

  it('do not touch each other', async () => {
    const [one, other] = await open();
    const { text } = other;
    const plan = shownPlan(other);
    await one.drag('hours', 9);
    await one.drag('phase', 0);
    await one.choose(one.sessionList('strength'), 1);
    await one.ask('strength_minutes');
    await one.type('strengthCap', 'abc');
    expect(other.text).to.equal(text);
    expect(shownPlan(other)).to.equal(plan);
  });

  it('may have methods and languages of their own', async () => {
    const [one, other] = await open();
    one.element.method = club;
    one.element.lang = 'de';
    await one.settled();
    await other.settled();
    expect(one.row('slow').kind).to.equal('Easy running');
    expect(other.row('slow').kind).to.equal('Slow running');
    expect(other.find('.planner').lang).to.equal('en');
  });
});

describe('a planner that is moved', () => {
  it('is as it was', async () => {
    const page = await openPlanner();
    await page.drag('hours', 8);
    await page.ask('strength_minutes');
    await page.type('strengthCap', 'abc');
    const { text } = page;
    const place = document.createElement('div');
    document.body.append(place);
    place.append(page.element);
    await page.settled();
    expect(page.text).to.equal(text);
    expect(page.typed('strengthCap').value).to.equal('abc');
    await page.drag('hours', 4);
    expect(shownPlan(page).inputs.hours).to.equal(4);
    place.remove();
  });

  it('can be taken away and put back later', async () => {
    const page = await openPlanner();
    await page.drag('hours', 8);
    page.element.remove();
    page.element.hours = 9;
    await page.settled();
    document.body.append(page.element);
    await page.settled();
    expect(page.headline).to.match(/^Nine hours/);
    page.element.remove();
  });
});

describe('the tag', () => {
  it('can be defined twice without harm', async () => {
    const again = '/src/define.ts?again';
    await import(again);
    expect(customElements.get('weekwright-planner') === WeekwrightPlanner).to.equal(true);
  });

  it('makes a planner by createElement and by new', async () => {
    const made = [document.createElement('weekwright-planner'), new WeekwrightPlanner()];
    for (const element of made) {
      document.body.append(element);
      const page = await new PlannerPage(element).settled();
      expect(page.headline).to.match(/^Four hours in build/);
      element.remove();
    }
  });

  it('has no plan before it is on a page', () => {
    expect(document.createElement('weekwright-planner').plan).to.equal(null);
  });
});
