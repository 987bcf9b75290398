import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import club from '../../../../demo/club-method.json';
import { builtInPlanner } from '../../../../src/plan.js';
import {
  copyScenario,
  newSheet,
  scenarioOf,
  setFormula,
  setInputs,
  setOverride,
  setRow,
  switchRule,
} from '../../../../src/plan/scenarios/change.js';
import type { ScenarioSheet } from '../../../../src/plan/scenarios/document.js';
import { ScenarioPlanner, type PlannedScenario } from '../../../../src/plan/scenarios/scenario-planner.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { readMethod } from '../../../../src/training/method/read-method.js';
import { anyAthletes } from '../../../reference/athletes.js';
import { patience, runs } from '../../../reference/runs.js';
import { valueOf } from '../../training/method/documents.js';
import { acts, scenarioActs } from './random-acts.js';
import { fourHours, frozen, learned, outcomeOf, planOf, plannedAfresh, sheetWith } from './sheets.js';

const plain = newSheet(builtInMethod, fourHours);
const row = { id: 'own_a', name: 'A row', formula: 'slow_minutes * 2' };
const threeColumns = frozen(copyScenario(copyScenario(setRow(plain, row), 'a'), 'b'));
const written = (planned: readonly PlannedScenario[]): readonly string[] =>
  planned.map(({ scenario, outcome }) => `${scenario.id} ${JSON.stringify(outcome)}`);

describe('plan(sheet)', { timeout: patience }, () => {
  test('gives a scenario without anything of a person the plan of the built-in planner', async () => {
    const planner = await learned(plain);
    fc.assert(
      fc.property(anyAthletes, (inputs) => {
        const [planned] = planner.plan(setInputs(plain, 'a', inputs));
        expect(planned?.outcome).toEqual(builtInPlanner().plan(inputs));
      }),
      runs(40, 5000),
    );
  });

  test('lifting gives the very same plan as before', async () => {
    const planner = await learned(plain);
    const quantities = Object.keys((await planOf(plain)).derivations);
    const before = planner.plan(plain)[0]?.outcome;
    expect(quantities.length).toBeGreaterThan(60);
    for (const quantity of quantities) {
      const over = setOverride(plain, 'a', { quantity, formula: '7' });
      await learned(over, planner);
      expect(planner.plan(over)[0]?.outcome).not.toEqual(before);
      expect(planner.plan(setOverride(over, 'a', { quantity, formula: null }))[0]?.outcome).toEqual(before);
    }
  });

  test('acts on one scenario leave the others as they are', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(scenarioActs, { minLength: 1, maxLength: 6 }), async (some) => {
        const planner = await learned(threeColumns);
        const before = planner.plan(threeColumns);
        const asWritten = written(before);
        let sheet: ScenarioSheet = threeColumns;
        for (const act of some) {
          sheet = frozen(act(sheet, 'b'));
          await learned(sheet, planner);
          const now = planner.plan(sheet);
          for (const id of ['a', 'c']) {
            const [was, is] = [before, now].map((planned) => planned.find(({ scenario }) => scenario.id === id));
            expect(is).toBe(was);
          }
        }
        expect(written(planner.plan(sheet)).filter((text) => !text.startsWith('b'))).toEqual(
          asWritten.filter((text) => !text.startsWith('b')),
        );
        expect(written(planner.plan(threeColumns))).toEqual(asWritten);
      }),
      runs(40, 5000),
    );
  });

  test('after any acts a new planner gives the same plans', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(acts, { minLength: 1, maxLength: 12 }), async (some) => {
        const planner = new ScenarioPlanner();
        let sheet: ScenarioSheet = plain;
        for (const act of some) {
          sheet = frozen(act(sheet));
          if (!planner.knows(sheet)) await learned(sheet, planner);
          planner.plan(sheet);
        }
        expect(written(planner.plan(sheet))).toEqual(written(await plannedAfresh(sheet)));
      }),
      runs(40, 5000),
    );
  });

  test('gives a scenario that did not change the very same plan', async () => {
    const planner = await learned(threeColumns);
    const [a, b] = planner.plan(threeColumns);
    const [again, other] = planner.plan(setInputs(threeColumns, 'b', { hours: 5 }));
    expect(again).toBe(a);
    expect(other).not.toBe(b);
    expect(other?.planner).toBe(b?.planner);
  });

  test('gives scenarios of one shape one program', async () => {
    const planner = await learned(threeColumns);
    const [a, b] = planner.plan(threeColumns);
    expect(a?.planner).not.toBe(b?.planner);
    expect(a?.planner.sheet.program).toBe(b?.planner.sheet.program);
  });

  test('works out what is edited for all in every scenario', async () => {
    const sheet = setFormula(threeColumns, 'weekly_minutes', 'weekly_hours * 75');
    const planned = await plannedAfresh(sheet);
    expect(planned.map(({ outcome }) => valueOf(outcome).total.exact)).toEqual([300, 300, 300]);
  });

  test('counts what was switched off here and in all', async () => {
    const inputs = { hours: 8 } as const;
    const eight = copyScenario(newSheet(builtInMethod, { ...fourHours, ...inputs }), 'a');
    const minutes = async (sheet: ScenarioSheet) =>
      (await plannedAfresh(sheet)).map(({ outcome }) => valueOf(outcome).minutes.strength);
    // 30 % of 480 minutes, capped at 120.
    expect(await minutes(eight)).toEqual([120, 120]);
    expect(await minutes(switchRule(eight, 'b', 'strength-cap'))).toEqual([120, 144]);
    expect(await minutes(switchRule(eight, null, 'strength-cap'))).toEqual([144, 144]);
  });

  test('has a value over a row wait while the row is away', async () => {
    const over = setOverride(setRow(plain, row), 'a', { quantity: 'own_a', formula: '5' });
    expect((await planOf(over)).derivations['own_a']?.value).toBe(5);
    expect((await planOf({ ...over, rows: [] })).derivations['own_a']).toBeUndefined();
  });
});

