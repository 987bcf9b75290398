import { describe, expect, it } from 'vitest';
import { categoryIds } from '../../../src/training/method/ids.js';
import { planWeek, type PlanWeek } from '../../../src/plan.js';
import { readByIcalJs, readByNodeIcal, nameByNodeIcal, type ReadEvent } from '../exchange/calendar/readers.js';
import { pageOf } from './pages.js';
import { plannedSeason } from './season-line.js';

const days = [60, 0, 45, 60, 0, 90, 120];
const onDays = `calendar --hours 4 --days ${days.join()} --week-of 2027-01-13`;
const season = 'calendar --hours 4 --most-hours 6 --event half-marathon --date 2027-04-11 --weeks 16';

/** Every reader finds the same. */
async function eventsOf(line: string | readonly string[]): Promise<readonly ReadEvent[]> {
  const output = await pageOf(line);
  const events = readByIcalJs(output);
  expect(readByNodeIcal(output)).toEqual(events);
  return events;
}

/** The days of the week as the planner lays them. */
function plannedDays(): NonNullable<PlanWeek['days']> {
  const plan = planWeek({ hours: 4, week: { days } });
  if (!plan.ok || !plan.value.week?.days) throw new Error('the week is not laid');
  return plan.value.week.days;
}

const dates = ['11', '12', '13', '14', '15', '16', '17'].map((day) => `2027-01-${day}`);
const titles = {
  slow: 'Slow running',
  tempo: 'Tempo running',
  intervals: 'Intervals',
  cross: 'Cross-training',
  strength: 'Strength',
};
const titled = (event: ReadEvent): readonly string[] => [event.start, event.title];
const minutesOf = ({ start, end }: ReadEvent): number => (Date.parse(`${end}Z`) - Date.parse(`${start}Z`)) / 60_000;

describe('weekwright calendar', () => {
  it('has every session on its day, as the planner lays them', async () => {
    const planned = plannedDays().flatMap((sessions, day) =>
      sessions.map(({ category, minutes }) => [dates[day], `${titles[category]}, ${minutes} min`]),
    );
    expect((await eventsOf(onDays)).map(titled)).toEqual(planned);
  });

  it.each(dates)('takes any day for its week: %s', async (date) => {
    expect(await pageOf(onDays.replace('2027-01-13', date))).toBe(await pageOf(onDays));
  });

  it('has whole days where no time is told', async () => {
    for (const { start, end } of await eventsOf(onDays)) {
      expect(start).toMatch(/^\d{4}-\d\d-\d\d$/);
      expect(Date.parse(end) - Date.parse(start)).toBe(86_400_000);
    }
  });

  it.each([
    ['--at 18:00', '18:00', '07:00'],
    ['--at 19:30 --early 06:15', '19:30', '06:15'],
  ])('has times with %s: of two on a day the first is early', async (options, at, early) => {
    const planned = plannedDays().flatMap((sessions, day) =>
      sessions.map((_, place) => `${dates[day]}T${place === 0 && sessions.length > 1 ? early : at}:00`),
    );
    // Or else nothing here is told.
    expect(Math.max(...plannedDays().map(({ length }) => length))).toBe(2);
    const events = await eventsOf(`${onDays} ${options}`);
    expect(events.map(({ start }) => start)).toEqual(planned);
    expect(events.map(minutesOf)).toEqual(plannedDays().flatMap((sessions) => sessions.map(({ minutes }) => minutes)));
  });

  it('has what is told of the runner in its notes', async () => {
    const told = await eventsOf(`${onDays} --race 10k=45:00 --unit mile --lifted goblet-squat:20x8`);
    expect(told.find(({ title }) => title.startsWith('Tempo'))?.notes).toMatch(/ at \d:\d\d to \d:\d\d a mile/);
    expect(told.find(({ title }) => title.startsWith('Strength'))?.notes).toMatch(/Goblet squat \d × \d+, [\d.]+ kg/);
    const untold = await eventsOf(onDays);
    for (const { notes } of untold) expect(notes).not.toMatch(/ a (?:mile|kilometre)| kg/);
    expect(told.map(titled)).toEqual(untold.map(titled));
  });

  it('has other sets with other equipment, minutes and forms', async () => {
    const notes = async (options: string): Promise<string> =>
      (await eventsOf(`${onDays} ${options}`)).map((event) => event.notes).join('\n');
    expect(await notes('--equipment none')).not.toMatch(/dumbbell|band/i);
    expect(await notes('--equipment dumbbells')).toMatch(/dumbbell/i);
    expect(await notes('--form squat=chair-squat')).toMatch(/^Sit to stand \d/m);
    expect(await notes('--minutes 10')).not.toBe(await notes('--unit km'));
  });

  it('is of its name: plans of other names have events of their own', async () => {
    const uids = async (name: string): Promise<readonly string[]> =>
      (await eventsOf([...onDays.split(' '), '--name', name])).map(({ uid }) => uid);
    const [spring, autumn] = [await uids('Spring'), await uids('Autumn')];
    expect(await uids('Spring')).toEqual(spring);
    expect(new Set([...spring, ...autumn]).size).toBe(2 * spring.length);
    expect(nameByNodeIcal(await pageOf([...onDays.split(' '), '--name', 'Spring']))).toBe('Spring');
  });

  it('ends every event with whom to ask', async () => {
    const events = await eventsOf([...onDays.split(' '), '--contact', 'desk 4']);
    for (const { notes } of events) expect(notes).toMatch(/\ndesk 4$/);
  });
});

describe('weekwright calendar of a season', () => {
  const planned = plannedSeason({ date: '2027-04-11', weeks: 16, mostHours: 6 });

  it('has an event for every week where no days are given, and one for what it leads to', async () => {
    const events = await eventsOf(season);
    expect(events.map(({ start }) => start)).toEqual([...planned.weeks.map(({ start }) => start), '2027-04-11']);
    expect(events.map(({ title }) => title).at(-1)).toBe('Half marathon');
    expect(events[0]?.title).toBe('Week 1, base, 4 h');
    // As the season has it in tests/core/cli/season.test.ts: 240 minutes by 30, 15, 10, 15 and 30 per cent.
    expect(events[0]?.notes).toMatch(/\nTempo running: 35 min\nIntervals: 25 min\nCross-training: 35 min\n/);
  });

  it('has further events', async () => {
    const events = await eventsOf(`${season} --events 2027-01-17:10k`);
    expect(events.filter(({ title }) => title === '10 km').map(({ start }) => start)).toEqual(['2027-01-17']);
  });

  it('has every session of every week on days that have room for all', async () => {
    const events = await eventsOf(`${season} --days ${days.map(() => 240).join()} --at 18:00`);
    const sessions = events.filter(({ start }) => start.includes('T'));
    for (const { start, sessions: cut } of planned.weeks) {
      const monday = Date.parse(start);
      const own = sessions.filter((event) => {
        const since = Date.parse(event.start.slice(0, 10)) - monday;
        return since >= 0 && since < 7 * 86_400_000;
      });
      for (const id of categoryIds) {
        const found = own.filter(({ title }) => title.startsWith(titles[id])).map(minutesOf);
        expect([start, id, found.toSorted()]).toEqual([start, id, cut[id].toSorted()]);
      }
    }
  });
});
