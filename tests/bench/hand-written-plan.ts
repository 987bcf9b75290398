import type { Notice, Plan, PlanInputs, RuleOutcome } from '../../src/plan/document.js';
import { byCategory, type CategoryId } from '../../src/training/method/ids.js';
import { sessionOptions } from '../../src/training/sessions/options.js';
import * as hand from './hand-written.js';

export const limits = {
  slow: { shortest: 20, typical: 45, longest: 150 },
  tempo: { shortest: 20, typical: 35, longest: 60 },
  intervals: { shortest: 20, typical: 35, longest: 60 },
  cross: { shortest: 20, typical: 40, longest: 90 },
  strength: { shortest: 15, typical: 35, longest: 60 },
};
export const rounding = { step: 5, tolerance_minutes: 10, tolerance_share: 0.1 };

/** A plan without derivations, by the same session options as ours. */
export function handWrittenPlan(inputs: PlanInputs): Omit<Plan, 'derivations'> {
  const split = hand.splitOf(inputs);
  const shares = hand.sharesOf(split);
  const minutes = hand.minutesOf(inputs.hours * 60, shares);
  const rules = applyRules(minutes, inputs);
  const rounded = hand.roundWeek(minutes);
  const total = { exact: sum(minutes), rounded: sum(rounded) };
  const options = handWrittenOptions(minutes, rounded);
  return {
    format: 'weekwright-plan',
    version: 1,
    method: { id: 'weekwright', name: { key: 'method.weekwright' } },
    inputs,
    split: { id: split, shares, status: split === 'taper' || split === 'recovery' ? 'assumption' : 'common practice' },
    minutes,
    rounded,
    total,
    options,
    sessions: byCategory((id) => options[id][0] ?? []),
    rules,
    notices: [...rules.flatMap(ruleNotices), ...totalNotice(total)],
    week: null,
    season: null,
    running: null,
    strength: null,
    load: null,
    checks: [],
  };
}

export function handWrittenOptions(minutes: hand.Amounts, rounded: hand.Amounts): Plan['options'] {
  return byCategory((id) => sessionOptions({ exact: minutes[id], rounded: rounded[id], limits: limits[id], rounding }));
}

const statuses: Readonly<Record<string, RuleOutcome['status']>> = {
  'strength-cap': 'common practice',
  'strength-upkeep': 'published',
};

function applyRules(minutes: hand.Amounts, inputs: PlanInputs): RuleOutcome[] {
  const change = (id: string, [on, to]: readonly [CategoryId, CategoryId], act: () => void): RuleOutcome => {
    const before = minutes[on];
    act();
    const after = minutes[on];
    const quantities = { on: `${on}_minutes`, to: `${to}_minutes` };
    const status = statuses[id] ?? 'assumption';
    return { acted: before !== after, ...quantities, before, after, id, kind: 'change', enabled: true, status };
  };
  const fold = (from: CategoryId, to: CategoryId): RuleOutcome =>
    change(`${from}-too-small`, [from, to], () => {
      hand.foldAway(minutes, from, to);
    });
  const cap = change('strength-cap', ['strength', 'slow'], () => {
    hand.capStrength(minutes, inputs);
  });
  const kept = change('strength-upkeep', ['strength', 'slow'], () => {
    hand.keepStrengthUp(minutes, 0);
  });
  const folded = [fold('intervals', 'tempo'), fold('tempo', 'slow'), fold('cross', 'slow')];
  const raised = change('strength-too-small', ['strength', 'slow'], () => {
    hand.raiseStrength(minutes);
  });
  const due = hand.noticesDue(inputs, minutes.slow);
  const notice = (id: hand.NoticeId, status: RuleOutcome['status']): RuleOutcome => {
    const nothing = { on: null, to: null, before: null, after: null };
    return { acted: due[id], ...nothing, id, kind: 'notice', enabled: true, status };
  };
  const ranges = (['few-hours', 'many-hours', 'no-event', 'short-event', 'long-event'] as const).map((id) =>
    notice(id, 'common practice'),
  );
  return [cap, kept, ...ranges, ...folded, raised, notice('slow-too-small', 'assumption')];
}

function ruleNotices({ id, kind, acted, on, before, after }: RuleOutcome): Notice[] {
  if (!acted) return [];
  if (kind === 'notice') return [{ code: 'rule', level: 'note', rule: id, values: {} }];
  const category = (['intervals', 'tempo', 'cross'] as const).find((each) => on === `${each}_minutes`);
  if (!category || before === null || after === null) return [];
  const moved = before - after;
  const session = Math.max(limits[category].shortest, Math.round((2 * moved) / 5) * 5);
  return [{ code: 'every-second-week', level: 'note', rule: id, category, values: { moved, session } }];
}

function totalNotice({ exact, rounded }: Plan['total']): Notice[] {
  if (Math.abs(exact - rounded) < 1e-9) return [];
  return [{ code: 'total-rounded', level: 'note', values: { exact, rounded } }];
}

const sum = ({ slow, tempo, intervals, cross, strength }: hand.Amounts): number =>
  slow + tempo + intervals + cross + strength;
