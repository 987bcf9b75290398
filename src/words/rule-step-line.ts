import type { RuleStep } from '../sheet/derivation.js';
import type { Method, Rule } from '../training/method/document.js';
import { formulaWords, type FormulaContext } from './formula-words.js';
import { quantityName } from './quantity-names.js';
import { quantityValue } from './quantity-value.js';
import type { Words } from './words.js';

/** What one rule did on the way to a value, or that it did nothing. */
export interface RuleStepLine {
  readonly rule: string;
  readonly acted: boolean;
  /** "Strength cap: 141 minutes → 120 minutes" */
  readonly text: string;
  /** The condition, and what it makes of the quantity the rule acts on. */
  readonly when: string;
  readonly formula: string;
  readonly status: string | null;
  readonly reason: string | null;
  /** Ids of entries in shared/evidence. */
  readonly sources: readonly string[];
}

/** A rule's step in the derivation of a quantity, in words. */
export function ruleStepLine(
  words: Words,
  method: Method,
  { step, quantity }: { step: RuleStep; quantity: string },
): RuleStepLine {
  const rule = method.rules.find(({ id }) => id === step.rule);
  const on = rule?.kind === 'change' ? rule.on : quantity;
  const context = formulaContext(method, { rule, step });
  const formula = formulaWords(words, context, step.formula);
  return {
    rule: step.rule,
    acted: step.acted,
    text: stepText(words, method, { step, quantity, name: rule ? words.text(rule.name) : step.rule }),
    when: words.say('derivation.step.when', { when: formulaWords(words, context, step.when) }),
    formula: words.say('derivation.step.value', { name: quantityName(words, method, on), formula }),
    status: rule ? words.say(`status.${rule.status}`) : null,
    reason: rule ? words.text(rule.reason) : null,
    sources: rule?.sources ?? [],
  };
}

/** Where the rule acts on another quantity, its `value` is that one and not the one being explained. */
function formulaContext(method: Method, { rule, step }: { rule: Rule | undefined; step: RuleStep }): FormulaContext {
  if (rule?.kind !== 'change') return { method };
  return { method, other: rule.to, ...(step.role === 'to' && { value: rule.on }) };
}

function stepText(
  words: Words,
  method: Method,
  { step, quantity, name }: { step: RuleStep; quantity: string; name: string },
): string {
  const state = !step.enabled ? 'off' : step.acted ? 'acted' : 'idle';
  const value = (amount: number | null): string => quantityValue(words, method, { id: quantity, value: amount });
  return words.say(`derivation.step.${state}`, {
    rule: words.capital(name),
    before: value(step.before),
    after: value(step.after),
  });
}
