import { expect } from '@open-wc/testing';
import ICAL from 'ical.js';
import { shownPlan } from '../planner-page.js';
import { days, openHandout, openWithDays, scene, type HandoutPage } from './handout-page.js';
import { savedFile, savedFiles, type SavedFile } from './saving.js';

interface Entry {
  readonly uid: string;
  readonly title: string;
  readonly notes: string;
  /** ISO date. */
  readonly date: string;
  /** `18:00`; null for the whole day. */
  readonly time: string | null;
  readonly minutes: number;
  readonly sequence: number;
}

const saves = (page: HandoutPage): Promise<SavedFile> => savedFile(() => page.acts('Save for a calendar'));

/** The events of a calendar as another library reads them. */
function entries({ text }: SavedFile): Entry[] {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    const { startDate, duration } = event;
    return {
      uid: event.uid,
      title: event.summary,
      notes: event.description,
      date: startDate.toString().slice(0, 10),
      time: startDate.isDate ? null : startDate.toString().slice(11, 16),
      minutes: duration.toSeconds() / 60,
      sequence: Number(component.getFirstPropertyValue('sequence')),
    };
  });
}

function groupedByDate(all: readonly Entry[]): ReadonlyMap<string, readonly Entry[]> {
  const dates = [...new Set(all.map(({ date }) => date))];
  return new Map(dates.map((date) => [date, all.filter((each) => each.date === date)]));
}

const uids = (file: SavedFile): string[] => entries(file).map(({ uid }) => uid);

/** The sessions on the board: dates, kinds and minutes. */
function onBoard(page: HandoutPage, monday: string): string[] {
  return page.all('.board .day').flatMap((day, index) =>
    [...day.querySelectorAll<HTMLElement>('.card')].map((card) => {
      const date = new Date(Date.parse(monday) + index * 86_400_000).toISOString().slice(0, 10);
      return `${date} ${String(Number.parseInt(card.textContent ?? '', 10))}`;
    }),
  );
}

const minutesIn = (title: string): number => {
  const [, hours = '0', minutes = '0'] = /(?:(\d+) h)? ?(?:(\d+) min)?$/.exec(title) ?? [];
  return Number(hours) * 60 + Number(minutes);
};

