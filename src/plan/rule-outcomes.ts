import type { Column } from '../sheet/column.js';
import type { Derivation } from '../sheet/derivation.js';
import type { Method, Rule } from '../training/method/document.js';
import { noticeQuantity } from '../training/method/names.js';
import type { RuleOutcome } from './document.js';

/** What each rule of the method did in this column, in the method's order, switched-off ones included. */
export function ruleOutcomes(
  { rules }: Method,
  column: Column,
  derivations: Readonly<Record<string, Derivation>>,
): RuleOutcome[] {
  return rules.map((rule) => ({ ...effect(rule, column, derivations), ...common(rule) }));
}

function common({ id, kind, enabled, status }: Rule): Pick<RuleOutcome, 'id' | 'kind' | 'enabled' | 'status'> {
  return { id, kind, enabled: enabled !== false, status };
}

function effect(
  rule: Rule,
  column: Column,
  derivations: Readonly<Record<string, Derivation>>,
): Pick<RuleOutcome, 'acted' | 'on' | 'to' | 'before' | 'after'> {
  if (rule.kind === 'notice') {
    const acted = rule.enabled !== false && column.value(noticeQuantity(rule.id)) > 0;
    return { acted, on: null, to: null, before: null, after: null };
  }
  const step = derivations[rule.on]?.rules.find((each) => each.rule === rule.id && each.role === 'on');
  return {
    acted: step?.acted ?? false,
    on: rule.on,
    to: rule.to ?? null,
    before: step?.before ?? null,
    after: step?.after ?? null,
  };
}
