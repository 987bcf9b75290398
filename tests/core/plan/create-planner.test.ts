import { describe, expect, test } from 'vitest';
import { createPlanner } from '../../../src/plan.js';
import { documentWith, plannerOf, problemsOf, valueOf } from '../training/method/documents.js';

const divided = { code: 'no-value', allowed: { cause: { code: 'division-by-zero' } } };

describe('createPlanner(document) tries the method with its own starting values', () => {
  test('and refuses one that has no minutes for a category then', async () => {
    expect(await problemsOf(documentWith('rules', [rule('strength_minutes', '1 / 0')]))).toEqual([
      { ...divided, path: 'strength_minutes', value: null },
    ]);
  });

  test('and tells the cause behind the cause', async () => {
    const [problem] = await problemsOf(documentWith('rules', [rule('weekly_minutes', '1 / 0')]));
    expect(problem).toMatchObject({
      path: 'slow_minutes',
      code: 'no-value',
      allowed: { cause: { code: 'depends-on', name: 'weekly_minutes', cause: { code: 'division-by-zero' } } },
    });
  });

  test('and refuses one that gives a category less than nothing', async () => {
    expect(await problemsOf(documentWith('rules', [rule('cross_minutes', '0 - 5')]))).toEqual([
      { path: 'cross_minutes', value: -5, code: 'out-of-range', allowed: { least: 0, most: 10_080 } },
    ]);
  });

  // A week has 10,080 minutes. Without a limit, rounding 1e300 minutes to fives would never come to an end.
  test.each(['10081', '1e18', '1e300', '2 ^ 1000'])(
    'and refuses one that gives a category more than a week: %s',
    async (value) => {
      const problems = await problemsOf(documentWith('rules', [rule('cross_minutes', value)]));
      expect(problems[0]).toMatchObject({
        path: 'cross_minutes',
        code: 'out-of-range',
        allowed: { least: 0, most: 10_080 },
      });
    },
  );

  test('and refuses one that gives all of them together more than a week', async () => {
    const problems = await problemsOf(documentWith('rules', [rule('cross_minutes', '10000')]));
    expect(problems).toEqual([
      { path: 'planned_minutes', value: 10_204, code: 'out-of-range', allowed: { least: 0, most: 10_080 } },
    ]);
  });
});

describe('a method that fails for some inputs only', () => {
  test('is accepted, and answers those with problems', async () => {
    const planner = await plannerOf(
      documentWith('rules', [rule('strength_minutes', 'value / (weekly_hours - 5) ^ 2')]),
    );
    expect(planner.plan({ hours: 5 })).toEqual({
      ok: false,
      problems: [{ ...divided, path: 'strength_minutes', value: null }],
    });
    expect(planner.plan({ hours: 6 }).ok).toBe(true);
    expect(planner.plan({ hours: 5 }).ok).toBe(false);
  });
});

describe('the inputs of a method', () => {
  test('have the ranges and starting values that it gives them', async () => {
    const inputs = {
      weekly_hours: { least: 2, most: 10, step: 0.5, start: 5 },
      season_phase: { start: 'taper' },
      athlete_level: { start: 'elite' },
      target_event: { start: 'marathon' },
      strength_cap: { least: 60, most: 90, step: 5, start: 75 },
    };
    const planner = await plannerOf(documentWith('inputs', inputs));
    const plan = valueOf(planner.plan({}));
    expect(plan.inputs).toEqual({ hours: 5, phase: 'taper', level: 'elite', event: 'marathon', strengthCap: 75 });
    expect(planner.plan({ hours: 1 })).toMatchObject({ ok: false, problems: [{ allowed: { least: 2, most: 10 } }] });
    expect(planner.plan({ strengthCap: 120 })).toMatchObject({
      ok: false,
      problems: [{ allowed: { least: 60, most: 90 } }],
    });
  });
});

describe('the document', () => {
  test('is not changed, and changing it later does not change the planner', async () => {
    const document = documentWith('id', 'mine');
    const before = JSON.stringify(document);
    const planner = await plannerOf(document);
    const plan = JSON.stringify(planner.plan({}));
    expect(JSON.stringify(document)).toBe(before);
    document['splits'] = [];
    expect(JSON.stringify(planner.plan({}))).toBe(plan);
    expect(planner.method.id).toBe('mine');
  });

  test('may be frozen', async () => {
    expect((await createPlanner(deepFreeze(documentWith('id', 'mine')))).ok).toBe(true);
  });
});

function rule(on: string, value: string): object {
  const texts = { name: 'rule', says: 'rule', reason: 'rule', status: 'assumption' };
  return { id: 'odd', kind: 'change', on, when: '1', value, ...texts };
}

function deepFreeze(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  Object.values(value).forEach(deepFreeze);
  return Object.freeze(value);
}
