import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { builtInPlanner } from '../../../../src/plan.js';
import type { Planner } from '../../../../src/plan/planner.js';
import { influenceOnWeek, inputOf, sweepWeek, workWeekBackwards } from '../../../../src/plan/scenarios/questions.js';
import { categoryIds, phaseIds } from '../../../../src/training/method/ids.js';
import { wantedAmount } from '../../../../src/words/sheet/formula-text.js';
import { anyAthletes } from '../../../reference/athletes.js';
import { patience, runs } from '../../../reference/runs.js';
import { valueOf } from '../../training/method/documents.js';
import { plannedAfresh, sheetWith } from './sheets.js';

/** The planner of a scenario with these values put over it. */
async function plannerWith(...given: Parameters<typeof sheetWith>): Promise<Planner> {
  const [planned] = await plannedAfresh(sheetWith(...given));
  if (!planned) throw new Error('no scenario');
  return planned.planner;
}

/** To nine digits; zero without a sign. */
const plainly = (change: number | null | undefined): string =>
  typeof change === 'number' ? (Math.round(change * 1e9) / 1e9 + 0).toFixed(9) : String(change);
const single = (at: number) => ({ from: at, to: at, includesFrom: true, includesTo: true });

describe('sweepWeek(planner, { input, quantities })', { timeout: patience }, () => {
  const quantities = categoryIds.flatMap((id) => [`${id}_minutes`, `${id}_rounded`, `${id}_share`]);

  test.each(['weekly_hours', 'strength_cap', 'season_phase'])(
    '%s: is the week planned for each value',
    async (input) => {
      const asked = { weekly_hours: 'hours', strength_cap: 'strengthCap', season_phase: 'phase' }[input] ?? '';
      await fc.assert(
        fc.asyncProperty(anyAthletes, async (athlete) => {
          const { sweep } = sweepWeek(await plannerWith({}, { inputs: athlete }), { input, quantities });
          const oneByOne = builtInPlanner();
          sweep.values.forEach((value, index) => {
            const set = { ...athlete, [asked]: asked === 'phase' ? phaseIds[value] : value };
            const { minutes, rounded, split } = valueOf(oneByOne.plan(set));
            const expected = categoryIds.flatMap((id) => [minutes[id], rounded[id], split.shares[id]]);
            const found = quantities.map((id) => sweep.series.get(id)?.[index] ?? NaN);
            found.forEach((each, place) => expect(each).toBeCloseTo(expected[place] ?? NaN, 9));
          });
        }),
        runs(4, 400),
      );
    },
  );

  test('goes over every step of the input', async () => {
    const planner = await plannerWith();
    const { sweep, input } = sweepWeek(planner, { input: 'weekly_hours', quantities: ['weekly_minutes'] });
    expect(input).toBe(inputOf(planner, 'weekly_hours'));
    expect(sweep.values).toEqual(Array.from({ length: 79 }, (_, step) => 0.5 + step / 4));
    expect([...(sweep.series.get('weekly_minutes') ?? [])]).toEqual(sweep.values.map((hours) => 60 * hours));
  });

  test('shows what a scenario has put over quantities', async () => {
    const planner = await plannerWith({ strength_minutes: 60 });
    const { sweep } = sweepWeek(planner, { input: 'weekly_hours', quantities: ['strength_minutes', 'slow_minutes'] });
    expect(new Set(sweep.series.get('strength_minutes'))).toEqual(new Set([60]));
    // Four hours: the others × (240 - 60) / 168.
    expect(sweep.series.get('slow_minutes')?.[sweep.values.indexOf(4)]).toBeCloseTo((72 * 180) / 168, 9);
    // Half an hour has not as much.
    expect(sweep.series.get('slow_minutes')?.[0]).toBeNaN();
  });

  test('throws for what is no input', () => {
    expect(() => inputOf(builtInPlanner(), 'slow_minutes')).toThrow('slow_minutes is no input');
  });
});