describe('a week saved for a calendar', () => {
  it('is a file of its kind, named after the plan and the week, which is said', async () => {
    const page = await openWithDays();
    await page.setDate('handout-start', '2026-11-30');
    await page.typeIn('handout-name', 'Frühling / 10 km: <los>!');
    const file = await saves(page);
    expect([file.name, file.type]).to.deep.equal(['Frühling-10-km-los-2026-11-30.ics', 'text/calendar']);
    expect(page.message).to.equal('Saved as Frühling-10-km-los-2026-11-30.ics.');
    expect(file.text).to.match(/^BEGIN:VCALENDAR\r\n/);
  });

  it('has one event for each session, on its date, with what it is made of', async () => {
    const page = await openWithDays(`${scene} contact="Clinic, ext. 12"`, 'week strength handout');
    await page.setDate('handout-start', '2026-11-30');
    const events = entries(await saves(page));
    const found = events.map(({ date, title }) => `${date} ${String(minutesIn(title))}`);
    expect([...found].sort()).to.deep.equal([...onBoard(page, '2026-11-30')].sort());
    expect(events).to.have.length(Object.values(shownPlan(page).sessions).flat().length);
    for (const { time, minutes, notes } of events) {
      expect([time, minutes]).to.deep.equal([null, 24 * 60]);
      expect(notes).to.match(/\d of 10/);
      expect(notes).to.contain('not medical advice');
      expect(notes).to.match(/Clinic, ext\. 12$/);
    }
    const strength = events.filter(({ title }) => title.startsWith('Strength'));
    expect(strength.length).to.be.greaterThan(0);
    for (const { notes } of strength) expect(notes).to.match(/\d × \d/);
  });

  it('has the same identifiers each time, and a greater number of its revision', async () => {
    const page = await openWithDays();
    const first = await saves(page);
    await new Promise((resolve) => setTimeout(resolve, 1100));
    const second = await saves(page);
    expect(uids(second)).to.deep.equal(uids(first));
    expect(new Set(uids(first)).size).to.equal(uids(first).length);
    expect(entries(second)[0]?.sequence).to.be.greaterThan(entries(first)[0]?.sequence ?? Infinity);
  });

  it('has the same identifiers after a session has moved to another day', async () => {
    const page = await openWithDays();
    const before = await saves(page);
    // By the buttons of the board: a session goes to a day of rest.
    const from = page.all('.board .day').findIndex((day) => day.querySelector('.card'));
    const rest = page.all('.board .day').findIndex((day) => !day.querySelector('.card'));
    await page.click(page.find(`.board .day[data-day="${String(from)}"] .card`));
    await page.click(page.at('#board-tools .moves button', rest));
    await page.until(() => page.has(`.board .day[data-day="${String(rest)}"] .card`), 'the session has moved');
    const after = await saves(page);
    const places = (file: SavedFile): string[] => entries(file).map(({ date, title }) => `${date} ${title}`);
    expect(places(after)).to.not.deep.equal(places(before));
    expect([...uids(after)].sort()).to.deep.equal([...uids(before)].sort());
  });

  it('has other identifiers under another name, and in another week', async () => {
    const page = await openWithDays();
    await page.setDate('handout-start', '2026-11-30');
    const seen = uids(await saves(page));
    await page.typeIn('handout-name', 'Anna');
    const named = uids(await saves(page));
    await page.setDate('handout-start', '2026-12-07');
    const later = uids(await saves(page));
    expect(new Set([...seen, ...named, ...later]).size).to.equal(3 * seen.length);
    expect([...named, ...later].join()).to.not.contain('Anna');
  });

  it('has no name of the runner in its identifiers, and nothing of the health', async () => {
    const page = await openWithDays();
    await page.typeIn('handout-runner', 'Anna B.');
    const { text } = await saves(page);
    expect(text).to.not.contain('Anna');
  });

  it('is in the language of the planner', async () => {
    const page = await openWithDays(`${scene} lang="de"`);
    const file = await savedFile(() => page.acts('Für den Kalender sichern'));
    expect(
      entries(file)
        .map(({ title }) => title)
        .join(),
    ).to.match(/Krafttraining|Kraft/);
    expect(file.text).to.contain('LANGUAGE=de');
  });
});

describe('times of day in a calendar', () => {
  it('are asked for by a tick, and are those of the fields', async () => {
    const page = await openWithDays();
    await page.opensBox('calendar');
    expect(page.has('#handout-usual')).to.equal(false);
    await page.click(page.tickOf('calendar'));
    expect([page.typedIn('handout-usual').value, page.typedIn('handout-early').value]).to.deep.equal([
      '18:00',
      '07:00',
    ]);
    const events = entries(await saves(page));
    expect(events.map(({ minutes, title }) => minutes - minutesIn(title))).to.deep.equal(events.map(() => 0));
    await page.setDate('handout-usual', '17:15');
    const byDate = groupedByDate(entries(await saves(page)));
    for (const sessions of byDate.values()) expect(sessions.slice(-1).map(({ time }) => time)).to.deep.equal(['17:15']);
  });

  it('on a day with two sessions have the first one early', async () => {
    const page = await openHandout(
      'hours="11" phase="build" level="elite" days="150,150,150,150,150,240,240"',
      'week handout',
    );
    await page.until(() => page.element.plan?.week?.state === 'laid', 'the week is laid');
    await page.opensBox('calendar');
    await page.click(page.tickOf('calendar'));
    await page.setDate('handout-early', '06:30');
    const byDate = groupedByDate(entries(await saves(page)));
    const doubled = [...byDate.values()].filter(({ length }) => length === 2);
    expect(doubled.length).to.be.greaterThan(0);
    for (const sessions of doubled) expect(sessions.map(({ time }) => time)).to.deep.equal(['06:30', '18:00']);
  });

  it('go with the tick; the sessions then have the whole day', async () => {
    const page = await openWithDays();
    await page.opensBox('calendar');
    await page.click(page.tickOf('calendar'));
    await page.click(page.tickOf('calendar'));
    expect(new Set(entries(await saves(page)).map(({ time }) => time))).to.deep.equal(new Set([null]));
  });

  it('that are none are refused with a sentence, and the last stay', async () => {
    const page = await openWithDays();
    await page.opensBox('calendar');
    await page.click(page.tickOf('calendar'));
    await page.setDate('handout-usual', '');
    expect(page.hintOf('handout-usual')).to.match(/^Sessions begin at is "".*time/);
    expect(page.typedIn('handout-usual').getAttribute('aria-invalid')).to.equal('true');
    expect(entries(await saves(page)).map(({ time }) => time)).to.include('18:00');
    await page.setDate('handout-usual', '19:00');
    expect(page.hintOf('handout-usual')).to.equal('');
  });
});

