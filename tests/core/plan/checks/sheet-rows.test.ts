import { describe, expect, test } from 'vitest';
import { createChecksMaker } from '../../../../src/plan/checks/create-checks-maker.js';
import type { ChecksWishes } from '../../../../src/plan/checks/wishes.js';
import { newSheet, setInputs, setSessions, setWeek } from '../../../../src/plan/scenarios/change.js';
import type { ScenarioSheet } from '../../../../src/plan/scenarios/document.js';
import { sweepWeek, workWeekBackwards } from '../../../../src/plan/scenarios/questions.js';
import { ScenarioPlanner, type PlannedScenario } from '../../../../src/plan/scenarios/scenario-planner.js';
import { createWeekMaker } from '../../../../src/plan/week/create-week-maker.js';
import { planWeek, type Plan, type PlanRequest } from '../../../../src/plan.js';
import { checkLevels } from '../../../../src/training/checks/check-levels.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { loadWords } from '../../../../src/words/load-words.js';
import { turningPointLine } from '../../../../src/words/sheet/turning-point-line.js';
import { valueOf } from '../../training/method/documents.js';
import { fourHours, learned } from '../scenarios/sheets.js';
import { evenings } from '../week/week-sheets.js';

const nothing: ChecksWishes = { age: null, hoursBefore: null, longestRun: null, weeks: [], efforts: {} };
const told: ChecksWishes = {
  age: 67,
  hoursBefore: 3,
  longestRun: 40,
  weeks: [[300, 0, 420, 240, 0, 600, 360]],
  efforts: { slow: 4 },
};

async function first(sheet: ScenarioSheet, wishes = nothing): Promise<PlannedScenario> {
  const planner = new ScenarioPlanner();
  planner.teach({ week: createWeekMaker(), checks: createChecksMaker(wishes) });
  await learned(sheet, planner);
  const [planned] = planner.plan(sheet);
  if (!planned) throw new Error('a sheet has a scenario');
  return planned;
}

const plain = newSheet(builtInMethod, fourHours);
const laid = setWeek(plain, 'a', evenings);

/** The plan that a request for the same week gives by itself. */
const planOf = (request: PlanRequest, wishes: ChecksWishes): Plan => valueOf(planWeek({ ...request, checks: wishes }));

/** The levels of a sheet by check, as a plan calls them. */
const levelsIn = ({ planner: { sheet, column } }: PlannedScenario): Readonly<Record<string, unknown>> =>
  Object.fromEntries(
    sheet.model.blocks
      .flatMap(({ writes }) => writes.filter((id) => id.startsWith('check:')))
      .map((id) => [id.slice('check:'.length), checkLevels[column.value(id)] ?? null]),
  );

const levelsOf = ({ checks }: Plan): Readonly<Record<string, unknown>> =>
  Object.fromEntries(checks.map(({ id, level }) => [id, level]));

describe('checks in a sheet', () => {
  test.each([
    ['without days, nothing told', plain, {}, nothing],
    ['without days, all told', plain, {}, told],
    ['with days, nothing told', laid, { week: evenings }, nothing],
    ['with days, all told', laid, { week: evenings }, told],
  ])('have the levels of the plan: %s', async (_, sheet, more, wishes) => {
    const levels = levelsIn(await first(sheet, wishes));
    const expected = levelsOf(planOf({ ...fourHours, ...more }, wishes));
    // A sheet knows of nobody who is not of the age or level: there the row says that it is not known.
    for (const [id, level] of Object.entries(levels)) expect([id, level]).toEqual([id, expected[id] ?? null]);
    const known = Object.keys(expected).filter((id) => expected[id] !== null);
    expect(Object.keys(levels)).toEqual(expect.arrayContaining(known));
  });

  test('follow the sessions that were picked', async () => {
    const picked = setSessions(plain, 'a', { strength: [25, 25, 25] });
    const { planner } = await first(picked);
    expect(planner.column.value('fact:strength_sessions')).toBe(3);
    expect((await first(plain)).planner.column.value('fact:strength_sessions')).toBe(2);
  });

  test('follow every step of the hours as the plan does', async () => {
    const { planner } = await first(plain, told);
    const ids = ['activity', 'hard-minutes', 'strength-sessions', 'strength-days', 'hours-rise', 'longest-run', 'load'];
    const { sweep } = sweepWeek(planner, { input: 'weekly_hours', quantities: ids.map((id) => `check:${id}`) });
    sweep.values.forEach((hours, place) => {
      if (place % 4 > 0) return;
      const expected = levelsOf(planOf({ ...fourHours, hours }, told));
      for (const id of ids) {
        const level = checkLevels[sweep.series.get(`check:${id}`)?.[place] ?? -1] ?? null;
        expect([hours, id, level]).toEqual([hours, id, expected[id]]);
      }
    });
  });

  test('tell where one turns, and at which hours it is in line', async () => {
    const { planner } = await first(plain, { ...nothing, hoursBefore: 4 });
    const { points } = sweepWeek(planner, { input: 'weekly_hours', quantities: ['check:hours-rise'] });
    const turn = points.filter(({ id }) => id === 'check:hours-rise');
    // By hand: a fifth more than four hours is 4.8.
    expect(turn).toHaveLength(1);
    expect(turn[0]?.starts).toBe(true);
    expect(turn[0]?.at).toBeCloseTo(4.8, 6);
    const words = await loadWords('en');
    expect(turningPointLine(words, builtInMethod, { input: 'weekly_hours', point: turn[0]! })).toBe(
      'Above 4 hours 48 minutes: “Hours against the weeks before”, worth a look, begins',
    );
    const { solutions } = workWeekBackwards(planner, 'weekly_hours', { quantity: 'check:hours-rise', value: 0 });
    expect(solutions.some(({ from, to }) => from <= 1 && to >= 4.79)).toBe(true);
  });

  test('are not known, and nothing else breaks, where the days have no room', async () => {
    const crowded = setInputs(setWeek(plain, 'a', { days: [30, 0, 0, 0, 0, 0, 0] }), 'a', { hours: 4 });
    const planned = await first(crowded, told);
    const levels = levelsIn(planned);
    expect(levels['rest-days']).toBeNull();
    expect(levels['activity']).toBe('in-line');
    const failed = valueOf(planned.outcome).notices.filter(({ code }) => code === 'quantity-failed');
    expect(failed.map(({ quantity }) => quantity)).toEqual(['week_cost']);
  });
});