describe('learn(sheet) and knows(sheet)', () => {
  test('refuse a formula with its reason', async () => {
    const planner = new ScenarioPlanner();
    const sheet = sheetWith({ slow_minutes: '2 +' });
    const errors = await planner.learn(sheet);
    expect([...errors.keys()]).toEqual(['2 +']);
    expect(planner.knows(sheet)).toBe(false);
    expect(() => planner.plan(sheet)).toThrow('formula not compiled: 2 +');
  });

  test('know what was learned, and numbers only once they are', async () => {
    const planner = new ScenarioPlanner();
    expect(planner.knows(plain)).toBe(false);
    await planner.learn(plain);
    expect(planner.knows(plain)).toBe(true);
    const over = setOverride(plain, 'a', { quantity: 'slow_minutes', formula: '60' });
    expect(planner.knows(over)).toBe(false);
    await planner.learn(over);
    expect(planner.knows(over)).toBe(true);
  });

  test('learn a notice of a coach that is switched off, too: switching it on needs no learning', async () => {
    const said = { kind: 'notice', level: 'note', id: 'odd', name: 'Odd', when: 'weekly_hours * 3 > 10', says: 'Odd.' };
    const document = { ...club, rules: [...club.rules, { ...said, reason: 'None.', status: 'assumption' }] };
    const method = valueOf(readMethod(document));
    const off = switchRule(newSheet(method, fourHours), null, 'odd');
    const planner = await learned(off);
    const on = switchRule(off, null, 'odd');
    expect(planner.knows(on)).toBe(true);
    const [planned] = planner.plan(on);
    expect(planned && valueOf(planned.outcome).notices).toContainEqual(expect.objectContaining({ rule: 'odd' }));
  });
});

