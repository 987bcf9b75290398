import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  builtInPlanner,
  type Plan,
  type PlanDerivation,
  type PlanInputs,
  type RuleOutcome,
} from '../../../src/plan.js';
import { categoryIds, type CategoryId } from '../../../src/training/method/ids.js';
import { anyAthletes } from '../../reference/athletes.js';
import { runs } from '../../reference/runs.js';
import { valueOf } from '../training/method/documents.js';

/** The fields of a type, as a list that the compiler holds against the type: a missing one does not compile. */
const fieldsOf = <T>(fields: Readonly<Record<keyof T, true>>): string[] => Object.keys(fields);
const categories = fieldsOf<Record<CategoryId, unknown>>({
  slow: true,
  tempo: true,
  intervals: true,
  cross: true,
  strength: true,
});

const planFields = fieldsOf<Plan>({
  format: true,
  version: true,
  method: true,
  inputs: true,
  split: true,
  minutes: true,
  rounded: true,
  total: true,
  options: true,
  sessions: true,
  rules: true,
  notices: true,
  derivations: true,
  week: true,
  season: true,
  running: true,
  strength: true,
  load: true,
  checks: true,
});
const inputFields = fieldsOf<PlanInputs>({ hours: true, phase: true, level: true, event: true, strengthCap: true });
const derivationFields = fieldsOf<PlanDerivation>({
  quantity: true,
  kind: true,
  value: true,
  formula: true,
  readings: true,
  rules: true,
  byHand: true,
  error: true,
  status: true,
  sources: true,
  reason: true,
});
const ruleFields = fieldsOf<RuleOutcome>({
  id: true,
  kind: true,
  enabled: true,
  acted: true,
  on: true,
  to: true,
  before: true,
  after: true,
  status: true,
});

const planner = builtInPlanner();
const sorted = (object: object): string[] => Object.keys(object).sort();

describe('a plan has exactly the fields of its type', () => {
  test('for any request', () => {
    fc.assert(
      fc.property(anyAthletes, (athlete) => {
        const plan = valueOf(planner.plan(athlete));
        expect(sorted(plan)).toEqual([...planFields].sort());
        expect(sorted(plan.inputs)).toEqual([...inputFields].sort());
        for (const byCategory of [plan.minutes, plan.rounded, plan.options, plan.sessions, plan.split.shares])
          expect(Object.keys(byCategory)).toEqual(categories);
        for (const rule of plan.rules) expect(sorted(rule)).toEqual([...ruleFields].sort());
        for (const [id, derivation] of Object.entries(plan.derivations)) {
          expect(sorted(derivation)).toEqual([...derivationFields].sort());
          expect(derivation.quantity).toBe(id);
        }
        expect([plan.format, plan.version, plan.week, plan.season, plan.checks]).toEqual([
          'weekwright-plan',
          1,
          null,
          null,
          [],
        ]);
      }),
      runs(50, 5000),
    );
  });

  test('and says by which method it was made', () => {
    expect(valueOf(planner.plan({})).method).toEqual({ id: 'weekwright', name: { key: 'method.weekwright' } });
  });
});

describe('the derivations of a plan', () => {
  const { derivations, minutes } = valueOf(planner.plan({ hours: 4 }));

  test('are of every quantity of the sheet', () => {
    const some = [
      'weekly_hours',
      'season_phase',
      'strength_cap',
      'weekly_minutes',
      'split_taper',
      'in_season_slow_share',
    ];
    const more = [
      'slow_shortest',
      'running_minutes',
      'running_share',
      'total_rounded',
      'notice_few_hours',
      'planned_minutes',
    ];
    const each = categoryIds.flatMap((id) => ['share', 'minutes', 'rounded'].map((what) => `${id}_${what}`));
    expect(Object.keys(derivations)).toEqual(expect.arrayContaining([...some, ...more, ...each]));
  });

  test('say where a number comes from: the split in use, an assumption, a published method, or arithmetic', () => {
    expect(derivations['slow_share']).toMatchObject({
      value: 0.3,
      status: 'common practice',
      reason: { key: 'reason.in_season' },
    });
    expect(derivations['slow_shortest']).toMatchObject({ kind: 'constant', value: 20, status: 'assumption' });
    expect(derivations['slow_rounded']).toMatchObject({
      kind: 'block',
      value: 70,
      status: 'published',
      formula: 'sainte-lague',
    });
    expect(derivations['slow_minutes']).toMatchObject({
      kind: 'formula',
      value: minutes.slow,
      status: null,
      sources: [],
    });
    expect(derivations['season_phase']).toMatchObject({ kind: 'input', value: 2, status: null });
  });

  test('change their foundation with the split', () => {
    const taper = valueOf(planner.plan({ phase: 'taper' })).derivations['slow_share'];
    expect(taper).toMatchObject({ value: 0.45, status: 'assumption', sources: ['C11', 'C13', 'A25'] });
  });

  // Common practice, no source: running is 55 % of the week.
  test('lead from the hours to the share of running', () => {
    expect(derivations['running_share']).toMatchObject({ value: 0.55, formula: 'running_minutes / weekly_minutes' });
    expect(derivations['running_share']?.readings).toEqual([
      { name: 'running_minutes', value: 132 },
      { name: 'weekly_minutes', value: 240 },
    ]);
  });
});
