import { describe, expect, test } from 'vitest';
import { scenarioOf, setInputs, setOverride, setSessions, setWeek } from '../../../../src/plan/scenarios/change.js';
import type { PlanInputs } from '../../../../src/plan/document.js';
import type { WeekRequest } from '../../../../src/plan/week/wishes.js';
import { inShort } from '../../in-short.js';
import { costIn, evenings, firstOf, sheetWith, weekIn, weekPlanner } from './week-sheets.js';
import { roomy, weekOf } from './weeks.js';

const weekend: WeekRequest = { days: [0, 0, 0, 0, 0, 150, 150], sessionsADay: 3 };
const pinned: WeekRequest = {
  ...roomy,
  longRun: 6,
  free: [2],
  pinned: [{ category: 'tempo', minutes: 35, day: 1 }],
  sessions: { strength: [25, 25, 25] },
};
const weeks = { evenings, roomy, weekend, pinned, little: { days: [30, 30, 30, 30, 30, 30, 30] } };

const inputs: readonly Partial<PlanInputs>[] = [
  {},
  { hours: 2.5 },
  { hours: 6.25 },
  { hours: 3.1, phase: 'taper' },
  { hours: 5, phase: 'off-season' },
  { hours: 1, level: 'new' },
  { hours: 2, phase: 'recovery' },
];

const overrides: readonly Readonly<Record<string, string>>[] = [
  { slow_rounded: '90' },
  { slow_rounded: '82' },
  { strength_rounded: 'value - 15' },
  { total_rounded: '300' },
  { tempo_minutes: '0' },
  { strength_minutes: '60' },
  { weekly_minutes: '200' },
  { weekly_hours: '5' },
  { slow_typical: '70' },
  { slow_shortest: '30', strength_longest: '45' },
  { monday_minutes: '30' },
  { monday_minutes: '62.5', sunday_minutes: 'value / 2' },
  { saturday_minutes: 'weekly_hours * 10' },
  { wednesday_minutes: '0', tempo_rounded: '40' },
];

describe('week_cost is what the week of the plan costs', () => {
  test.each(Object.entries(weeks))('with many inputs (%s)', async (_, week) => {
    const sheet = sheetWith({}, { week });
    const planner = await weekPlanner(sheet);
    for (const each of inputs) {
      const [planned] = planner.plan(setInputs(sheet, 'a', each));
      if (!planned) throw new Error('a sheet has a scenario');
      expect(costIn(planned)).toBe(weekIn(planned).cost);
      expect(weekIn(planned)).toEqual(weekOf(week, each));
    }
  });

  test.each(overrides.map((each) => [inShort(each), each] as const))('with %s', async (_, each) => {
    for (const week of [evenings, roomy, weekend]) {
      const planned = await firstOf(sheetWith(each, { week }));
      expect(costIn(planned)).toBe(weekIn(planned).cost);
    }
  });

  test('with picked sessions, and those that are no option', async () => {
    for (const strength of [[25, 25, 25], [30, 45], [15]]) {
      const planned = await firstOf(setSessions(sheetWith({}, { week: roomy }), 'a', { strength }));
      expect(costIn(planned)).toBe(weekIn(planned).cost);
      expect(weekIn(planned)).toEqual(weekOf(roomy, { sessions: { strength } }));
    }
  });

  test('step by step while the days, and what is over them, change', async () => {
    let sheet = sheetWith();
    const planner = await weekPlanner(sheetWith({ monday_minutes: '30', slow_rounded: '90' }));
    const steps = [
      () => setWeek(sheet, 'a', { days: [60, 0, 45, 60, 0, 90, 60] }),
      () => setOverride(sheet, 'a', { quantity: 'monday_minutes', formula: '30' }),
      () => setWeek(sheet, 'a', weekend),
      () => setOverride(sheet, 'a', { quantity: 'slow_rounded', formula: '90' }),
      () => setOverride(sheet, 'a', { quantity: 'monday_minutes', formula: null }),
      () => setInputs(sheet, 'a', { hours: 3 }),
      () => setWeek(sheet, 'a', { ...evenings, restDays: 3 }),
    ];
    for (const step of steps) {
      sheet = step();
      const [planned] = planner.plan(sheet);
      if (!planned) throw new Error('a sheet has a scenario');
      const afresh = await firstOf(sheet);
      expect(costIn(planned)).toBe(weekIn(planned).cost);
      expect(weekIn(planned)).toEqual(weekIn(afresh));
    }
  });
});

describe('minutes put over a day', () => {
  test('are what the day has, in whole minutes', async () => {
    const planned = await firstOf(sheetWith({ monday_minutes: '62.5', tuesday_minutes: 'value - 30' }));
    expect(weekIn(planned).wishes.days).toEqual([62, 0, 45, 60, 0, 90, 120]);
    expect(weekIn(planned)).toEqual(weekOf({ days: [62, 0, 45, 60, 0, 90, 120] }));
    expect(scenarioOf(sheetWith(), 'a').week).toEqual(evenings);
  });
});