describe('an input with something put over it', () => {
  test.each<[quantity: string, formula: string, problem: object]>([
    ['weekly_hours', '30', { path: 'hours', value: 30, code: 'out-of-range', allowed: { least: 0.5, most: 20 } }],
    ['strength_cap', 'value / 2', { path: 'strengthCap', value: 60, code: 'out-of-range' }],
    ['season_phase', '2.5', { path: 'phase', value: 2.5, code: 'not-one-of' }],
    ['athlete_level', '-1', { path: 'level', value: -1, code: 'not-one-of' }],
    ['target_event', '6', { path: 'event', value: 6, code: 'not-one-of' }],
    [
      'weekly_hours',
      '1 / 0',
      { path: 'weekly_hours', value: null, code: 'no-value', allowed: { cause: { code: 'division-by-zero' } } },
    ],
    [
      'weekly_hours',
      'weekly_minutes / 60',
      {
        code: 'no-value',
        allowed: { cause: { code: 'circle', path: ['weekly_hours', 'weekly_minutes', 'weekly_hours'] } },
      },
    ],
  ])('%s: %s is refused', async (quantity, formula, problem) => {
    expect(await outcomeOf(sheetWith({ [quantity]: formula }))).toMatchObject({ ok: false, problems: [problem] });
  });

  test('is planned as if it were set, and says so', async () => {
    const over = await planOf(sheetWith({ weekly_hours: 'value + 1', season_phase: 'phase_taper' }));
    const set = await planOf(sheetWith({}, { inputs: { hours: 5, phase: 'taper' } }));
    expect([over.inputs, over.minutes, over.rounded, over.split]).toEqual([
      set.inputs,
      set.minutes,
      set.rounded,
      set.split,
    ]);
    expect(over.notices.filter(({ code }) => code === 'by-hand')).toEqual([
      { code: 'by-hand', level: 'note', quantity: 'weekly_hours', values: { before: 4, after: 5, givers: 0 } },
      { code: 'by-hand', level: 'note', quantity: 'season_phase', values: { before: 2, after: 4, givers: 0 } },
    ]);
  });
});

describe('what is put over minutes and shares', () => {
  test('lets the others give way, and says how many do', async () => {
    const { minutes, notices, derivations } = await planOf(sheetWith({ strength_minutes: 100 }));
    // Each other × (240 - 100) / 168.
    expect(minutes).toEqual({ slow: 60, tempo: 30, intervals: 20, cross: 30, strength: 100 });
    expect(notices).toContainEqual({
      code: 'by-hand',
      level: 'note',
      quantity: 'strength_minutes',
      values: { before: 72, after: 100, givers: 4 },
    });
    expect(derivations['slow_minutes']?.byHand).toMatchObject({
      kind: 'gives-way',
      before: 72,
      to: ['strength_minutes'],
    });
  });

  test('stays where the method lets some give way and they have enough', async () => {
    const method = { ...builtInMethod, gives_way: ['slow', 'cross'] } as const;
    const { minutes, split } = await planOf(sheetWith({ strength_minutes: 100, tempo_share: 0.3 }, { method }));
    // Shares: tempo + 0.15 from slow and cross in 30 to 15; then minutes: strength + 28 from slow 48 and cross 24.
    expect(split.shares).toEqual({ slow: 0.2, tempo: 0.3, intervals: 0.1, cross: 0.1, strength: 0.3 });
    expect(minutes.slow).toBeCloseTo(48 - (28 * 2) / 3, 9);
    expect(minutes.cross).toBeCloseTo(24 - 28 / 3, 9);
    expect([minutes.tempo, minutes.intervals, minutes.strength]).toEqual([72, 24, 100]);
  });

  test('in a split makes room in that split', async () => {
    const { split } = await planOf(sheetWith({ in_season_slow_share: 0.65 }));
    expect(split.shares.slow).toBe(0.65);
    expect(split.shares.strength).toBeCloseTo(0.15, 12);
    const taper = await planOf(sheetWith({ in_season_slow_share: 0.65 }, { inputs: { phase: 'taper' } }));
    expect(taper.split.shares.slow).toBe(0.45);
  });

  test('is refused where there is nothing left, with the amount', async () => {
    const cause = { code: 'nothing-left', over: 60 };
    const outcome = await outcomeOf(sheetWith({ strength_minutes: 300 }));
    expect(outcome).toEqual({
      ok: false,
      problems: ['slow', 'tempo', 'intervals', 'cross'].map((id) => ({
        path: `${id}_minutes`,
        value: null,
        code: 'no-value',
        allowed: { cause },
      })),
    });
  });
});

