import { expect } from '@open-wc/testing';
import { onRealDay } from './on-day.js';
import { openTables, type TablePage } from './table-page.js';

after(onRealDay);

/** So many sessions, one on each day from the first of 2015 on. */
function daily(count: number, minutes = 30): string {
  const first = Date.UTC(2015, 0, 1);
  const rows = Array.from({ length: count }, (_, day) => {
    const date = new Date(first + day * 86_400_000).toISOString().slice(0, 10);
    return `${date},easy run,${String(minutes)}`;
  });
  return ['Date,Kind,Minutes', ...rows].join('\n');
}

const tooMany = 'With them the record would have more than 5,000 sessions, the most that it can.';

const full = 'The record has 5,000 sessions, the most that it can: take some out first.';

async function openFull(): Promise<TablePage> {
  const page = await openTables();
  await page.enters(daily(4000));
  await page.takesOver();
  await page.enters(`${daily(999, 45)}\n2026-12-05,gym,50`);
  await page.takesOver();
  return page;
}

describe('a record of 5,000 sessions', () => {
  it('takes no table that would make it longer, and says so', async () => {
    const page = await openTables();
    await page.enters(daily(5001));
    expect([page.takeButton.ariaDisabled, page.takeNotes]).to.deep.equal(['true', [tooMany]]);
    await page.takesOver();
    expect(page.has('.import-mapping')).to.equal(true);
    await page.opens('out');
    expect(page.texts('.record-out p')).to.deep.equal(['Nothing was done yet.']);
  });

  it('can be full', async () => {
    const page = await openTables();
    await page.enters(daily(5000));
    expect([page.takeButton.ariaDisabled, page.takeNotes]).to.deep.equal(['false', []]);
    await page.takesOver();
    expect(page.told).to.equal('5,000 sessions are taken over.');
  });

  it('has no session added by hand: what was typed stays, and why is told', async () => {
    const page = await openFull();
    await page.adds('Strength', '40');
    expect([page.newMinutes.value, page.kind('strength')[1]]).to.deep.equal(['40', 50]);
    expect([page.told, page.texts('.record > .wrong')]).to.deep.equal([full, [full]]);
    // Once one is taken out there is room for it.
    await page.ticks(page.ticked.indexOf(true));
    await page.adds('Strength', '40');
    expect([page.newMinutes.value, page.kind('strength')[1], page.texts('.record > .wrong')]).to.deep.equal([
      '',
      40,
      [],
    ]);
  });

  it('has none ticked off: that is told where it is seen, and the box stays empty', async () => {
    const page = await openFull();
    await page.ticks(0);
    expect(page.ticked[0]).to.equal(false);
    expect([page.told, page.texts('.record > .wrong')]).to.deep.equal([full, [full]]);
  });

  it('shows all its weeks, and is read in a time that grows with its length, not with its square', async () => {
    const page = await openFull();
    await page.opens('weeks');
    // From the week of 1 January 2015 to the week of 30 November 2026.
    expect(page.rows('.record-weeks').length - 1).to.equal(623);
    expect(page.rows('.record-weeks').at(-1)?.[1]).to.match(/^300 of \d+$/);
    const lasts = async (sessions: number): Promise<number> => {
      const begin = performance.now();
      await page.enters(daily(sessions, 60));
      return performance.now() - begin;
    };
    expect((await lasts(5000)) / (await lasts(500))).to.be.lessThan(40);
  });
});
