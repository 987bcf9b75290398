import { expect } from '@open-wc/testing';
import { openSeason, type SeasonPage } from './season-page.js';

/** The fifth week, from 18 January: 4 hours 45 minutes by hand; the weeks before it have 4:00, 4:15, 4:30 and 3:10. */
async function openFifth(): Promise<SeasonPage> {
  const page = await openSeason();
  await page.readWeek(5);
  return page.openBox('hand');
}

const minutes = ({ hours }: SeasonPage): number[] => hours.map((each) => Math.round(each * 60));

describe('a week set by hand', () => {
  it('starts from the hours that it has', async () => {
    const page = await openFifth();
    expect([page.typedIn('season-week-hours').value, page.optionOf('season-week-reason')]).to.deep.equal([
      ...['4.75', 'other'],
    ]);
    expect(page.texts('.season-hand button')).to.deep.equal([]);
  });

  it('of a holiday has no hours, and the week after it less: the page hears of it', async () => {
    const page = await openFifth();
    const { season } = await page.heardOnce(() => page.typeIn('season-week-hours', '0'));
    expect(season).to.deep.equal(page.season);
    await page.chooseText(page.selectOf('season-week-reason'), 'holiday');
    expect(page.weekText).to.equal('0 minutes, base. Set by hand: holiday.');
    expect(page.season.wishes.byHand).to.deep.equal([
      { start: '2027-01-18', hours: 0, reason: 'holiday', sessions: {} },
    ]);
    // Seven rises are left of eight: the seventh root of 360/240 leads to 255, the sixth of 360/255 to 275. An easier week
    // has 192.5 of these, 195 in steps; after one week off the first has 80 per cent, 220.
    expect(minutes(page).slice(1, 6)).to.deep.equal([255, 275, 195, 0, 220]);
    expect(page.notes.join('|')).to.match(/Caution: The first week after a break has less\./);
  });

  it('by slider', async () => {
    const page = await openFifth();
    await page.dragTo('season-week-hours', 3, 2, 1);
    expect([page.hours[4], page.season.wishes.byHand.length]).to.deep.equal([1, 1]);
    expect(page.weekText).to.contain('1 hour, base. Set by hand.');
  });

  it('that is ill brings a caution for the season', async () => {
    const page = await openFifth();
    await page.typeIn('season-week-hours', '3');
    await page.chooseText(page.selectOf('season-week-reason'), 'ill');
    expect(page.weekText).to.contain('Set by hand: ill.');
    expect(page.notes.join('|')).to.match(/Caution: After illness, begin again only once all signs are gone/);
  });

  it('with a reason first keeps its hours', async () => {
    const page = await openFifth();
    await page.chooseText(page.selectOf('season-week-reason'), 'holiday');
    expect([page.hours[4], page.weekText]).to.deep.equal([4.75, '4 hours 45 minutes, base. Set by hand: holiday.']);
  });

  it('with too many hours is told, with ways out; one of them takes it back to what is allowed', async () => {
    const page = await openFifth();
    await page.typeIn('season-week-hours', '6');
    // 360 above the 275 minutes of the four weeks before, as above; 10 per cent would be 302.5 minutes, 300 in steps.
    expect(page.weekNotes.join('|')).to.match(
      /Caution: 6 hours is 30\.9% more than 4 hours 35 minutes, the highest of the four weeks before; the ceiling is 10%\./,
    );
    await page.presses('.season-week .season-notes button', '5 hours in the week of Jan 18');
    expect(minutes(page)[4]).to.equal(300);
    expect(page.weekNotes.join('|')).to.not.match(/the ceiling is/);
  });

  it('goes back to the hours of the season', async () => {
    const page = await openFifth();
    const before = page.hours;
    await page.typeIn('season-week-hours', '0');
    await page.presses('.season-hand button', 'Back to the season’s hours');
    expect([page.hours, page.season.wishes.byHand]).to.deep.equal([before, []]);
    expect(page.texts('.season-hand button')).to.deep.equal([]);
  });

  it('keeps what is set of other weeks', async () => {
    const page = await openFifth();
    await page.typeIn('season-week-hours', '0');
    await page.readWeek(9);
    await page.typeIn('season-week-hours', '2');
    expect(page.season.wishes.byHand.map(({ start, hours }) => [start, hours])).to.deep.equal([
      ['2027-01-18', 0],
      ['2027-02-15', 2],
    ]);
  });

  it('with hours that cannot be stays with a sentence', async () => {
    const page = await openFifth();
    const before = page.season;
    await page.typeIn('season-week-hours', '25');
    expect(page.hintOf('season-week-hours')).to.match(/25.*0 to 20/);
    expect(page.season).to.deep.equal(before);
  });

  it('leaves what was mistyped behind where another week is read', async () => {
    const page = await openFifth();
    await page.typeIn('season-week-hours', '25');
    await page.readWeek(6);
    // Five hours by hand.
    expect([page.typedIn('season-week-hours').value, page.hintOf('season-week-hours')]).to.deep.equal(['5', '']);
  });

  it('is in the picture and in the table', async () => {
    const page = await openFifth();
    await page.typeIn('season-week-hours', '0');
    await page.openBox('table');
    expect(page.table('table')[5]?.slice(3, 9)).to.deep.equal(['0 min', '0', '0', '0', '0', '0']);
    expect(page.reading.getAttribute('aria-valuetext')).to.match(/^Jan 18: Slow running 0 min/);
  });
});
