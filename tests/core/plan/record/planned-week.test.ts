import { describe, expect, test } from 'vitest';
import {
  builtInPlanner,
  type Plan,
  type SeasonRequest,
  type SeasonWeek,
  type WeekRequest,
} from '../../../../src/plan.js';
import { weekPlanner, type PlannedWeek } from '../../../../src/plan/record/planned-week.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { byCategory, categoryIds, type ByCategory } from '../../../../src/training/method/ids.js';
import { civilDay, civilText } from '../../../reference/season/civil-days.js';
import { valueOf } from '../../training/method/documents.js';
import { session } from '../week/seven-days.js';
import { ascending, roomy } from '../week/weeks.js';

const planner = builtInPlanner();
/** From Monday, 21 December 2026, to the event on Sunday, 11 April 2027. */
const season: SeasonRequest = { date: '2027-04-11', weeks: 16 };
const planOf = (request: { readonly week?: WeekRequest; readonly season?: SeasonRequest }, hours = 4): Plan =>
  valueOf(planner.plan({ hours, ...request }));
const weeksOf = (plan: Plan): readonly SeasonWeek[] => plan.season?.weeks ?? [];
const plannerOf = (plan: Plan) => weekPlanner(builtInMethod, plan);

/** The lengths of a week, kind by kind. */
const lengthsOf = ({ sessions }: PlannedWeek): ByCategory<number[]> =>
  byCategory((id) => ascending(sessions.flatMap(({ category, minutes }) => (category === id ? [minutes] : []))));
const lengthsIn = (sessions: ByCategory<readonly number[]>): ByCategory<number[]> =>
  byCategory((id) => ascending(sessions[id]));
/** The days of a week, 0 for Monday, as its sessions have them. */
const daysOf = ({ sessions, start }: PlannedWeek): number[] =>
  sessions.map(({ date }) => (date === null ? NaN : civilDay(date) - civilDay(start)));

/** The week on show, on the dates of a week. */
const onShow = ({ week }: Plan, start: string): unknown[] =>
  (week?.days ?? []).flatMap((sessions, day) =>
    sessions.map((each) => ({ ...each, date: civilText(civilDay(start) + day) })),
  );

describe('a week of the season, where days are given,', () => {
  const plan = planOf({ week: { ...roomy, free: [0], longRun: 6 }, season });
  const weekOf = plannerOf(plan);

  test('has just the sessions of the season, on days that they may have, day after day', () => {
    expect(weeksOf(plan)).toHaveLength(18);
    for (const week of weeksOf(plan)) {
      const planned = weekOf(week.start);
      expect([planned.start, planned.season]).toEqual([week.start, week]);
      expect(lengthsOf(planned)).toEqual(lengthsIn(week.sessions));
      const days = daysOf(planned);
      expect(days).toEqual(ascending(days));
      expect(days.filter((day) => !(day >= 1 && day <= 6))).toEqual([]);
      for (const date of new Set(planned.sessions.map((each) => each.date))) {
        const minutes = planned.sessions.filter((each) => each.date === date).map((each) => each.minutes);
        expect(minutes.reduce((sum, each) => sum + each, 0)).toBeLessThanOrEqual(120);
      }
    }
  });

  test('has its long run on the day that wants it, where one of its runs is the longest', () => {
    const counts = { long: 0, even: 0 };
    for (const { start } of weeksOf(plan)) {
      const slow = weekOf(start).sessions.filter(({ category }) => category === 'slow');
      const most = Math.max(...slow.map(({ minutes }) => minutes));
      const longest = slow.filter(({ minutes }) => minutes === most);
      counts[longest.length === 1 ? 'long' : 'even'] += 1;
      if (longest.length === 1) expect(longest[0]?.date).toBe(civilText(civilDay(start) + 6));
    }
    expect(Math.min(counts.long, counts.even)).toBeGreaterThan(0);
  });

  test('is worked out once', () => {
    const { start } = weeksOf(plan)[3] ?? { start: '' };
    expect(weekOf(start)).toBe(weekOf(start));
    expect(plannerOf(plan)(start)).toEqual(weekOf(start));
  });
});

describe('a week outside of the season', () => {
  const plan = planOf({ week: roomy, season });

  test.each(['2026-12-14', '2027-04-26', '2030-01-07'])('is the week on show: %s', (start) => {
    const week = plannerOf(plan)(start);
    expect(week.season).toBeNull();
    expect(week.sessions).toEqual(onShow(plan, start));
  });

  test('is so too where there is no season', () => {
    const alone = planOf({ week: roomy });
    const week = plannerOf(alone)('2026-12-21');
    expect(week).toMatchObject({ start: '2026-12-21', season: null, sessions: onShow(alone, '2026-12-21') });
    expect(lengthsOf(week)).toEqual(lengthsIn(alone.sessions));
  });
});