describe('without days', () => {
  it('the week is one event of seven days, with all its kinds', async () => {
    const page = await openHandout();
    await page.setDate('handout-start', '2026-11-30');
    const [event, ...more] = entries(await saves(page));
    expect(more).to.deep.equal([]);
    expect([event?.date, event?.time, event?.minutes]).to.deep.equal(['2026-11-30', null, 7 * 24 * 60]);
    const { sessions } = shownPlan(page);
    for (const lengths of Object.values(sessions))
      for (const each of lengths) expect(event?.notes).to.contain(String(each));
  });
});

describe('a season saved for a calendar', () => {
  const season = `${scene} event="half-marathon" event-date="2027-04-11"`;

  it('has an event for each week, and the event that it leads to', async () => {
    const page = await openHandout(season, 'season handout');
    await page.until(() => page.has('#handout-what'), 'the season comes');
    await page.choose(page.selectOf('handout-what'), 1);
    const file = await saves(page);
    const events = entries(file);
    const weeks = events.filter(({ minutes }) => minutes === 7 * 24 * 60);
    const planned = page.season.weeks.filter((week) => Object.values(week.sessions).flat().length > 0);
    expect(weeks.map(({ date }) => date)).to.deep.equal(planned.map(({ start }) => start));
    const raced = events.filter(({ minutes }) => minutes === 24 * 60);
    expect(raced.map(({ date, title }) => `${date} ${title}`)).to.deep.equal(['2027-04-11 Half marathon']);
    expect(events).to.have.length(weeks.length + 1);
    expect(new Set(uids(file)).size).to.equal(events.length);
    expect(file.name).to.equal('Training-plan-2027-04-11.ics');
  });

  it('has the sessions of every week where days are given', async () => {
    const page = await openHandout(`${season} ${days}`, 'week season handout');
    await page.until(() => page.has('#handout-what') && page.element.plan?.week?.state === 'laid', 'all comes');
    await page.choose(page.selectOf('handout-what'), 1);
    const events = entries(await saves(page));
    expect(events.length).to.be.greaterThan(3 * page.season.weeks.length);
    for (const { start, sessions } of page.season.weeks) {
      const end = new Date(Date.parse(start) + 7 * 86_400_000).toISOString().slice(0, 10);
      const within = events.filter(({ date, uid }) => date >= start && date < end && !uid.includes('-event-'));
      const whole = within.some(({ minutes }) => minutes === 7 * 24 * 60);
      if (!whole) expect(within, start).to.have.length(Object.values(sessions).flat().length);
    }
  });

  it('a week of it saved alone has the identifiers that the whole has', async () => {
    const page = await openHandout(`${season} ${days}`, 'week season handout');
    await page.until(() => page.has('#handout-what') && page.element.plan?.week?.state === 'laid', 'all comes');
    const third = page.season.weeks[2]?.start ?? '';
    await page.setDate('handout-start', third);
    const alone = uids(await saves(page));
    await page.choose(page.selectOf('handout-what'), 1);
    expect(uids(await saves(page))).to.include.members(alone);
  });
});

it('a week without sessions is saved as no file, which is said', async () => {
  const page = await openHandout(`${scene} event-date="2027-04-11"`, 'season handout');
  await page.until(() => page.has('#handout-what'), 'the season comes');
  const { start = '' } = page.season.weeks[3] ?? {};
  page.element.season = { byHand: [{ start, hours: 0, reason: 'holiday' }] };
  await page.settled();
  await page.setDate('handout-start', start);
  const files = await savedFiles(() => page.acts('Save for a calendar'));
  expect([files, page.message]).to.deep.equal([[], 'There are no sessions to save.']);
});
