import type { Column } from '../sheet/column.js';
import type { Derivation, RuleStep } from '../sheet/derivation.js';
import type { ChangeRule, Method, NoticeRule } from '../training/method/document.js';
import { noticeQuantity } from '../training/method/names.js';
import type { RuleOutcome } from './document.js';

/** What each rule of the method did in this column, in the method's order, switched-off ones included. */
export function ruleOutcomes(
  { rules }: Method,
  column: Column,
  derivations: Readonly<Record<string, Derivation>>,
): RuleOutcome[] {
  return rules.map((rule) => {
    if (rule.kind === 'notice') return noticeOutcome(rule, column);
    const step = derivations[rule.on]?.rules.find((each) => each.rule === rule.id && each.role === 'on');
    return changeOutcome(rule, step);
  });
}

function noticeOutcome({ id, kind, enabled = true, status }: NoticeRule, column: Column): RuleOutcome {
  // As for any condition, every number but zero is true; NaN is a condition that failed.
  const acted = enabled && Math.abs(column.value(noticeQuantity(id))) > 0;
  return { id, kind, enabled, acted, on: null, to: null, before: null, after: null, status };
}

function changeOutcome(
  { id, kind, enabled = true, on, to, status }: ChangeRule,
  { acted, before, after }: Pick<RuleStep, 'acted' | 'before' | 'after'> = unseen,
): RuleOutcome {
  return { id, kind, enabled, acted, on, to: to ?? null, before, after, status };
}

const unseen = { acted: false, before: null, after: null };
