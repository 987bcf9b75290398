import { describe, expect, test } from 'vitest';
import evidence from '../../../shared/evidence/evidence.json' with { type: 'json' };
import type { FactId, Facts } from '../../../src/training/checks/facts.js';
import { judge, type CheckedRunner, type Judgement } from '../../../src/training/checks/judge.js';
import { builtInChecks } from '../../../src/training/method/built-in-checks.js';
import type { CheckRule, MeasureId } from '../../../src/training/method/check-rules.js';
import { levelIds, phaseIds } from '../../../src/training/method/ids.js';
import { anybody, guidance, type Asked } from './guidance-table.js';

const rise =
  (id: FactId, before: FactId) =>
  (value: number): Facts => ({ [before]: 1000, [id]: 1000 * (1 + value) });
const itself =
  (id: FactId) =>
  (value: number): Facts => ({ [id]: value });

/** Facts of which a measure has a value. */
const factsFor: Readonly<Record<MeasureId, (value: number) => Facts>> = {
  activity_minutes: (value) => ({ activity_minutes: value, moderate_minutes: value, vigorous_minutes: 0 }),
  hard_minutes_share: (value) => ({
    ...{ running_minutes: 1000, tempo_minutes: 600 * value, intervals_minutes: 400 * value },
    ...{ running_sessions: 4, hard_sessions: 2 },
  }),
  hard_sessions_share: (value) => ({ running_sessions: 100, hard_sessions: 100 * value }),
  hard_gap: itself('hard_gap'),
  hours_rise: rise('weekly_hours', 'hours_before'),
  load_rise: rise('week_load', 'own_load'),
  longest_run_rise: rise('longest_run', 'longest_run_before'),
  monotony_rise: rise('load_monotony', 'own_monotony'),
  rest_days: itself('rest_days'),
  season_rise: itself('season_rise'),
  season_run_rise: itself('season_run_rise'),
  strain_rise: rise('week_strain', 'own_strain'),
  strength_gap: itself('strength_gap'),
  strength_minutes: itself('strength_minutes'),
  strength_sessions: itself('strength_sessions'),
  weekly_hours: itself('weekly_hours'),
};

function ruleOf(id: string): CheckRule {
  const rule = builtInChecks.list.find((each) => each.id === id);
  if (!rule) throw new Error(`no check ${id}`);
  return rule;
}

function judged(id: string, value: number, { runner = anybody, more = {} }: Asked = {}): Judgement | null {
  const rule = ruleOf(id);
  return judge(rule, { ...factsFor[rule.measure](value), ...more }, runner);
}

describe.each(guidance.map((row) => [row.check, row.who ?? 'anybody', row.by, row] as const))(
  '%s of %s, by %s',
  (check, _, __, { levels, says = {}, ...asked }) => {
    test.each(levels)('%d is %s', (value, level) => {
      const result = judged(check, value, asked);
      expect(result === null ? 'not made' : result.level).toBe(level);
    });

    test('is what shared/evidence says of its sources', () => {
      for (const [id, phrases] of Object.entries(says)) {
        const claim = evidence.find((each) => each.id === id)?.claim;
        for (const phrase of phrases) expect(`${id}: ${claim ?? ''}`).toContain(phrase);
      }
    });

    test('names these sources itself', () => {
      const result = judged(check, 0, asked);
      const named = result?.limits.sources ?? [];
      // A11 stands for the upper end of upkeep only; the check names it where the dose is the point.
      const needed = Object.keys(says).filter((id) => !(id === 'A11' && named.includes('A25')));
      expect(named).toEqual(expect.arrayContaining(needed));
    });
  },
);

describe('the table of guidance', () => {
  test('has every check of the built-in method, and no other', () => {
    expect([...new Set(guidance.map(({ check }) => check))].sort()).toEqual(
      builtInChecks.list.map(({ id }) => id).sort(),
    );
  });

  test('reaches all limits of every check', () => {
    for (const { id, limits } of builtInChecks.list) {
      const reached = guidance.filter(({ check }) => check === id).map((row) => judged(id, 1, row)?.limits);
      expect([id, limits.filter((each) => !reached.includes(each))]).toEqual([id, []]);
    }
  });

  test('has a value at, just under and just over every edge that is a number', () => {
    for (const { id, limits } of builtInChecks.list)
      for (const each of limits) {
        const values = guidance
          .filter((row) => row.check === id && judged(id, 1, row)?.limits === each)
          .flatMap(({ levels }) => levels.map(([value]) => value));
        const edges = [each.in_line.least, each.in_line.most, each.caution?.below, each.caution?.above];
        for (const edge of edges.filter((one) => typeof one === 'number')) {
          expect([id, edge, values.includes(edge)]).toEqual([id, edge, true]);
          // Whole days and sessions by one, everything else by a hundredth of a share, a minute or an hour.
          const step = /sessions|gap|rest|days/.test(id) && id !== 'hard-sessions' ? 1 : 0.1;
          const beside = values.filter((value) => value !== edge && Math.abs(value - edge) <= step + 1e-9);
          expect([id, edge, beside.some((one) => one < edge), beside.some((one) => one > edge)]).toEqual([
            ...[id, edge, true, true],
          ]);
        }
      }
  });
});

describe('whose limits are used', () => {
  const ages = [null, 5, 17, 18, 40, 64, 65, 110];
  const runners = levelIds.flatMap((level) =>
    phaseIds.flatMap((phase) => ages.map((age): CheckedRunner => ({ level, phase, age }))),
  );

  /** The reason that the method gives for the limits, as a runner should get it; null where there is no check. */
  const expected: Readonly<Record<string, (runner: CheckedRunner) => string | null>> = {
    'hard-minutes': ({ level }) =>
      level === 'new' || level === 'developing' ? 'hard-minutes-recreational' : 'hard-minutes-competitive',
    activity: ({ age }) => (age !== null && age < 18 ? null : 'activity'),
    'strength-days': ({ age }) => (age !== null && age < 18 ? null : 'strength-days'),
    'hard-sessions': ({ level }) => {
      if (level === 'elite') return 'hard-sessions';
      return level === 'trained' ? 'hard-sessions-trained' : null;
    },
    'strength-sessions': ({ phase, age }) => {
      if (phase !== 'taper' && phase !== 'recovery') return 'strength-sessions';
      return age !== null && age >= 65 ? 'strength-sessions-older' : 'strength-sessions-upkeep';
    },
    'rest-days': ({ age }) => (age !== null && age < 18 ? 'rest-days-youth' : 'rest-days'),
    'youth-hours': ({ age }) => (age !== null && age < 18 ? 'youth-hours' : null),
    'balance-days': ({ age }) => (age !== null && age >= 65 ? 'balance-days' : null),
  };

  test.each(builtInChecks.list.map(({ id }) => id))('by %s for each level, phase and age', (id) => {
    for (const runner of runners) {
      const reason = judged(id, 1, { runner, more: { weekly_hours: 8, strength_cap: 90 } })?.limits.reason;
      const key = expected[id]?.(runner);
      expect([runner, reason ?? null]).toEqual([runner, key === null ? null : { key: `check-reason.${key ?? id}` }]);
    }
  });
});
