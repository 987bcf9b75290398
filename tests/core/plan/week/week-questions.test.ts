import { describe, expect, test } from 'vitest';
import {
  newSheet,
  setOverride,
  setRow,
  setWeek,
  copyScenario,
  newScenarioId,
} from '../../../../src/plan/scenarios/change.js';
import { influenceOnWeek, sweepWeek, workWeekBackwards } from '../../../../src/plan/scenarios/questions.js';
import { rowGroups } from '../../../../src/plan/scenarios/rows.js';
import { readSheetText, writeSheetText } from '../../../../src/exchange/sheet-link.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { valueOf } from '../../training/method/documents.js';
import { fourHours, frozen, planOf } from '../scenarios/sheets.js';
import { costIn, evenings, firstOf, sheetWith, weekIn, weekPlanner } from './week-sheets.js';
import { roomy, weekOf } from './weeks.js';

const { planner } = await firstOf(sheetWith());
const dayNames = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];
const dayIds = dayNames.map((day) => `${day}_minutes`);

describe('questions to a week', () => {
  test('a sweep over the hours has the cost of each week, and none where nothing fits', () => {
    const { sweep } = sweepWeek(planner, { input: 'weekly_hours', quantities: ['week_cost'] });
    const costs = [...(sweep.series.get('week_cost') ?? [])];
    expect(sweep.values).toHaveLength(79);
    const sampled = sweep.values.flatMap((hours, index) => (index % 3 === 0 ? [[hours, costs[index]] as const] : []));
    for (const [hours, cost] of sampled) expect(cost).toBe(weekOf(evenings, { hours }).cost ?? NaN);
    // By hand: seven sessions on five days at four hours; seven hours and a half do not fit into 375 minutes.
    expect(costs[sweep.values.indexOf(4)]).toBe(2);
    expect(costs[sweep.values.indexOf(7.5)]).toBeNaN();
  });

  test('a sweep over a day has the cost of the week with so many minutes', () => {
    const { input, sweep } = sweepWeek(planner, { input: 'sunday_minutes', quantities: ['week_cost'] });
    expect([input.least, input.most, input.step, input.start]).toEqual([0, 360, 15, 120]);
    const costs = [...(sweep.series.get('week_cost') ?? [])];
    sweep.values.forEach((minutes, index) => {
      expect(costs[index]).toBe(weekOf({ days: evenings.days.with(6, minutes) }).cost ?? NaN);
    });
  });

  test('worked backwards, a cost is reached at minutes of a day', async () => {
    // Seven days with two hours cost nothing (see the hand-made weeks), six of them 1: a day off has none.
    const week = { ...roomy, restDays: 0 };
    const { planner: sevenDays } = await firstOf(sheetWith({}, { week }));
    for (const [value, includes] of [
      [0, 120],
      [1, 0],
    ] as const) {
      const { solutions } = workWeekBackwards(sevenDays, 'sunday_minutes', { quantity: 'week_cost', value });
      expect(solutions.some(({ from, to }) => from <= includes && includes <= to)).toBe(true);
      for (const { from, to } of solutions) {
        const days = roomy.days.with(6, Math.floor((from + to) / 2));
        expect(weekOf({ ...week, days }).cost).toBe(value);
      }
    }
  });

  test('influence names the days', () => {
    const influence = influenceOnWeek(planner, 'week_cost');
    const inputs = influence.map(({ input }) => input);
    expect(inputs.filter((input) => input.endsWith('_minutes')).sort()).toEqual([...dayIds].sort());
    const [monday] = influence.filter(({ input }) => input === 'monday_minutes');
    const costWith = (minutes: number) => weekOf({ days: evenings.days.with(0, minutes) }).cost;
    expect(monday).toEqual({
      input: 'monday_minutes',
      down: (costWith(45) ?? NaN) - 2,
      up: (costWith(75) ?? NaN) - 2,
    });
  });
});

describe('a sheet with days', () => {
  test('has an error in the cell, and says so in the plan, where nothing fits', async () => {
    const planned = await firstOf(sheetWith({}, { week: { days: [0, 0, 0, 0, 0, 0, 60] } }));
    expect(costIn(planned)).toBeNull();
    expect(planned.planner.sheet.explain(planned.planner.column, 'week_cost')).not.toBeNull();
    expect(valueOf(planned.outcome).derivations['week_cost']).toMatchObject({ value: null });
    expect(valueOf(planned.outcome).derivations['week_cost']?.error).toBeDefined();
    expect(weekIn(planned).state).toBe('nothing-fits');
  });

  test('may have rows of its own that use what the week costs, and the minutes of days', async () => {
    const row = { id: 'own_price', name: 'Twice the cost', formula: 'week_cost * 2 + monday_minutes' };
    const planned = await firstOf(setRow(sheetWith(), row));
    expect(planned.planner.column.value('own_price')).toBe(2 * 2 + 60);
  });

  test('shows the cost among what is planned, and the days among the inputs; without days neither', () => {
    const quantitiesOf = (hasDays: boolean, group: string) =>
      rowGroups(builtInMethod, { hasDays })
        .filter(({ id }) => id === group)
        .flatMap(({ rows }) => rows.map(({ id }) => id));
    expect(quantitiesOf(true, 'planned').at(-1)).toBe('week_cost');
    expect(quantitiesOf(true, 'inputs').slice(-7)).toEqual(dayIds);
    const without = rowGroups(builtInMethod).flatMap(({ rows }) => rows.map(({ id }) => id));
    for (const id of ['week_cost', ...dayIds]) expect(without).not.toContain(id);
  });

  test('has no such quantity in a scenario without days, nor without somebody to lay weeks', async () => {
    const bare = await firstOf(newSheet(builtInMethod, fourHours));
    expect(valueOf(bare.outcome)).toMatchObject({ week: null });
    expect(Object.keys(valueOf(bare.outcome).derivations)).not.toContain('week_cost');
    expect(await planOf(sheetWith())).toMatchObject({ week: null, rounded: { slow: 70 } });
  });
});

describe('setWeek(sheet, id, week)', () => {
  const first = newSheet(builtInMethod, fourHours);
  const sheet = frozen(copyScenario(first, 'a'));
  const copy = newScenarioId(first);
  const weeksOf = ({ scenarios }: typeof sheet) => scenarios.map(({ week }) => week);

  test('gives the days to every scenario that has none, then to that one alone', () => {
    const both = frozen(setWeek(sheet, 'a', evenings));
    expect(weeksOf(both)).toEqual([evenings, evenings]);
    expect(weeksOf(setWeek(both, copy, roomy))).toEqual([evenings, roomy]);
    expect(weeksOf(sheet)).toEqual([null, null]);
  });

  test('gives the same sheet back where the scenario has that week', () => {
    const both = setWeek(sheet, 'a', evenings);
    expect(setWeek(both, 'a', { ...evenings })).toBe(both);
  });

  test('comes out of a link as it went in, and plans the same', async () => {
    const wanted = setWeek(setOverride(sheet, 'a', { quantity: 'monday_minutes', formula: '30' }), 'a', {
      ...weekOf(evenings).wishes,
      longRun: 6,
      pinned: [{ category: 'tempo', minutes: 35, day: 2 }],
    });
    const again = valueOf(readSheetText(writeSheetText(wanted), builtInMethod));
    expect(again).toStrictEqual(wanted);
    const plans = async (each: typeof sheet) => (await weekPlanner(each)).plan(each).map(({ outcome }) => outcome);
    expect(await plans(again)).toEqual(await plans(wanted));
  });
});
