import { describe, expect, test } from 'vitest';
import type { Facts } from '../../../../src/training/checks/facts.js';
import { judge, levelOf, type CheckEdges, type CheckedRunner } from '../../../../src/training/checks/judge.js';
import { measured, measures } from '../../../../src/training/checks/measures.js';
import {
  measureIds,
  type CheckLimits,
  type CheckRule,
  type MeasureId,
} from '../../../../src/training/method/check-rules.js';

const none: CheckEdges = { least: null, most: null, below: null, above: null };
const runner: CheckedRunner = { level: 'developing', phase: 'base', age: null };
const limits = (more: Partial<CheckLimits>): CheckLimits => ({
  ...{ in_line: { most: 0.2 }, not_said: 'nothing', status: 'assumption', reason: 'a reason' },
  ...more,
});
const rule = (more: Partial<CheckRule>): CheckRule => ({
  ...{ id: 'a', group: 'health', measure: 'rest_days', name: 'a', says: 'a', change: 'a', limits: [limits({})] },
  ...more,
});

describe('levelOf(value, edges)', () => {
  const all: CheckEdges = { below: 1, least: 2, most: 4, above: 6 };

  test.each([
    [0.99, 'caution'],
    [1, 'look'],
    [1.01, 'look'],
    [1.99, 'look'],
    [2, 'in-line'],
    [2.01, 'in-line'],
    [3.99, 'in-line'],
    [4, 'in-line'],
    [4.01, 'look'],
    [5.99, 'look'],
    [6, 'look'],
    [6.01, 'caution'],
  ])('of %d with a caution below 1 and above 6, in line from 2 to 4, is %s', (value, level) => {
    expect(levelOf(value, all)).toBe(level);
  });

  test.each([
    [{ least: 2 }, 'look', 'in-line', 'in-line'],
    [{ most: 2 }, 'in-line', 'in-line', 'look'],
    [{ below: 2 }, 'caution', 'in-line', 'in-line'],
    [{ above: 2 }, 'in-line', 'in-line', 'caution'],
    // A caution that begins where being in line ends leaves no look between.
    [{ least: 2, below: 2 }, 'caution', 'in-line', 'in-line'],
    [{ most: 2, above: 2 }, 'in-line', 'in-line', 'caution'],
    [{ least: 2, most: 2 }, 'look', 'in-line', 'look'],
    [{}, 'in-line', 'in-line', 'in-line'],
  ])('with %j alone is told at 1.9, 2 and 2.1', (edges, ...levels) => {
    expect([1.9, 2, 2.1].map((value) => levelOf(value, { ...none, ...edges }))).toEqual(levels);
  });

  test.each([
    [0.1 * 3, { most: 0.3 }],
    [0.3, { least: 0.1 * 3 }],
    [1.1 - 1, { most: 0.1, above: 0.1 }],
    [66 / 60 - 1, { most: 0.1, above: 0.1 }],
    [1.28 - 1, { most: 0.28, above: 0.28 }],
    [4.8 / 4 - 1, { most: 0.2, above: 0.2 }],
    [0.7 + 0.1, { least: 0.8, below: 0.8 }],
    [150 - 1e-11, { least: 150, below: 150 }],
  ])('of %d with %j is not turned by noise', (value, edges) => {
    expect(levelOf(value, { ...none, ...edges })).toBe('in-line');
  });

  test('of a value a millionth off is turned', () => {
    expect(levelOf(0.300001, { ...none, most: 0.3 })).toBe('look');
    expect(levelOf(0.299999, { ...none, least: 0.3 })).toBe('look');
    expect(levelOf(0.300001, { ...none, most: 0.2, above: 0.3 })).toBe('caution');
  });
});

describe('whom limits are for', () => {
  const own = limits({ in_line: { least: 1 } });
  const isMade = (scope: Partial<CheckLimits>, whose: Partial<CheckedRunner> = {}, facts: Facts = {}): boolean =>
    judge(rule({ limits: [{ ...own, ...scope }] }), { rest_days: 1, ...facts }, { ...runner, ...whose }) !== null;

  test.each([
    [{}, {}, true],
    [{ levels: ['new'] }, { level: 'new' }, true],
    [{ levels: ['new'] }, { level: 'elite' }, false],
    [{ levels: ['new', 'elite'] }, { level: 'elite' }, true],
    [{ phases: ['taper'] }, { phase: 'taper' }, true],
    [{ phases: ['taper'] }, { phase: 'base' }, false],
    [{ levels: ['new'], phases: ['taper'] }, { level: 'new', phase: 'base' }, false],
    [{ ages: { least: 65 } }, { age: 64 }, false],
    [{ ages: { least: 65 } }, { age: 65 }, true],
    [{ ages: { most: 17 } }, { age: 17 }, true],
    [{ ages: { most: 17 } }, { age: 18 }, false],
    [{ ages: { least: 18, most: 20 } }, { age: 17 }, false],
    [{ ages: { least: 18, most: 20 } }, { age: 18 }, true],
    [{ ages: { least: 18, most: 20 } }, { age: 20 }, true],
    [{ ages: { least: 18, most: 20 } }, { age: 21 }, false],
    // Who does not tell an age is in no age group, not even in one that has no ends.
    [{ ages: { most: 17 } }, { age: null }, false],
    [{ ages: {} }, { age: null }, false],
    [{ ages: {} }, { age: 40 }, true],
  ] satisfies readonly (readonly [Partial<CheckLimits>, Partial<CheckedRunner>, boolean])[])(
    '%j fits %j: %s',
    (scope, whose, fits) => {
      expect(isMade(scope, whose)).toBe(fits);
    },
  );

  test.each([
    [5.99, false],
    [6, false],
    [2 * 3 + 1e-14, false],
    [6.01, true],
    [20, true],
  ])('limits above 6 hours fit %d hours: %s', (hours, fits) => {
    expect(isMade({ hours_above: 6 }, {}, { weekly_hours: hours })).toBe(fits);
  });

  test('limits above some hours do not fit where hours are not known', () => {
    expect(isMade({ hours_above: 6 })).toBe(false);
    expect(isMade({ hours_above: 0 }, {}, { weekly_hours: null })).toBe(false);
  });

  test('the first that fit are used', () => {
    const [young, all] = [limits({ ages: { most: 17 }, in_line: { least: 2 } }), limits({ in_line: { least: 1 } })];
    const check = rule({ limits: [young, all] });
    expect(judge(check, { rest_days: 1 }, { ...runner, age: 17 })).toMatchObject({ limits: young, level: 'look' });
    expect(judge(check, { rest_days: 1 }, { ...runner, age: 18 })).toMatchObject({ limits: all, level: 'in-line' });
    expect(judge(check, { rest_days: 1 }, runner)).toMatchObject({ limits: all, level: 'in-line' });
  });
});

