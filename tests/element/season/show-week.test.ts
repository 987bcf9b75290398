import { expect } from '@open-wc/testing';
import { shownPlan } from '../planner-page.js';
import { openSeason } from './season-page.js';

describe('showing a week on the planner', () => {
  it('puts its hours and its phase there, and the page hears of the week with its season', async () => {
    const page = await openSeason();
    await page.readWeek(4);
    const { inputs, season, rounded } = await page.heardOnce(() => page.click(page.showButton));
    expect([inputs.hours, inputs.phase]).to.deep.equal([page.season.weeks[3]?.hours, 'base']);
    expect(page.headline).to.match(/^3 hours 10 minutes in base: 55 minutes of strength/);
    expect(season).to.deep.equal(page.season);
    expect(rounded).to.deep.equal(page.season.weeks[3]?.rounded);
  });

  it('leaves the season as it is: it keeps its own hours', async () => {
    const page = await openSeason();
    const { hours, season, lead } = page;
    await page.readWeek(11);
    await page.click(page.showButton);
    expect(shownPlan(page).inputs.hours).to.equal(6);
    expect([page.hours, page.lead, page.season.wishes]).to.deep.equal([hours, lead, season.wishes]);
    expect(page.weekTitle).to.match(/^Week 11 of 16/);
    await page.drag('hours', 5);
    expect(page.hours).to.deep.equal(hours);
  });

  it('takes the cut of its runs along: the table of the planner has the same sessions', async () => {
    const page = await openSeason();
    const index = page.season.weeks.findIndex(({ notices }) => notices.some(({ code }) => code === 'shorter-runs'));
    expect(index).to.be.greaterThan(0);
    await page.readWeek(index + 1);
    await page.click(page.showButton);
    const { sessions } = page.season.weeks[index] ?? {};
    for (const [category, durations] of Object.entries(sessions ?? {}))
      if (durations.length > 1 && new Set(durations).size === 1)
        expect(page.row(category as 'slow').sessions).to.contain(
          `${String(durations.length)} × ${String(durations[0])}`,
        );
    expect(page.weekText).to.not.equal('');
  });

  it('is told to a listener, and the button says that it is there', async () => {
    const page = await openSeason();
    await page.readWeek(4);
    expect(page.showButton.textContent.trim()).to.equal('Show this week on the planner');
    await page.click(page.showButton);
    expect(page.showButton.textContent.trim()).to.equal('This week is on the planner');
    expect(page.told).to.match(/^The planner shows the week of Jan 11 – 17, 2027\.$/);
  });

  it('cannot be done with a week off', async () => {
    const page = await openSeason();
    page.element.season = { byHand: [{ start: '2027-01-11', hours: 0, reason: 'holiday' }] };
    await page.settled();
    await page.readWeek(4);
    expect(page.showButton.getAttribute('aria-disabled')).to.equal('true');
    const events = await page.heard(() => page.click(page.showButton));
    expect([events, shownPlan(page).inputs.hours]).to.deep.equal([[], 4]);
  });

  it('in the taper has the strength of the season, where it is only kept up', async () => {
    const page = await openSeason('hours="8" phase="build" level="trained" event="marathon" event-date="2027-04-11"');
    page.element.season = { upkeepFrom: 'peak', upkeepSessions: 1 };
    await page.settled();
    const index = page.season.weeks.findIndex(({ phase }) => phase === 'peak');
    const week = page.season.weeks[index];
    await page.readWeek(index + 1);
    await page.click(page.showButton);
    expect(shownPlan(page).inputs.phase).to.equal('peak');
    // What the season shows of the week, the planner shows of it too.
    expect(shownPlan(page).rounded).to.deep.equal(week?.rounded);
  });
});
