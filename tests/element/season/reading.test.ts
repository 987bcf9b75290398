import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { openSeason } from './season-page.js';

after(() => setViewport({ width: 800, height: 600 }));

describe('reading the weeks', () => {
  it('by the slider', async () => {
    const page = await openSeason();
    const events = await page.heard(() => page.readWeek(4));
    expect(page.weekTitle).to.equal('Week 4 of 16, Jan 11 – 17, 2027');
    expect(page.weekText).to.equal(
      '3 hours 10 minutes, base. An easier week: 70% of 4 hours 30 minutes, the highest of the four weeks before.',
    );
    expect(page.reading.getAttribute('aria-valuetext')).to.match(/^Jan 11: Slow running 55 min/);
    expect(events).to.deep.equal([]);
  });

  it('by the keys of the slider', async () => {
    const page = await openSeason();
    await page.goTo(page.reading);
    await page.press('ArrowRight', 'ArrowRight');
    expect(page.weekTitle).to.match(/^Week 3 of 16/);
    await page.press('End');
    expect(page.weekTitle).to.match(/^2 weeks after the event, Apr 19 – 25, 2027$/);
    expect(page.hasFocus(page.reading)).to.equal(true);
  });

  it('by the button of its line in the table, which says that it is read', async () => {
    const page = await openSeason();
    await page.openBox('table');
    await page.pressesNamed('Week 7');
    expect(page.weekTitle).to.equal('Week 7 of 16, Feb 1 – 7, 2027');
    const pressed = page.all('.season-table [aria-pressed="true"]').map(({ ariaLabel }) => ariaLabel);
    expect(pressed).to.deep.equal(['Week 7']);
    expect(page.reading.value).to.equal('6');
  });

  it('by a press on the picture', async () => {
    const page = await openSeason();
    // The middle of the ninth of eighteen weeks.
    await page.point(8.5 / 18, true);
    expect(page.weekTitle).to.match(/^Week 9 of 16/);
    await page.point(0.5 / 18, true);
    expect(page.weekTitle).to.match(/^Week 1 of 16/);
  });

  it('is not changed by a pointer that only passes over the picture', async () => {
    const page = await openSeason();
    await page.point(8.5 / 18, false);
    await page.point(14.5 / 18, false);
    expect(page.weekTitle).to.match(/^Week 1 of 16/);
  });

  it('keeps the week while the season changes, and goes to the first where it is gone', async () => {
    const page = await openSeason();
    await page.readWeek(3);
    await page.dragTo('season-most', 5);
    expect(page.weekTitle).to.contain('Jan 4 – 10, 2027');
    await page.typeIn('season-weeks', '10');
    expect(page.weekTitle).to.match(/^Week 1 of 10/);
  });

  it('has the week of the event by its name in the table, and notes where there are cautions', async () => {
    const page = await openSeason();
    await page.openBox('table');
    const rows = page.table('table');
    expect(rows[0]).to.deep.equal([
      ...['Week', 'From', 'Phase', 'Hours', 'Slow running', 'Tempo running', 'Intervals', 'Cross-training', 'Strength'],
      ...['Load', 'Longest run', 'Notes'],
    ]);
    expect(rows[16]?.slice(0, 4)).to.deep.equal(['16', 'Apr 5', 'taper (half marathon)', '2 h 20 min']);
    for (const [index, row] of rows.slice(1).entries()) {
      const cautions = page.season.weeks[index]?.notices.filter(({ level }) => level === 'caution').length ?? 0;
      expect(row[11]).to.equal(cautions === 0 ? '' : `${String(cautions)} caution${cautions === 1 ? '' : 's'}`);
    }
  });

  it('works on a phone too', async () => {
    await setViewport({ width: 320, height: 640 });
    const page = await openSeason();
    await page.point(8.5 / 18, true);
    expect(page.weekTitle).to.match(/^Week 9 of 16/);
  });
});
