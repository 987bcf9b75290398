import { expect } from '@open-wc/testing';
import { categoryIds } from '../../../src/core.js';
import { onRealDay } from './on-day.js';
import { openRecord, scene, sunday, wednesday, type RecordPage } from './record-page.js';

after(onRealDay);

/** Eight weeks to the 24th of January, from the week of the tests on, and two weeks to recover. */
const season = 'hours="4" phase="build" level="developing" event="10k" event-date="2027-01-24"';
const daysGiven = 'days="60,0,45,60,0,90,120"';
const when = (page: RecordPage): string => page.lead.replace(/:.*/, '');

describe('from week to week', () => {
  it('the week before and the week after are seen, and this week again', async () => {
    const page = await openRecord();
    expect(page.all('.record .toolbar button').map(({ textContent }) => textContent.trim())).to.deep.equal([
      ...['The week before', 'The week after'],
    ]);
    await page.presses('The week before');
    expect(when(page)).to.equal('Nov 23 – 29, 2026');
    await page.presses('The week before');
    expect(when(page)).to.equal('Nov 16 – 22, 2026');
    await page.presses('This week');
    expect([when(page), page.hasFocus(page.find('#record-title'))]).to.deep.equal(['Nov 30 – Dec 6, 2026', true]);
    for (let press = 0; press < 5; press += 1) await page.presses('The week after');
    expect(when(page)).to.equal('Jan 4 – 10, 2027');
  });

  it('each has its own sessions done', async () => {
    const page = await openRecord();
    await page.ticks(0, 1);
    await page.presses('The week before');
    expect(page.ticked.includes(true)).to.equal(false);
    await page.ticks(6);
    // A week that is over has its days as planned.
    expect(page.doneOf(6)).to.deep.equal(['Sunday', '50', '']);
    await page.presses('This week');
    expect(page.ticked.filter(Boolean)).to.have.length(2);
  });

  it('a week to come has its days as planned', async () => {
    const page = await openRecord();
    await page.presses('The week after');
    await page.ticks(3);
    expect(page.doneOf(3)[0]).to.equal('Thursday');
  });

  it('Sunday ends the week, Monday begins the next', async () => {
    expect(when(await openRecord(scene, undefined, sunday))).to.equal('Nov 30 – Dec 6, 2026');
    expect(when(await openRecord(scene, undefined, '2026-12-07'))).to.equal('Dec 7 – 13, 2026');
  });
});

describe('with a season', () => {
  const openWithSeason = async (attributes = season, panels = 'season record'): Promise<RecordPage> => {
    const page = await openRecord(attributes, panels, wednesday);
    page.element.season = { weeks: 8 };
    await page.until(() => page.element.plan?.season?.weeks[0]?.start === '2026-11-30', 'the season comes');
    return page.settled();
  };

  it('every week has the sessions that the season has for it', async () => {
    const page = await openWithSeason();
    const weeks = page.element.plan?.season?.weeks ?? [];
    expect(weeks).to.have.length(10);
    const seen: string[] = [];
    for (const week of weeks) {
      const planned = Object.fromEntries(
        categoryIds.map((id) => [id, week.sessions[id].reduce((sum, each) => sum + each, 0)]),
      );
      const shown = Object.fromEntries(
        categoryIds.map((id) => [id, page.has(`.record-kinds [data-category="${id}"]`) ? page.kind(id)[0] : 0]),
      );
      expect(shown, week.start).to.deep.equal(planned);
      seen.push(page.lead);
      await page.presses('The week after');
    }
    // Hours rise and fall: the weeks are not all alike.
    expect(new Set(weeks.map(({ hours }) => hours)).size).to.be.greaterThan(1);
    expect(new Set(seen).size).to.equal(10);
  });

  it('a week of the season is laid on the days that the plan has', async () => {
    const page = await openWithSeason(`${season} ${daysGiven}`, 'week season record');
    await page.laid();
    await page.presses('The week after');
    expect(page.sessions.join())
      .to.match(/day, \d+ min/)
      .and.to.not.contain('any day');
    // Tuesday and Friday have no minutes.
    expect(page.sessions.join()).to.not.match(/Tuesday|Friday/);
  });

  it('a week after it has the week on show', async () => {
    const page = await openWithSeason();
    for (let press = 0; press < 10; press += 1) await page.presses('The week after');
    expect(page.lead).to.contain('of 240 minutes');
  });
});

describe('the table of all weeks', () => {
  it('says that nothing was done yet', async () => {
    const page = await (await openRecord()).opens('weeks');
    expect(page.texts('.record-weeks p')).to.deep.equal(['Nothing was done yet.']);
  });

  it('has every week from the first that something was done in to this one, the newest first', async () => {
    const page = await openRecord();
    await page.ticks(0, 2);
    for (let press = 0; press < 3; press += 1) await page.presses('The week before');
    await page.adds('Strength', '40', 'Friday');
    await page.opens('weeks');
    expect(page.rows('.record-weeks')).to.deep.equal([
      ['Week of', 'Slow running', 'Tempo running', 'Intervals', 'Cross-training', 'Strength', 'All'],
      ['Nov 30', '20 of 70', '35 of 35', '0 of 25', '0 of 35', '0 of 75', '55 of 240'],
      ['Nov 23', '0 of 70', '0 of 35', '0 of 25', '0 of 35', '0 of 75', '0 of 240'],
      ['Nov 16', '0 of 70', '0 of 35', '0 of 25', '0 of 35', '0 of 75', '0 of 240'],
      ['Nov 9', '0 of 70', '0 of 35', '0 of 25', '0 of 35', '40 of 75', '40 of 240'],
    ]);
  });

  it('reaches to a week to come where something stands in it', async () => {
    const page = await openRecord();
    await page.ticks(0);
    await page.presses('The week after');
    await page.ticks(0);
    await page.opens('weeks');
    expect(page.rows('.record-weeks').map(([week = '']) => week)).to.deep.equal(['Week of', 'Dec 7', 'Nov 30']);
  });
});