describe('the turning points of a week', () => {
  const points = async (...given: Parameters<typeof sheetWith>) =>
    sweepWeek(await plannerWith(...given), { input: 'weekly_hours', quantities: [] }).points.map(
      ({ id, at, starts, includes }) =>
        `${id} ${starts ? 'starts' : 'stops'} ${includes ? 'from' : 'above'} ${(60 * at).toFixed(6)}`,
    );
  /** By the minutes at which a share of the week is one session; the same places as in the tables of thresholds. */
  const at = (text: string, minutes: number): string => `${text} ${minutes.toFixed(6)}`;

  test('in season', async () => {
    expect(await points()).toEqual([
      at('slow-too-small stops from', 35),
      at('strength-too-small stops from', 15 / 0.3),
      at('tempo-too-small stops from', 20 / 0.25),
      at('cross-too-small stops from', 20 / 0.15),
      at('few-hours stops from', 180),
      at('intervals-too-small stops from', 20 / 0.1),
      at('many-hours starts above', 360),
      at('strength-cap starts above', 120 / 0.3),
    ]);
  });

  test('off season, with a low cap', async () => {
    expect(await points({}, { inputs: { phase: 'off-season', strengthCap: 90 } })).toEqual([
      at('slow-too-small stops from', 35),
      at('strength-too-small stops from', 15 / 0.4),
      at('cross-too-small stops from', 20 / 0.2),
      at('tempo-too-small stops from', 20 / 0.15),
      at('few-hours stops from', 180),
      at('strength-cap starts above', 360),
      at('many-hours starts above', 360),
    ]);
  });

  test('move with what is put over the sheet', async () => {
    const capped = (await points({ in_season_strength_share: 0.4 })).filter((text) => text.startsWith('strength-cap'));
    expect(capped).toEqual([at('strength-cap starts above', 360)]);
    expect((await points({ strength_cap: 100 })).filter((text) => text.startsWith('strength-cap'))).toEqual([
      at('strength-cap starts above', 360),
    ]);
    expect((await points({ strength_shortest: 30 })).filter((text) => text.startsWith('strength-too'))).toEqual([
      at('strength-too-small stops from', 100),
    ]);
  });

  test('along the phases are those of the splits', async () => {
    const { points } = sweepWeek(await plannerWith(), { input: 'season_phase', quantities: [] });
    const found = points
      .filter(({ id }) => id.startsWith('split_'))
      .map(({ id, at, starts }) => [id, phaseIds[at], starts]);
    expect(found).toEqual([
      ['split_off_season', 'base', false],
      ['split_taper', 'taper', true],
      ['split_taper', 'recovery', false],
      ['split_recovery', 'recovery', true],
    ]);
  });
});

describe('workWeekBackwards(planner, input, goal)', () => {
  test('finds two sessions of 45 at five hours', async () => {
    const value = wantedAmount('2 × 45') ?? NaN;
    expect(value).toBe(90);
    const planner = await plannerWith();
    expect(workWeekBackwards(planner, 'weekly_hours', { quantity: 'strength_minutes', value })).toEqual({
      solutions: [single(5)],
      nearest: null,
      failsSomewhere: false,
    });
  });

  test('counts what is put over the sheet', async () => {
    const planner = await plannerWith({ in_season_strength_share: 0.36 });
    const { solutions } = workWeekBackwards(planner, 'weekly_hours', { quantity: 'strength_minutes', value: 90 });
    // 0.36 of 250 minutes.
    expect(solutions.map(({ from }) => from.toFixed(9))).toEqual([(250 / 60).toFixed(9)]);
    const other = workWeekBackwards(planner, 'weekly_hours', { quantity: 'slow_minutes', value: 90 });
    // The others keep their proportions: slow has 0.3 × 0.64 / 0.7.
    expect(other.solutions[0]?.from).toBeCloseTo((90 * 0.7) / (0.3 * 0.64 * 60), 9);
  });

  test('says why it comes no nearer: a rule, the end, nothing to do with it', async () => {
    const ask = (planner: Planner, quantity: string, value: number) =>
      workWeekBackwards(planner, 'weekly_hours', { quantity, value }).nearest;
    const planner = await plannerWith();
    expect(ask(planner, 'strength_minutes', 150)).toMatchObject({
      value: 120,
      isReached: true,
      because: { kind: 'extremum', switches: ['strength-cap'] },
    });
    expect(ask(planner, 'weekly_minutes', 2000)).toMatchObject({
      at: 20,
      value: 1200,
      because: { kind: 'end', end: 'most' },
    });
    expect(ask(await plannerWith({ strength_minutes: 60 }), 'strength_minutes', 90)).toMatchObject({
      value: 60,
      because: { kind: 'constant' },
    });
  });

  test('says where the week fails', async () => {
    const planner = await plannerWith({ strength_minutes: 60 });
    const { solutions, failsSomewhere } = workWeekBackwards(planner, 'weekly_hours', {
      quantity: 'cross_minutes',
      value: 45,
    });
    expect(failsSomewhere).toBe(true);
    // Cross-training has 0.15 / 0.7 of what 60 minutes of strength leave: 45 of 210.
    expect(solutions.map(({ from }) => from.toFixed(9))).toEqual([(270 / 60).toFixed(9)]);
  });

  test('leaves the week as it is', async () => {
    const planner = await plannerWith();
    const before = [...planner.column.registers];
    workWeekBackwards(planner, 'weekly_hours', { quantity: 'strength_minutes', value: 100 });
    sweepWeek(planner, { input: 'season_phase', quantities: ['slow_minutes'] });
    influenceOnWeek(planner, 'slow_minutes');
    expect([...planner.column.registers]).toEqual(before);
  });
});

