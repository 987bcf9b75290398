import { describe, expect, test } from 'vitest';
import { builtInPlanner, type Plan, type PlanRequest, type RuleOutcome } from '../../../src/plan.js';
import { documentWith, defaultDocument, plannerOf, valueOf } from '../training/method/documents.js';

const planOf = (request: PlanRequest): Plan => valueOf(builtInPlanner().plan(request));
const outcomeOf = ({ rules }: Plan, id: string): RuleOutcome | undefined => rules.find((rule) => rule.id === id);

describe('the rules of a plan', () => {
  test('are those of the method, in its order, whether they acted or not', () => {
    const { rules } = defaultDocument();
    const ids = Array.isArray(rules) ? rules.map((rule: { id: string }) => rule.id) : [];
    for (const hours of [1, 4, 8]) expect(planOf({ hours }).rules.map(({ id }) => id)).toEqual(ids);
  });

  // Common practice, no source: above six hours 120 minutes of strength are enough. 30 % of 8 h are 144 minutes.
  test('say what a change did: from how many minutes to how many, and where the difference went', () => {
    const plan = planOf({ hours: 8 });
    expect(outcomeOf(plan, 'strength-cap')).toEqual({
      id: 'strength-cap',
      kind: 'change',
      enabled: true,
      acted: true,
      on: 'strength_minutes',
      to: 'slow_minutes',
      before: 144,
      after: 120,
      status: 'common practice',
    });
    expect([plan.minutes.strength, plan.minutes.slow]).toEqual([120, 168]);
  });

  test('say whether a notice was due; it acts on nothing', () => {
    const expected = { kind: 'notice', enabled: true, on: null, to: null, before: null, after: null };
    expect(outcomeOf(planOf({ hours: 8 }), 'many-hours')).toMatchObject({ ...expected, acted: true });
    expect(outcomeOf(planOf({ hours: 4 }), 'many-hours')).toMatchObject({ ...expected, acted: false });
  });
});

describe('a rule that is switched off', () => {
  test('does not act, and is listed still', async () => {
    const planner = await plannerOf(documentWith('rules[0].enabled', false));
    const plan = valueOf(planner.plan({ hours: 8 }));
    expect(plan.minutes.strength).toBe(144);
    expect(outcomeOf(plan, 'strength-cap')).toMatchObject({ enabled: false, acted: false, before: 144, after: 144 });
    expect(plan.derivations['strength_minutes']?.rules[0]).toMatchObject({ rule: 'strength-cap', enabled: false });
    expect(plan.rules).toHaveLength(12);
  });

  test('says nothing', async () => {
    const planner = await plannerOf(documentWith('rules[3].enabled', false));
    const plan = valueOf(planner.plan({ hours: 8 }));
    expect(plan.notices).toEqual([]);
    expect(outcomeOf(plan, 'many-hours')).toMatchObject({ enabled: false, acted: false });
  });

  test('is as if it were not there, for all that is computed', async () => {
    const rules = defaultDocument()['rules'];
    if (!Array.isArray(rules)) throw new Error('no rules');
    const off = await plannerOf({
      ...defaultDocument(),
      rules: rules.map((rule: object) => ({ ...rule, enabled: false })),
    });
    const without = await plannerOf({ ...defaultDocument(), rules: [] });
    for (const hours of [0.5, 1.5, 4, 8, 20]) {
      const [one, other] = [off, without].map((planner) => valueOf(planner.plan({ hours })));
      expect(one?.minutes).toEqual(other?.minutes);
      expect(one?.rounded).toEqual(other?.rounded);
      expect(one?.options).toEqual(other?.options);
    }
  });
});