describe('what is put over whole minutes', () => {
  test.each<[what: string, over: Readonly<Record<string, number>>, rounded: readonly number[], total: number]>([
    ['lets the others share the rest in whole steps', { slow_rounded: 100 }, [100, 30, 20, 30, 60], 240],
    ['is kept as it is', { slow_rounded: 70 }, [70, 35, 25, 35, 75], 240],
    ['takes everything', { slow_rounded: 240 }, [240, 0, 0, 0, 0], 240],
    ['is the total, and all share it', { total_rounded: 300 }, [90, 45, 30, 45, 90], 300],
    ['is the total and one part', { total_rounded: 300, slow_rounded: 90 }, [90, 45, 30, 45, 90], 300],
    [
      'is just that where all are held',
      { slow_rounded: 60, tempo_rounded: 60, intervals_rounded: 60, cross_rounded: 60, strength_rounded: 60 },
      [60, 60, 60, 60, 60],
      300,
    ],
  ])('%s', async (_, over, rounded, total) => {
    const plan = await planOf(sheetWith(over));
    expect(Object.values(plan.rounded)).toEqual(rounded);
    expect(plan.total).toEqual({ exact: 240, rounded: total });
    for (const [id, minutes] of Object.entries(plan.rounded)) {
      const sums = plan.options[id as keyof typeof plan.options].map((option) =>
        option.reduce((sum, each) => sum + each, 0),
      );
      for (const sum of sums) expect(Math.abs(sum - minutes)).toBeLessThanOrEqual(Math.max(10, minutes / 10));
    }
  });

  test('goes to those without minutes, evenly, where nobody else is left', async () => {
    const held = { slow_rounded: 40, tempo_rounded: 20, cross_rounded: 20, strength_rounded: 40 };
    const { rounded, total } = await planOf(sheetWith(held, { inputs: { phase: 'off-season' } }));
    expect([rounded.intervals, total.rounded]).toEqual([120, 240]);
  });

  test.each<[over: Readonly<Record<string, string | number>>, problem: object]>([
    [
      { slow_rounded: -10 },
      { path: 'slow_rounded', value: -10, code: 'out-of-range', allowed: { least: 0, most: 10080 } },
    ],
    [{ total_rounded: '1000000000000' }, { path: 'slow_rounded', code: 'out-of-range' }],
    [
      { slow_rounded: '1 / 0' },
      { path: 'slow_rounded', code: 'no-value', allowed: { cause: { code: 'division-by-zero' } } },
    ],
    [
      { slow_rounded: 245 },
      {
        path: 'tempo_rounded',
        code: 'no-value',
        allowed: { cause: { code: 'not-a-number', operation: 'sainte-lague' } },
      },
    ],
  ])('%o is refused', async (over, problem) => {
    const outcome = await outcomeOf(sheetWith(over));
    expect(outcome.ok ? [] : outcome.problems[0]).toMatchObject(problem);
  });

  test('does not hide that there are no minutes', async () => {
    const outcome = await outcomeOf(sheetWith({ strength_minutes: 300, slow_rounded: 60 }));
    expect(outcome.ok ? [] : outcome.problems.map(({ path }) => path)).toEqual([
      'slow_minutes',
      'tempo_minutes',
      'intervals_minutes',
      'cross_minutes',
    ]);
  });
});

describe('what is put over the limits of sessions', () => {
  test('is what sessions are made by', async () => {
    const { options } = await planOf(sheetWith({ strength_longest: 25, strength_typical: 25 }));
    expect(options.strength[0]).toEqual([25, 25, 25]);
    expect(options.strength.flat().every((minutes) => minutes <= 25)).toBe(true);
  });

  test.each<[over: Readonly<Record<string, string | number>>, problem: object]>([
    [
      { slow_shortest: 0 },
      { path: 'slow_shortest', value: 0, code: 'out-of-range', allowed: { least: 1, most: 1440 } },
    ],
    [{ slow_typical: 0 }, { path: 'slow_typical', value: 0, code: 'out-of-range' }],
    [{ slow_longest: 5000 }, { path: 'slow_longest', value: 5000, code: 'out-of-range' }],
    [{ slow_shortest: 22 }, { path: 'slow_shortest', value: 22, code: 'not-a-step', allowed: { step: 5 } }],
    [
      { slow_longest: 30 },
      {
        path: 'slow_longest',
        value: 30,
        code: 'wrong-order',
        allowed: { before: 'slow_typical', after: 'slow_longest' },
      },
    ],
    [{ slow_typical: '1 / 0' }, { path: 'slow_typical', code: 'no-value' }],
  ])('%o is refused', async (over, problem) => {
    expect(await outcomeOf(sheetWith(over))).toMatchObject({ ok: false, problems: [problem] });
  });
});

