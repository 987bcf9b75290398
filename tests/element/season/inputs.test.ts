import { expect } from '@open-wc/testing';
import { openSeason, type SeasonPage } from './season-page.js';

const weeksOf = ({ season }: SeasonPage): number => season.weeks.filter(({ weeksToGo }) => weeksToGo >= 0).length;

describe('the weeks of a season', () => {
  it('by slider: the first day moves, the event stays; the page hears of it', async () => {
    const page = await openSeason();
    const { season } = await page.heardOnce(() => page.dragTo('season-weeks', 12));
    expect(season).to.deep.equal(page.season);
    expect([weeksOf(page), page.season.wishes.date, page.season.wishes.start]).to.deep.equal([
      ...[12, '2027-04-11', '2027-01-18'],
    ]);
    expect(page.lead).to.match(/: 12 weeks, /);
    expect(page.weekTitle).to.match(/^Week 1 of 12, Jan 18 – 24, 2027$/);
  });

  it('typed', async () => {
    const page = await openSeason();
    await page.heardOnce(() => page.typeIn('season-weeks', '20'));
    expect([weeksOf(page), page.sliderOf('season-weeks').value]).to.deep.equal([20, '20']);
  });

  it('typed beyond the slider, up to two years', async () => {
    const page = await openSeason();
    await page.typeIn('season-weeks', '104');
    expect([weeksOf(page), page.sliderOf('season-weeks').value, page.hintOf('season-weeks')]).to.deep.equal([
      ...[104, '104', ''],
    ]);
  });
});

describe('the hours of a season', () => {
  it('now are those of the planner until a person says otherwise', async () => {
    const page = await openSeason();
    await page.drag('hours', 5);
    expect(page.season.wishes.hours).to.equal(5);
    expect(page.typedIn('season-hours').value).to.equal('5');
  });

  it('now by slider are those of the first week; the week on the planner stays', async () => {
    const page = await openSeason();
    await page.heardOnce(() => page.dragTo('season-hours', 5));
    expect([page.hours[0], page.season.wishes.mostHours]).to.deep.equal([5, 7.5]);
    expect(page.element.plan?.inputs.hours).to.equal(4);
  });

  it('at most by slider and typed', async () => {
    const page = await openSeason();
    await page.dragTo('season-most', 5);
    expect(Math.max(...page.hours)).to.equal(5);
    await page.typeIn('season-most', '5.5');
    expect(Math.max(...page.hours)).to.equal(5.5);
  });

  it('now above the most: the season begins at the most, which is told, and can be put right', async () => {
    const page = await openSeason();
    await page.dragTo('season-most', 5);
    await page.dragTo('season-hours', 7);
    expect([page.season.wishes.hours, page.season.wishes.mostHours, page.hours[0]]).to.deep.equal([7, 5, 5]);
    expect(page.notes).to.deep.equal([
      '7 hours a week now is more than the 5 hours that are wanted at most: the season begins at 5 hours.',
    ]);
    await page.presses('.season-notes button', 'At most 7 hours a week');
    expect([page.season.wishes.mostHours, page.hours[0], page.notes]).to.deep.equal([7, 7, []]);
  });
});

describe('the days of a season', () => {
  it('of the event: the weeks stay', async () => {
    const page = await openSeason();
    const { season } = await page.heardOnce(() => page.setDate('season-date', '2027-05-02'));
    expect(season?.wishes.date).to.equal('2027-05-02');
    expect(page.lead).to.contain('Sunday, May 2, 2027');
  });

  it('of the beginning: the event stays', async () => {
    const page = await openSeason();
    await page.heardOnce(() => page.setDate('season-start', '2027-01-06'));
    expect([page.season.wishes.start, page.season.wishes.date, weeksOf(page)]).to.deep.equal([
      ...['2027-01-06', '2027-04-11', 14],
    ]);
  });
});

describe('a text that is no value', () => {
  const faults: readonly (readonly [string, string, RegExp])[] = [
    ['season-weeks', '0', /1 to 104/],
    ['season-weeks', '2.5', /steps of 1/],
    ['season-weeks', 'many', /number/],
    ['season-hours', '25', /0\.5 to 20/],
    ['season-hours', '', /number/],
    ['season-most', '21', /0\.5 to 20/],
    ['season-most', 'abc', /number/],
  ];
  for (const [id, text, says] of faults)
    it(`"${text}" in ${id} stays with a sentence, and the season is as it was`, async () => {
      const page = await openSeason();
      const before = page.season;
      const events = await page.heard(() => page.typeIn(id, text));
      expect([events, page.season]).to.deep.equal([[], before]);
      expect(page.typedIn(id).value).to.equal(text);
      expect(page.typedIn(id).getAttribute('aria-invalid')).to.equal('true');
      expect(page.hintOf(id)).to.match(says);
      // The sentence has the text as it was typed, and is read out.
      expect(page.hintOf(id)).to.contain(text === '' ? '""' : text);
      expect(page.hintOf(id)).to.not.match(/NaN|undefined|null/);
      expect(page.told).to.equal(page.hintOf(id));
    });

  it('is forgotten with the next value, typed or by slider', async () => {
    const page = await openSeason();
    await page.typeIn('season-weeks', 'many');
    await page.typeIn('season-weeks', '12');
    expect([page.hintOf('season-weeks'), page.typedIn('season-weeks').ariaInvalid]).to.deep.equal(['', 'false']);
    await page.typeIn('season-weeks', 'many');
    await page.dragTo('season-weeks', 14);
    expect([page.hintOf('season-weeks'), page.typedIn('season-weeks').value]).to.deep.equal(['', '14']);
    expect(page.told).to.equal('');
  });

  it('in one field does not stand in the way of another', async () => {
    const page = await openSeason();
    await page.typeIn('season-weeks', 'many');
    await page.dragTo('season-most', 5);
    expect(Math.max(...page.hours)).to.equal(5);
    expect(page.typedIn('season-weeks').value).to.equal('many');
  });

  it('of a day: an event before the beginning, and no day at all', async () => {
    const page = await openSeason();
    const before = page.season;
    await page.setDate('season-start', '2027-05-01');
    expect(page.hintOf('season-start')).to.contain('2027-05-01');
    expect(page.typedIn('season-start').value).to.equal('2027-05-01');
    await page.setDate('season-date', '');
    expect(page.hintOf('season-date')).to.match(/a day of the calendar/);
    expect(page.season).to.deep.equal(before);
  });
});