describe('influenceOnWeek(planner, quantity)', () => {
  test('is what one step of each input does, by planning it', async () => {
    await fc.assert(
      fc.asyncProperty(
        anyAthletes,
        fc.constantFrom('strength_minutes', 'slow_minutes', 'running_share'),
        async (athlete, quantity) => {
          const inputs = {
            ...athlete,
            hours: Math.round(athlete.hours * 4) / 4,
            strengthCap: 5 * Math.round(athlete.strengthCap / 5),
          };
          const found = influenceOnWeek(await plannerWith({}, { inputs }), quantity);
          const value = (changed: object): number | null => {
            const outcome = builtInPlanner().plan({ ...inputs, ...changed });
            return outcome.ok ? (outcome.value.derivations[quantity]?.value ?? null) : null;
          };
          const now = value({}) ?? NaN;
          const effect = (changed: object): number | null => {
            const then = value(changed);
            return then === null ? null : then - now;
          };
          const expected: Readonly<Record<string, readonly [number | null, number | null]>> = {
            weekly_hours: [effect({ hours: inputs.hours - 0.25 }), effect({ hours: inputs.hours + 0.25 })],
            strength_cap: [
              effect({ strengthCap: inputs.strengthCap - 5 }),
              effect({ strengthCap: inputs.strengthCap + 5 }),
            ],
          };
          for (const [id, [down, up]] of Object.entries(expected)) {
            const own = found.find(({ input }) => input === id);
            expect([own?.down, own?.up].map(plainly)).toEqual([down, up].map(plainly));
          }
          const sizes = found.map(({ down, up }) => Math.max(Math.abs(down ?? 0), Math.abs(up ?? 0)));
          expect(sizes).toEqual([...sizes].sort((one, other) => other - one));
          expect(found.map(({ input }) => input).sort()).toEqual(
            builtInPlanner()
              .sheet.model.inputs.map(({ id }) => id)
              .sort(),
          );
        },
      ),
      runs(30, 3000),
    );
  });

  test('of strength at four hours in build, by hand', async () => {
    const found = influenceOnWeek(await plannerWith(), 'strength_minutes');
    // A quarter of an hour is 4.5 minutes at 30 %; from build to base or peak nothing changes, nor for another event.
    expect(found[0]).toEqual({ input: 'athlete_level', down: 24, up: 0 });
    expect(found[1]).toEqual({ input: 'weekly_hours', down: -4.5, up: 4.5 });
    expect(found.find(({ input }) => input === 'season_phase')).toEqual({ input: 'season_phase', down: 0, up: 0 });
    expect(found.find(({ input }) => input === 'strength_cap')).toEqual({ input: 'strength_cap', down: 0, up: null });
  });

  test('of what is held by hand is nothing', async () => {
    const found = influenceOnWeek(await plannerWith({ strength_minutes: 60 }), 'strength_minutes');
    expect(found.every(({ down, up }) => (down ?? 0) === 0 && (up ?? 0) === 0)).toBe(true);
  });
});