describe('tryOut(sheet, typed)', () => {
  const over = async (quantity: string, formula: string) => {
    const sheet = sheetWith({ [quantity]: formula });
    return (await learned(plain)).tryOut(sheet, { scenario: 'a', quantity, formula });
  };
  const forAll = async (quantity: string, formula: string) =>
    (await learned(plain)).tryOut(setFormula(plain, quantity, formula), { scenario: 'a', quantity, formula });

  test.each<[quantity: string, formula: string, value: number]>([
    ['strength_minutes', '90', 90],
    ['strength_minutes', ' -5 ', -5],
    ['strength_minutes', 'value * 1.25', 90],
    ['strength_share', 'value + 0.05', 0.35],
    ['weekly_hours', '4.5', 4.5],
    ['season_phase', 'phase_peak', 3],
    ['slow_shortest', '25', 25],
    ['slow_rounded', 'value + 5', 75],
  ])('over %s: %s is %d', async (quantity, formula, value) => {
    const trial = await over(quantity, formula);
    expect(trial).toMatchObject({ ok: true });
    expect(trial.ok ? trial.value : NaN).toBeCloseTo(value, 12);
  });

  test.each<[quantity: string, formula: string, error: object]>([
    ['slow_minutes', '', { code: 'empty', position: 0 }],
    ['slow_minutes', '2 +', { code: 'syntax' }],
    ['slow_minutes', '4,5', { code: 'syntax' }],
    ['slow_minutes', 'value * speed', { code: 'unknown-name', position: 8, found: 'speed' }],
    ['slow_minutes', 'other', { code: 'unknown-name', position: 0, found: 'other' }],
    ['slow_minutes', 'random(3)', { code: 'unknown-function', found: 'random' }],
    ['slow_minutes', 'sqrt(1, 2)', { code: 'wrong-arguments' }],
  ])('over %s: "%s" is refused', async (quantity, formula, error) => {
    expect(await over(quantity, formula)).toMatchObject({ ok: false, error });
  });

  test.each<[quantity: string, formula: string, failure: object]>([
    ['slow_minutes', 'slow_minutes + 1', { code: 'circle', path: ['slow_minutes', 'slow_minutes'] }],
    ['weekly_hours', 'slow_minutes', { code: 'circle' }],
    ['slow_minutes', '1 / (weekly_hours - 4)', { code: 'division-by-zero' }],
    ['slow_minutes', 'sqrt(0 - weekly_hours)', { code: 'not-a-number', operation: 'sqrt' }],
  ])('over %s: "%s" fails', async (quantity, formula, failure) => {
    expect(await over(quantity, formula)).toMatchObject({ ok: false, failure });
  });

  test('for all has no `value`, and its circle is told', async () => {
    expect(await forAll('weekly_minutes', 'weekly_hours * 50')).toEqual({ ok: true, value: 200 });
    expect(await forAll('weekly_minutes', 'value + 1')).toMatchObject({
      ok: false,
      error: { code: 'unknown-name', found: 'value', position: 0 },
    });
    expect(await forAll('weekly_minutes', 'planned_minutes')).toMatchObject({ ok: false, failure: { code: 'circle' } });
  });

  test('is of the scenario asked for, and changes no plan', async () => {
    const sheet = setInputs(threeColumns, 'b', { hours: 8 });
    const planner = await learned(sheet);
    const before = planner.plan(sheet);
    const formula = 'weekly_hours * 10';
    const trials = ['a', 'b'].map((scenario) =>
      planner.tryOut(setRow(sheet, { ...row, formula }), { scenario, quantity: 'own_a', formula }),
    );
    expect(await Promise.all(trials)).toEqual([
      { ok: true, value: 40 },
      { ok: true, value: 80 },
    ]);
    expect(planner.plan(sheet)).toEqual(before);
    expect(scenarioOf(sheet, 'b').overrides).toEqual({});
  });
});
