import { describe, expect, test } from 'vitest';
import { planWeek, type Plan, type PlanRequest } from '../../../../src/plan.js';
import { toldIn } from '../../../../src/plan/handout/concrete-plan.js';
import { weekPlanner } from '../../../../src/plan/record/planned-week.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { seasonEvents, weekEvents, type EventGround } from '../../../../src/words/handout/calendar-events.js';
import { phaseSpans } from '../../../../src/words/handout/phase-spans.js';
import { seasonTable, weekTable } from '../../../../src/words/handout/tables.js';
import { weekText } from '../../../../src/words/handout/week-text.js';
import { loadWords } from '../../../../src/words/load-words.js';
import type { Words } from '../../../../src/words/words.js';
import { valueOf } from '../../training/method/documents.js';

const words: Readonly<Record<'en' | 'de', Words>> = { en: await loadWords('en'), de: await loadWords('de') };
const start = '2026-11-30';
const request: PlanRequest = { hours: 4, phase: 'build', level: 'developing', event: 'half-marathon' };
const onDays: PlanRequest = { ...request, week: { days: [60, 0, 45, 60, 0, 90, 120] } };

const planOf = (asked: PlanRequest): Plan => valueOf(planWeek(asked));

function groundOf(plan: Plan, parts: Partial<EventGround> = {}): EventGround {
  return { method: builtInMethod, told: toldIn(plan), name: '', times: null, contact: '', ...parts };
}
const eventsOf = (asked: PlanRequest, parts: Partial<EventGround> = {}, language: 'en' | 'de' = 'en') => {
  const plan = planOf(asked);
  return weekEvents(words[language], groundOf(plan, parts), weekPlanner(builtInMethod, plan)(start));
};

describe('a week in a calendar', () => {
  test('has an event for each session on its day', () => {
    const plan = planOf(onDays);
    const days = plan.week?.days ?? [];
    expect(days.flat()).toHaveLength(7);
    const events = eventsOf(onDays, { contact: 'The clinic' });
    expect(events.map(({ date }) => date)).toEqual(
      days.flatMap((sessions, day) => sessions.map(() => (day === 0 ? start : `2026-12-0${day}`))),
    );
    expect(events[0]).toMatchObject({ title: 'Tempo running, 35 min', days: 1, time: null });
    expect(events[0]?.notes).toMatch(/^Warm-up 10 minutes; 20 minutes so that a few words at a time can be spoken;/);
    expect(events[0]?.notes).toMatch(/\nHow hard: 5 to 6 of 10\nA planning aid, not medical advice\..*\nThe clinic$/s);
  });

  test('speaks German, without places where a screen may break a word', () => {
    const titles = eventsOf(onDays, {}, 'de').map(({ title }) => title);
    expect(titles[0]).toBe('Tempolauf, 35 min');
    expect(titles).toContain('Ausgleichstraining, 35 min');
  });

  test('keeps the identifier of a session that moves, and changes it with the name of the plan', () => {
    const moved: PlanRequest = { ...request, week: { days: [0, 60, 60, 45, 0, 90, 120] } };
    const ids = (asked: PlanRequest, name = ''): string[] => eventsOf(asked, { name }).map(({ uid }) => uid);
    expect(ids(moved).sort()).toEqual(ids(onDays).sort());
    expect(new Set(ids(onDays)).size).toBe(7);
    expect(ids(onDays, 'Ida').filter((id) => ids(onDays).includes(id))).toEqual([]);
  });

  test('is one event where its sessions are for any day', () => {
    const [event, ...others] = eventsOf(request);
    expect(others).toEqual([]);
    expect(event).toMatchObject({ title: 'Training week, 4 h', date: start, days: 7, time: null });
    expect(event?.notes.split('\n').slice(0, 3)).toEqual([
      '7 sessions, 4 hours in all.',
      'Slow running: 2 × 35 min',
      'Tempo running: 35 min',
    ]);
  });
});

describe('a season', () => {
  const plan = planOf({ ...request, season: { date: '2027-04-11', weeks: 16 } });
  const { season } = plan;
  if (!season) throw new Error('a season was asked for');
  const weeks = weekPlanner(builtInMethod, plan);

  test('is a week each, and its event, in a calendar', () => {
    const events = seasonEvents(words.en, groundOf(plan), { season, weeks });
    expect(events).toHaveLength(season.weeks.length + 1);
    expect(events.at(-1)).toMatchObject({ title: 'Half marathon', date: '2027-04-11', days: 1 });
    expect(events[0]?.title).toMatch(/^Week 1, base, /);
  });

  test('has no event that is none', () => {
    const without = planOf({ ...request, event: 'none', season: { date: '2027-04-11', weeks: 16 } });
    const planner = weekPlanner(builtInMethod, without);
    if (!without.season) throw new Error('a season was asked for');
    const events = seasonEvents(words.en, groundOf(without), { season: without.season, weeks: planner });
    expect(events).toHaveLength(without.season.weeks.length);
  });

  test('has its phases as stretches of weeks that follow each other', () => {
    const spans = phaseSpans(words.en, season);
    expect(spans[0]).toEqual({ name: 'Base', span: expect.stringMatching(/^weeks 1 to \d+, Dec 21 to /) as string });
    expect(spans.map(({ name }) => name)).toEqual(['Base', 'Build', 'Peak', 'Taper', 'Recovery']);
  });

  test('is a table with two decimals of hours at most', () => {
    const { head, rows } = seasonTable(words.en, builtInMethod, season);
    expect(head.slice(0, 4)).toEqual(['Week', 'From', 'Phase', 'Hours']);
    expect(rows).toHaveLength(season.weeks.length);
    for (const { cells } of rows) expect(String(cells[2])).toMatch(/^\d+(\.\d\d?)?$/);
  });
});

describe('a week as a table', () => {
  test('has a row for each session; strength is told by its sets', () => {
    const plan = planOf(onDays);
    const week = weekPlanner(builtInMethod, plan)(start);
    const table = weekTable(words.en, start, weekText(words.en, builtInMethod, { week, told: toldIn(plan) }));
    expect(table.head).toEqual(['Date', 'Day', 'What', 'Minutes', 'How hard', 'How']);
    expect(table.rows[0]).toMatchObject({
      head: start,
      cells: ['Monday', 'Tempo running', 35, '5 to 6 of 10', expect.anything()],
    });
    const strength = table.rows.find(({ cells }) => cells[1] === 'Strength');
    expect(strength?.cells[4]).toMatch(/^Warm-up \d+ minutes\. .* of 10/);
  });
});