describe('where no days are given', () => {
  test('sessions are for any day, those of the season in its weeks and those of the plan beside it', () => {
    const plan = planOf({ season });
    for (const start of [...weeksOf(plan).map((week) => week.start), '2030-01-07']) {
      const week = plannerOf(plan)(start);
      expect(week.sessions.filter(({ date }) => date !== null)).toEqual([]);
      expect(lengthsOf(week)).toEqual(lengthsIn((week.season ?? plan).sessions));
      expect(week.season?.start ?? null).toBe(start === '2030-01-07' ? null : start);
    }
  });
});

describe('where nothing fits', () => {
  test('the days on show, their sessions are for any day', () => {
    const plan = planOf({ week: { days: [0, 0, 0, 0, 0, 0, 60] } });
    const week = plannerOf(plan)('2026-12-21');
    expect(week.sessions.every(({ date }) => date === null)).toBe(true);
    expect(lengthsOf(week)).toEqual(lengthsIn(plan.sessions));
  });

  test('a week of the season alone, its sessions are for any day, and those of easier weeks are not', () => {
    // Half an hour more than the week on show needs: weeks of more hours do not fit.
    const plan = planOf({
      week: { days: [45, 30, 45, 45, 30, 45, 60] },
      season: { ...season, mostHours: 10, rise: 0.4 },
    });
    const weekOf = plannerOf(plan);
    const weeks = weeksOf(plan).map(({ start }) => weekOf(start));
    const isDated = ({ sessions }: PlannedWeek): boolean => sessions.every(({ date }) => date !== null);
    const isUndated = ({ sessions }: PlannedWeek): boolean => sessions.every(({ date }) => date === null);
    expect(weeks.every((week) => isDated(week) || isUndated(week))).toBe(true);
    expect([weeks.some(isDated), weeks.some(isUndated)]).toEqual([true, true]);
    for (const week of weeks) expect(lengthsOf(week)).toEqual(lengthsIn(week.season?.sessions ?? plan.sessions));
    const most = Math.max(...weeks.filter(isDated).map((week) => week.season?.hours ?? 0));
    expect(most).toBeLessThan(10);
  });
});

describe('what is wished of the week on show', () => {
  test('holds for weeks of the season: a session pinned there is pinned, where the week has one as long', () => {
    const free = planOf({ week: { ...roomy, sessions: { tempo: [30] } }, season });
    const pinned = [session('tempo', 30, 4)];
    const plan = planOf({ week: { ...roomy, sessions: { tempo: [30] }, pinned }, season });
    expect(weeksOf(plan)).toEqual(weeksOf(free));
    const [as, others] = [true, false].map((has) =>
      weeksOf(plan).filter(({ sessions }) => sessions.tempo.includes(30) === has),
    );
    expect([as?.length, others?.length].every((count) => (count ?? 0) > 0)).toBe(true);
    for (const { start } of as ?? [])
      expect(plannerOf(plan)(start).sessions).toContainEqual({
        category: 'tempo',
        minutes: 30,
        date: civilText(civilDay(start) + 4),
      });
    for (const { start } of others ?? []) expect(daysOf(plannerOf(plan)(start)).some(Number.isNaN)).toBe(false);
  });

  test('that was done or is over there says nothing of other weeks', () => {
    const done = [session('slow', 35, 0), session('tempo', 35, 1)];
    const plan = planOf({ week: { ...roomy, done, passed: 5, restDays: 0, sessionsADay: 5 }, season });
    const weekOf = plannerOf(plan);
    const weeks = weeksOf(plan).map(({ start }) => weekOf(start));
    const laid = weeks.filter((week) => week.sessions.every(({ date }) => date !== null));
    expect(laid.length).toBe(weeks.length);
    // With five days over, all but what was done would be on the last two.
    expect(laid.every((week) => daysOf(week).some((day) => day >= 1 && day <= 4))).toBe(true);
  });

  test('and is pinned twice, is pinned as often as the week has sessions as long', () => {
    const free = planOf({ week: roomy, season });
    const single = weeksOf(free).find(({ sessions }) => sessions.strength.length === 1);
    const minutes = single?.sessions.strength[0] ?? NaN;
    const pinned = [session('strength', minutes, 1), session('strength', minutes, 4)];
    const plan = planOf({ week: { ...roomy, pinned, sessions: { strength: [minutes, minutes] } }, season });
    const week = plannerOf(plan)(single?.start ?? '');
    expect(lengthsOf(week).strength).toEqual([minutes]);
    expect(daysOf(week).some(Number.isNaN)).toBe(false);
  });
});

test('every kind has its sessions in a week of the season as it is made, whatever the hours', () => {
  for (const hours of [1, 2.5, 8, 14]) {
    const plan = planOf(
      { week: { days: [180, 180, 180, 180, 180, 240, 240], sessionsADay: 3 }, season: { ...season, weeks: 6 } },
      hours,
    );
    const weekOf = plannerOf(plan);
    for (const week of weeksOf(plan)) {
      const planned = weekOf(week.start);
      for (const id of categoryIds) expect(lengthsOf(planned)[id]).toEqual(ascending(week.sessions[id]));
    }
  }
});
