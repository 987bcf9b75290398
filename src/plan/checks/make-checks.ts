import { activityFacts } from '../../training/checks/activity-facts.js';
import { dayFacts } from '../../training/checks/day-facts.js';
import type { Facts } from '../../training/checks/facts.js';
import { judge } from '../../training/checks/judge.js';
import { measures } from '../../training/checks/measures.js';
import { sessionFacts } from '../../training/checks/session-facts.js';
import { dayLoads } from '../../training/load/day-loads.js';
import { effortsOf } from '../../training/load/efforts-of.js';
import { loadSpread } from '../../training/load/load-spread.js';
import type { CheckRule, CheckRules } from '../../training/method/check-rules.js';
import type { Method } from '../../training/method/document.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryQuantity } from '../../training/method/names.js';
import type { Plan } from '../document.js';
import { checkRules } from './checks-ground.js';
import type { CheckResult, PlanLoad } from './document.js';
import { ownWeeks } from './own-weeks.js';
import { seasonFacts } from './season-facts.js';
import type { ChecksWishes } from './wishes.js';

/** A plan held against what is known, and how hard its week is. */
export function makeChecks(plan: Plan, wishes: ChecksWishes, method: Method): Pick<Plan, 'checks' | 'load'> {
  const rules = checkRules(method);
  const load = loadOf(plan, wishes, method);
  const facts = factsOf(plan, { load, wishes, rules, method });
  const { level, phase } = plan.inputs;
  const runner = { level, phase, age: wishes.age };
  const checks = rules.list.flatMap((rule) => {
    const judged = rule.enabled === false ? null : judge(rule, facts, runner);
    return judged ? [resultOf(rule, judged, facts)] : [];
  });
  return { checks, load };
}

function loadOf({ sessions, week }: Plan, { efforts: own, weeks }: ChecksWishes, method: Method): PlanLoad {
  const efforts = { ...effortsOf(method), ...own };
  const days = week?.days ? dayLoads(week.days, efforts) : null;
  const spread = days && loadSpread(days);
  return {
    efforts,
    week: spread?.week ?? sessionFacts(sessions, efforts).week_load,
    days,
    spread,
    own: ownWeeks(weeks),
  };
}

interface FactGround {
  readonly load: PlanLoad;
  readonly wishes: ChecksWishes;
  readonly rules: CheckRules;
  readonly method: Method;
}

function factsOf(plan: Plan, { load: { efforts, own }, wishes, rules, method }: FactGround): Facts {
  const { inputs, minutes, sessions, week, season } = plan;
  return {
    weekly_hours: inputs.hours,
    strength_cap: inputs.strengthCap,
    running_minutes: minutes.slow + minutes.tempo + minutes.intervals,
    ...Object.fromEntries(categoryIds.map((id) => [categoryQuantity(id, 'minutes'), minutes[id]])),
    ...activityFacts(minutes, rules.activity),
    ...sessionFacts(sessions, efforts),
    ...(week?.days ? dayFacts(week.days, efforts) : {}),
    hours_before: wishes.hoursBefore,
    longest_run_before: wishes.longestRun,
    own_load: own.load,
    own_monotony: own.monotony,
    own_strain: own.strain,
    ...seasonFacts(season, method),
  };
}

function resultOf(rule: CheckRule, judged: NonNullable<ReturnType<typeof judge>>, facts: Facts): CheckResult {
  const { id, group, measure } = rule;
  const { unit, reads, changes } = measures[measure];
  const { limits, edges, level, value, missing, amount } = judged;
  const values = reads.flatMap((fact) => (typeof facts[fact] === 'number' ? [[fact, facts[fact]] as const] : []));
  return {
    ...{ id, group, measure, level, value, unit, missing },
    inLine: { least: edges.least, most: edges.most },
    caution: { below: edges.below, above: edges.above },
    change: { amount, unit: changes ?? unit },
    values: Object.fromEntries(values),
    notSaid: limits.not_said,
    ...{ status: limits.status, sources: limits.sources ?? [], reason: limits.reason },
  };
}
