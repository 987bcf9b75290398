import { expect } from '@open-wc/testing';
import { openSeason, type SeasonPage } from './season-page.js';

async function open(season: unknown): Promise<SeasonPage> {
  const page = await openSeason();
  page.element.season = season;
  return page.settled();
}
const buttons = (page: SeasonPage): string[] => page.texts('.season-panel > .season-notes button');

// Numbers by hand: tests/core/plan/season/notices.test.ts.
describe('what stands in the way of a season', () => {
  it('is told, with a button for each way out', async () => {
    const page = await open({ weeks: 8 });
    expect(page.notes).to.deep.equal([
      '6 hours a week is not reached: rising by 10% at most, the season comes to 5 hours 10 minutes.',
    ]);
    expect(buttons(page)).to.deep.equal(['At most 5 hours 10 minutes a week', 'Rise by up to 15% a week']);
  });

  for (const name of ['At most 5 hours 10 minutes a week', 'Rise by up to 15% a week'])
    it(`is gone once a way out is taken: ${name}`, async () => {
      const page = await open({ weeks: 8 });
      const { season } = await page.heardOnce(() => page.presses('.season-notes button', name));
      expect(season).to.deep.equal(page.season);
      expect(page.notes.filter((text) => text.includes('not reached'))).to.deep.equal([]);
    });

  it('of too few weeks: begin earlier, or a shorter taper', async () => {
    const page = await open({ weeks: 4 });
    expect(page.notes[0]).to.equal(
      'Caution: The phases and the taper ask for 5 weeks; the season has 4. What comes first is cut short.',
    );
    expect(buttons(page).slice(0, 2)).to.deep.equal(['Begin earlier, 5 weeks before the event', 'Taper: one week']);
    await page.presses('.season-notes button', 'Begin earlier, 5 weeks before the event');
    expect(page.season.wishes.start).to.equal('2027-03-08');
    expect(page.notes.join()).to.not.contain('cut short');
  });

  it('of a week is told where the week is read, and its way out helps there', async () => {
    const page = await openSeason();
    await page.readWeek(2);
    expect(page.weekNotes).to.deep.equal([
      'The longest run has 40 minutes, 14.3% more than the 35 minutes of the four weeks before; from 10% on one large study saw more injuries.',
    ]);
    await page.heardOnce(() => page.presses('.season-week .season-notes button', '4 hours in the week of Dec 28'));
    expect([page.weekNotes, page.hours[1]]).to.deep.equal([[], 4]);
    expect(page.weekTitle).to.match(/^Week 2 of 16/);
  });

  it('of the whole week on the planner is not mixed into the season', async () => {
    const page = await openSeason();
    await page.readWeek(16);
    expect(page.weekNotes.join('|')).to.match(/Under three hours a week/);
    expect(page.notices.join('|')).to.not.match(/Under three hours a week/);
  });

  it('marks cautions for the eye by more than a colour', async () => {
    const page = await open({ rise: 0.25 });
    const levels = page.all('.season-panel > .season-notes > li').map(({ dataset }) => dataset['level']);
    expect(levels).to.include('caution');
    expect(page.notes.filter((text) => text.startsWith('Caution: '))).to.have.length(
      levels.filter((level) => level === 'caution').length,
    );
  });
});
