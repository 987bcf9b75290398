import { expect } from '@open-wc/testing';
import { onRealDay } from './on-day.js';
import { openRecord, scene, wednesday, type RecordPage } from './record-page.js';

after(onRealDay);

const lay = 'Lay the rest of the week again';
const onDays = (page: RecordPage): string[][] =>
  (page.week.days ?? []).map((day) => day.map(({ category, minutes }) => `${category} ${String(minutes)}`));
const all = (page: RecordPage): string[] => onDays(page).flat();

/** On Wednesday: the tempo run of Monday was done on Tuesday, and Monday's rest was none. */
async function openHalfDone(): Promise<RecordPage> {
  const page = await openRecord();
  await page.ticks(0);
  await page.picks(page.dayField(0), 'Tuesday');
  await page.ticks(2);
  return page;
}

describe('the rest of a week, laid again', () => {
  it('leaves what was done on the day it was done, and puts nothing new on days that are over', async () => {
    const page = await openHalfDone();
    const { week } = await page.heardOnce(async () => {
      await page.presses(lay);
      await page.laid();
    });
    expect(week?.wishes.done).to.deep.equal([
      { category: 'tempo', minutes: 35, day: 1 },
      { category: 'slow', minutes: 20, day: 2 },
    ]);
    expect(week?.wishes.passed).to.equal(2);
    const days = onDays(page);
    expect(days.slice(0, 2)).to.deep.equal([[], ['tempo 35']]);
    expect(days[2]).to.include('slow 20');
    expect(page.told).to.equal('The rest of the week is laid again.');
    // Friday has no minutes.
    expect(days[4]).to.deep.equal([]);
  });

  it('keeps the minutes of every kind', async () => {
    const page = await openHalfDone();
    await page.presses(lay);
    await page.laid();
    const minutesOf = (kind: string): number =>
      all(page)
        .filter((each) => each.startsWith(kind))
        .reduce((sum, each) => sum + Number(each.split(' ')[1]), 0);
    expect(['slow', 'tempo', 'intervals', 'cross', 'strength'].map(minutesOf)).to.deep.equal([70, 35, 25, 35, 75]);
  });

  it('is shown on the board and in the record alike', async () => {
    const page = await openHalfDone();
    await page.presses(lay);
    await page.laid();
    expect(
      page.shownDays.map((day) => day.map(({ category, minutes }) => `${category} ${String(minutes)}`)),
    ).to.deep.equal(onDays(page));
    expect(page.sessions).to.include('Tempo running Tuesday, 35 min');
    expect(page.ticked.filter(Boolean)).to.have.length(2);
    expect(page.lead).to.contain('2 of 7 sessions done, 55 of 240 minutes.');
    expect(page.hasFocus(page.layButton), 'the focus stays').to.equal(true);
  });

  it('moves no session that may stay: all of Thursday to Sunday lies where it did', async () => {
    const page = await openRecord();
    await page.ticks(0, 1, 2);
    const before = onDays(page);
    await page.presses(lay);
    await page.laid();
    expect(onDays(page)).to.deep.equal(before);
  });

  it('counts in steps of five minutes: 33 minutes are 35 on the week, and stay 33 in the record', async () => {
    const page = await openRecord();
    await page.ticks(0);
    await page.typesIn(page.field(0, 'minutes'), '33');
    await page.presses(lay);
    await page.laid();
    expect(onDays(page)[0]).to.deep.equal(['tempo 35']);
    expect(page.kind('tempo')[1]).to.equal(33);
  });

  it('is laid by keys', async () => {
    const page = await openHalfDone();
    await page.goTo(page.layButton);
    await page.heardOnce(async () => {
      await page.press('Enter');
      await page.laid();
    });
    expect(page.week.wishes.passed).to.equal(2);
  });

  it('on Monday has all days', async () => {
    const page = await openRecord(scene, undefined, '2026-11-30');
    await page.presses(lay);
    await page.laid();
    expect([page.week.wishes.passed, page.week.wishes.done]).to.deep.equal([0, []]);
  });
});

describe('why the rest is not laid', () => {
  const isOff = async (page: RecordPage, hint: string): Promise<void> => {
    expect([page.layButton.ariaDisabled, page.layHint]).to.deep.equal(['true', hint]);
    expect(page.layButton.getAttribute('aria-describedby')).to.equal('record-rest-hint');
    expect(await page.heard(() => page.click(page.layButton))).to.deep.equal([]);
  };

  it('is that there are no days', async () => {
    await isOff(await openRecord(scene, 'split record'), 'For this the planner needs the days of the week.');
  });

  it('is that the week is over', async () => {
    const page = await openRecord();
    await page.presses('The week before');
    await isOff(page, 'This week is over.');
    await page.presses('This week');
    expect([page.layButton.ariaDisabled, page.layHint]).to.deep.equal([
      ...['false', 'What was done stays where it was done; days that are over get nothing new.'],
    ]);
  });

  it('is that the week is yet to come, where no season says what is in it', async () => {
    const page = await openRecord();
    await page.presses('The week after');
    await isOff(page, 'This week is yet to come.');
  });

  it('is that the week of the season is another than the one on show, until it is shown there', async () => {
    const attributes = `${scene} level="developing" event="10k" event-date="2027-01-24"`;
    const page = await openRecord(attributes, 'week season record', wednesday);
    page.element.season = { weeks: 8 };
    await page.until(() => page.element.plan?.season?.weeks[0]?.start === '2026-11-30', 'the season comes');
    const weeks = page.element.plan?.season?.weeks ?? [];
    const other = weeks.findIndex(({ hours }) => hours !== 4);
    for (let press = 0; press < other; press += 1) await page.presses('The week after');
    await isOff(page, 'This week of the season is another than the one on the planner: show it there first.');
    const reading = page.find<HTMLInputElement>('#season-reading');
    await page.slide(reading, other);
    await page.click(page.find('.season-week > button.act'));
    await page.laid();
    await page.until(() => page.layButton.ariaDisabled === 'false', 'the week can be laid');
  });
});

describe('what was marked as done on the days', () => {
  it('is taken over into the record, once', async () => {
    const page = await openRecord();
    expect(page.all('.record-rest button')).to.have.length(1);
    await page.does('tempo', 0, 'Done');
    await page.until(() => page.week.wishes.done.length === 1, 'it is marked');
    const name = 'Take over one session marked as done on the days';
    expect(await page.heard(() => page.presses(name))).to.deep.equal([]);
    expect([page.ticked[0], page.doneOf(0)]).to.deep.equal([true, ['Monday', '35', '']]);
    expect(page.all('.record-rest button')).to.have.length(1);
    expect(page.root.activeElement?.closest('.record') ?? null, 'the focus is in the record').to.not.equal(null);
  });

  it('is not offered where it is in the record already', async () => {
    const page = await openRecord();
    await page.ticks(0);
    await page.presses(lay);
    await page.laid();
    expect(page.week.wishes.done).to.have.length(1);
    expect(page.all('.record-rest button')).to.have.length(1);
  });

  it('is not offered in another week', async () => {
    const page = await openRecord();
    await page.does('tempo', 0, 'Done');
    await page.until(() => page.week.wishes.done.length === 1, 'it is marked');
    await page.presses('The week before');
    expect(page.all('.record-rest button')).to.have.length(1);
  });
});
