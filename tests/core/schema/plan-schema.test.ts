import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { createPlanner, planWeek } from '../../../src/plan.js';
import type { Plan, PlanRequest } from '../../../src/plan/document.js';
import { planSchema } from '../../../src/plan/plan-schema.js';
import { categoryIds } from '../../../src/training/method/ids.js';
import { anyAthletes } from '../../reference/athletes.js';
import { planOf } from '../../reference/plan-door.js';
import { patience, runs } from '../../reference/runs.js';
import { changed, changesOf } from './mutations.js';
import { readJson, validator } from './published.js';

const isPlan = validator('plan');

function expectPlan(plan: Plan): void {
  isPlan(plan);
  expect(isPlan.errors).toBeNull();
  expect(JSON.parse(JSON.stringify(plan))).toStrictEqual(plan);
}

/** The last of each category's options, so that picks are not what the plan would have taken. */
function lastOptions({ options }: Plan): NonNullable<PlanRequest['sessions']> {
  return Object.fromEntries(categoryIds.flatMap((id) => options[id].slice(-1).map((option) => [id, option])));
}

describe('plan.schema.json', () => {
  test(
    'describes every plan, which is the same after a way through JSON',
    () => {
      fc.assert(
        fc.property(anyAthletes, (athlete) => {
          expectPlan(planOf(athlete));
        }),
        runs(200, 2_000),
      );
    },
    patience,
  );

  test('describes plans with picked sessions, and with picks that no longer fit', () => {
    const sessions = lastOptions(planOf({ hours: 6 }));
    for (const hours of [6, 5.75, 2]) expectPlan(planOf({ hours, sessions }));
    expect(planOf({ hours: 2, sessions }).notices.map(({ code }) => code)).toContain('pick-dropped');
  });

  test('describes a plan in which quantities of the coach fail', async () => {
    const own = (id: string, formula: string) => ({ id, name: id, formula, status: 'assumption' });
    const quantities = [
      own('per_interval', 'tempo_minutes / intervals_minutes'),
      own('twice', 'per_interval * 2'),
      own('root', 'sqrt(-slow_minutes)'),
      own('huge', '10 ^ slow_minutes * 10 ^ slow_minutes * 10 ^ slow_minutes * 10 ^ slow_minutes * 10 ^ slow_minutes'),
    ];
    const planner = await createPlanner({ ...(readJson('shared/methods/default.json') as object), quantities });
    const outcome = planner.ok ? planner.value.plan({ hours: 5, phase: 'off-season' }) : planner;
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    const errors = quantities.map(({ id }) => outcome.value.derivations[id]?.error?.code);
    expect(errors).toEqual(['division-by-zero', 'depends-on', 'not-a-number', 'too-large']);
    expectPlan(outcome.value);
  });

  test('never has to describe a share that failed: its method is refused', async () => {
    const { rules, ...method } = readJson('shared/methods/default.json') as { readonly rules: readonly object[] };
    const change = (id: string, on: string, value: string) => {
      const texts = { name: id, says: id, reason: id, status: 'assumption' };
      return { kind: 'change', id, on, when: '1', value, ...texts };
    };
    const added = [change('no-share', 'slow_share', 'sqrt(0 - 1)'), change('minutes', 'slow_minutes', '100')];
    const planner = await createPlanner({ ...method, rules: [...rules, ...added] });
    expect(planner).toMatchObject({ ok: false, problems: [{ path: 'slow_share', code: 'no-value' }] });
  });

  test(
    'says the same of changed plans as the schema in TypeScript',
    () => {
      const plan = planOf({ hours: 1.5, event: 'none' });
      const accepted = { copies: 0 };
      fc.assert(
        fc.property(changesOf(plan), (changes) => {
          const copy = changed(plan, changes);
          const isFine = v.is(planSchema, copy);
          if (isFine) accepted.copies += 1;
          expect(isPlan(copy)).toBe(isFine);
        }),
        runs(500, 100_000),
      );
      expect(accepted.copies).toBeGreaterThan(0);
    },
    patience,
  );

  test('refuses a request', () => {
    expect(planWeek({ hours: 4 }).ok).toBe(true);
    expect(isPlan({ hours: 4 })).toBe(false);
  });
});