describe('judge(rule, facts, runner)', () => {
  test('says which fact is missing first, and nothing more', () => {
    const check = rule({ measure: 'longest_run_rise' });
    const unknown = { value: null, level: null, amount: null };
    expect(judge(check, {}, runner)).toMatchObject({ ...unknown, missing: 'longest_run' });
    expect(judge(check, { longest_run: 60, longest_run_before: null }, runner)).toMatchObject({
      ...unknown,
      missing: 'longest_run_before',
    });
  });

  test('has no level where there is nothing to measure, though nothing is missing', () => {
    const check = rule({ measure: 'longest_run_rise' });
    const facts = { longest_run: 60, longest_run_before: 0 };
    expect(judge(check, facts, runner)).toMatchObject({ value: null, level: null, amount: null, missing: null });
  });

  test('tells the amount in what the value is a share of', () => {
    const check = rule({ measure: 'longest_run_rise', limits: [limits({ in_line: { most: 0.1 } })] });
    expect(judge(check, { longest_run: 80, longest_run_before: 60 }, runner)).toMatchObject({ amount: 14 });
    const hard = rule({ measure: 'hard_minutes_share', limits: [limits({ in_line: { least: 0.5, most: 0.6 } })] });
    const facts = { intervals_minutes: 0, running_minutes: 200, hard_sessions: 1, running_sessions: 3 };
    expect(judge(hard, { ...facts, tempo_minutes: 150 }, runner)).toMatchObject({ amount: 30, level: 'look' });
    expect(judge(hard, { ...facts, tempo_minutes: 70 }, runner)).toMatchObject({ amount: 30, level: 'look' });
    expect(judge(hard, { ...facts, tempo_minutes: 110 }, runner)).toMatchObject({ amount: 0, level: 'in-line' });
  });

  test('takes an edge that is an input of the method from the facts', () => {
    const check = rule({ measure: 'strength_minutes', limits: [limits({ in_line: { most: 'strength_cap' } })] });
    const edges = { ...none, most: 95 };
    const at = (minutes: number) => judge(check, { strength_minutes: minutes, strength_cap: 95 }, runner);
    expect(at(95)).toMatchObject({ edges, level: 'in-line', amount: 0 });
    expect(at(100)).toMatchObject({ edges, level: 'look', amount: 5 });
    expect(judge(check, { strength_minutes: 500 }, runner)).toMatchObject({ edges: none, level: 'in-line' });
  });

  test('gives a value without noise', () => {
    const check = rule({ measure: 'hours_rise' });
    expect(judge(check, { weekly_hours: 4.4, hours_before: 4 }, runner)?.value).toBe(0.1);
  });
});

/** What each measure is counted in, and what would have to change. */
const units: Readonly<Record<MeasureId, readonly [unit: string, changes: string]>> = {
  activity_minutes: ['minutes', 'minutes'],
  hard_minutes_share: ['share', 'minutes'],
  hard_sessions_share: ['share', 'sessions'],
  hard_gap: ['days', 'days'],
  hours_rise: ['share', 'hours'],
  load_rise: ['share', 'load'],
  longest_run_rise: ['share', 'minutes'],
  monotony_rise: ['share', 'times'],
  rest_days: ['days', 'days'],
  season_rise: ['share', 'share'],
  season_run_rise: ['share', 'share'],
  strain_rise: ['share', 'strain'],
  strength_gap: ['days', 'days'],
  strength_minutes: ['minutes', 'minutes'],
  strength_sessions: ['sessions', 'sessions'],
  weekly_hours: ['hours', 'hours'],
};

describe('every measure', () => {
  test.each(measureIds)('%s is counted in its unit, and what would change it in its own', (id) => {
    const { unit, changes } = measures[id];
    expect([unit, changes ?? unit]).toEqual(units[id]);
  });

  test.each(Object.entries(measures))('%s names what it lacks, one after the other', (_, measure) => {
    let facts: Facts = {};
    for (const id of measure.reads) {
      expect(measured(measure, facts)).toEqual({ value: null, missing: id });
      facts = { ...facts, [id]: 1 };
    }
    expect(measured(measure, facts).missing).toBeNull();
    expect(Number.isFinite(measured(measure, facts).value)).toBe(true);
  });

  test.each(Object.entries(measures))('%s has no value without bound where everything is nothing', (_, measure) => {
    const nothing = Object.fromEntries(measure.reads.map((id) => [id, 0]));
    const { value } = measured(measure, nothing);
    expect(value === null || value === 0).toBe(true);
  });
});
