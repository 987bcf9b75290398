import { expect } from '@open-wc/testing';
import { openSeason, type SeasonPage } from './season-page.js';

async function open(): Promise<SeasonPage> {
  const page = await openSeason();
  return page.openBox('shape');
}
const distance = (page: SeasonPage, place: number): HTMLSelectElement =>
  page.find(`.season-events select[aria-label="Distance of event ${String(place)}"]`);

describe('further events', () => {
  it('are added four weeks before the main one, and their week is easier', async () => {
    const page = await open();
    const { season } = await page.heardOnce(() => page.presses('.season-shape button', 'Add an event'));
    // Sunday 11 April less 28 days.
    expect(season?.wishes.events).to.deep.equal([{ date: '2027-03-14', event: '10k' }]);
    expect(page.texts('.season-chart .sweep-flag')).to.deep.equal(['10 km', 'Half marathon']);
    await page.readWeek(12);
    expect(page.weekText).to.match(/The week of an event on the way/);
  });

  it('have a day and a distance', async () => {
    const page = await open();
    await page.presses('.season-shape button', 'Add an event');
    await page.setDate('season-event-0', '2027-02-28');
    await page.chooseText(distance(page, 1), '5 km');
    expect(page.season.wishes.events).to.deep.equal([{ date: '2027-02-28', event: '5k' }]);
    expect(page.season.weeks[9]?.events.map(({ event }) => event)).to.deep.equal(['5k']);
  });

  it('after the main one carry the season on', async () => {
    const page = await open();
    await page.presses('.season-shape button', 'Add an event');
    await page.setDate('season-event-0', '2027-05-30');
    // Seven weeks after that of the main event.
    expect(page.season.weeks).to.have.length(23);
  });

  it('outside the season wait, which is told', async () => {
    const page = await open();
    await page.presses('.season-shape button', 'Add an event');
    await page.setDate('season-event-0', '2026-11-01');
    expect(page.notes).to.deep.equal(['An event lies outside the season and is left out.']);
  });

  it('with a day that is none stay as typed with a sentence', async () => {
    const page = await open();
    await page.presses('.season-shape button', 'Add an event');
    await page.setDate('season-event-0', '');
    expect(page.hintOf('season-event-0')).to.match(/a day of the calendar/);
    expect(page.season.wishes.events[0]?.date).to.equal('2027-03-14');
  });

  it('are taken out one by one, and no mistyped day is left to the next', async () => {
    const page = await open();
    await page.presses('.season-shape button', 'Add an event');
    await page.presses('.season-shape button', 'Add an event');
    await page.setDate('season-event-1', '2027-02-28');
    await page.setDate('season-event-0', '');
    await page.click(page.at('.season-events button', 0));
    expect(page.season.wishes.events).to.deep.equal([{ date: '2027-02-28', event: '10k' }]);
    expect([page.typedIn('season-event-0').value, page.hintOf('season-event-0')]).to.deep.equal(['2027-02-28', '']);
  });

  it('are twelve at most', async () => {
    const page = await open();
    for (let time = 0; time < 13; time += 1) await page.presses('.season-shape button', 'Add an event');
    expect(page.season.wishes.events).to.have.length(12);
  });
});
