import { aTimeout, expect, fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { PlannerPage } from '../planner-page.js';
import { openSeason, scene, type SeasonPage } from './season-page.js';

const half = 'hours="4" phase="build" level="developing" event="half-marathon"';
const wishesOf = ({ season }: SeasonPage) => season.wishes;
const weeksOf = ({ season }: SeasonPage): number => season.weeks.filter(({ weeksToGo }) => weeksToGo >= 0).length;

describe('the attribute event-date', () => {
  it('is the day of the event, and a property too', async () => {
    const page = await openSeason(`${half} event-date="2027-05-02"`);
    expect([wishesOf(page).date, wishesOf(page).start, weeksOf(page)]).to.deep.equal(['2027-05-02', '2027-01-11', 16]);
    page.element.eventDate = '2027-05-09';
    await page.settled();
    expect([wishesOf(page).date, weeksOf(page)]).to.deep.equal(['2027-05-09', 16]);
  });

  it('changed later lays the season again: no act, and nothing fired', async () => {
    const page = await openSeason();
    const events = await page.heard(async () => {
      page.element.setAttribute('event-date', '2027-05-02');
      await page.settled();
    });
    expect([events, wishesOf(page).date]).to.deep.equal([[], '2027-05-02']);
    expect(page.lead).to.contain('Sunday, May 2, 2027');
    expect(page.typedIn('season-date').value).to.equal('2027-05-02');
  });

  it('changed later counts over what a person had set', async () => {
    const page = await openSeason();
    await page.typeIn('season-weeks', '12');
    page.element.setAttribute('event-date', '2027-05-02');
    await page.settled();
    expect([wishesOf(page).date, weeksOf(page)]).to.deep.equal(['2027-05-02', 16]);
  });

  it('does not count over what a person sets after it', async () => {
    const page = await openSeason();
    await page.typeIn('season-weeks', '12');
    await page.drag('hours', 5);
    expect(weeksOf(page)).to.equal(12);
  });

  it('removed leaves a season from today on', async () => {
    const page = await openSeason();
    page.element.removeAttribute('event-date');
    await page.settled();
    expect(wishesOf(page).start).to.equal(new Date().toLocaleDateString('sv-SE'));
  });
});

describe('the attribute most-hours', () => {
  it('is the most of any week, and a property too', async () => {
    const page = await openSeason(`${scene} most-hours="5"`);
    expect([wishesOf(page).mostHours, Math.max(...page.hours)]).to.deep.equal([5, 5]);
    page.element.mostHours = 4.5;
    await page.settled();
    expect([wishesOf(page).mostHours, Math.max(...page.hours)]).to.deep.equal([4.5, 4.5]);
  });

  it('is the usual half more of the method where it is left out', async () => {
    const page = await openSeason();
    expect(wishesOf(page).mostHours).to.equal(6);
  });
});

describe('the property season', () => {
  const open = async (season: unknown, attributes = scene): Promise<SeasonPage> => {
    const page = await openSeason(attributes);
    page.element.season = season;
    return page.settled();
  };

  it('is the rest of what is wanted', async () => {
    const page = await open({ weeks: 12, rise: 0.08, byHand: [{ start: '2027-02-10', hours: 0, reason: 'holiday' }] });
    expect(wishesOf(page)).to.deep.include({ rise: 0.08, date: '2027-04-11' });
    expect(weeksOf(page)).to.equal(12);
    expect(page.season.weeks.find(({ start }) => start === '2027-02-08')?.hours).to.equal(0);
  });

  it('has its own date where no attribute has one', async () => {
    const page = await open({ date: '2027-06-06' }, scene);
    expect(wishesOf(page).date).to.equal('2027-04-11');
    page.element.removeAttribute('event-date');
    await page.settled();
    expect(wishesOf(page).date).to.equal('2027-06-06');
  });

  it('is not touched', async () => {
    const season = Object.freeze({ weeks: 12 });
    const page = await open(season);
    await page.dragTo('season-most', 5);
    expect(page.element.season).to.equal(season);
    expect(season).to.deep.equal({ weeks: 12 });
  });
});

describe('a season that cannot be', () => {
  const faulty: readonly (readonly [string, string, RegExp])[] = [
    ['event-date="2027-02-29"', 'season.date', /2027-02-29.*a day of the calendar/],
    ['event-date="next spring"', 'season.date', /next spring.*a day of the calendar/],
    ['event-date="2027-04-11" most-hours="40"', 'season.mostHours', /Most hours a week is 40; allowed: 0\.5 to 20/],
    ['event-date="2027-04-11" most-hours="many"', 'mostHours', /many/],
  ];
  for (const [attributes, path, says] of faulty)
    it(`is told as a problem of ${path}: ${attributes}`, async () => {
      const page = await openSeason();
      page.element.removeAttribute('event-date');
      for (const [, name = '', value = ''] of attributes.matchAll(/([\w-]+)="([^"]*)"/g))
        page.element.setAttribute(name, value);
      await page.settled();
      expect(page.element.problems.map((problem) => problem.path).join()).to.contain(path);
      expect(page.problems.join('|')).to.match(says);
    });

  const values: readonly (readonly [unknown, string, string?])[] = [
    ['twelve weeks', 'season'],
    [[12], 'season'],
    [{ weeks: 0 }, 'season.weeks', 'Weeks up to the event is 0; allowed: 1 to 104.'],
    [{ rise: '8 %' }, 'season.rise'],
    [{ phases: [{ phase: 'spring' }] }, 'season.phases[0].phase'],
    [{ sport: 1 }, 'season.sport'],
  ];
  for (const [value, path, says = path] of values)
    it(`as a property is told as a problem of ${path}: ${JSON.stringify(value)}`, async () => {
      const page = await openSeason();
      page.element.season = value;
      await page.settled();
      expect(page.element.problems.map((problem) => problem.path)).to.contain(path);
      expect(page.problems.join('|')).to.contain(says);
    });

  it('loses nothing: the season before it stays on show, and the week is there', async () => {
    const page = await openSeason();
    const { lead } = page;
    page.element.season = { weeks: 0 };
    await page.settled();
    expect(page.lead).to.equal(lead);
    expect(page.headline).to.match(/^Four hours in build/);
  });

  it('from the first on leaves a planner that shows its week, and no season on its way', async () => {
    const tag = `<weekwright-planner panels="split season" ${half} event-date="2027-02-29"></weekwright-planner>`;
    const other = new PlannerPage(await fixture<WeekwrightPlanner>(tag));
    await aTimeout(1000);
    await other.settled();
    expect(other.headline).to.match(/^Four hours in build/);
    expect(other.problems.join()).to.contain('2027-02-29');
    // What is said to be on its way comes.
    const place = other.find('.season-panel');
    const waits = place.childElementCount === 0 && place.dataset['loading'] !== undefined;
    expect(waits && getComputedStyle(place, '::before').content !== 'none').to.equal(false);
  });

  it('is forgiven as soon as it is put right', async () => {
    const page = await openSeason();
    page.element.season = { weeks: 0 };
    await page.settled();
    page.element.season = { weeks: 12 };
    await page.settled();
    expect([page.problems, page.element.problems, weeksOf(page)]).to.deep.equal([[], [], 12]);
  });

  it('leaves a season that can be driven', async () => {
    const page = await openSeason();
    page.element.season = { easierEvery: 99 };
    await page.settled();
    const { season } = await page.heardOnce(() => page.dragTo('season-weeks', 12));
    expect(season?.weeks.filter(({ weeksToGo }) => weeksToGo >= 0)).to.have.length(12);
    expect(page.hintOf('season-weeks')).to.equal('');
  });
});
