import type { RuleOutcome } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import type { Values } from './phrases.js';
import { shortQuantityName } from './quantity-names.js';
import { quantityValue } from './quantity-value.js';
import type { Words } from './words.js';

/**
 * What a rule did to this week, in the method's own sentence; or that it did not act, or is switched off.
 *
 * @example 'Strength is held at 120 minutes: 21 minutes moved to slow running.'
 */
export function ruleSentence(words: Words, method: Method, outcome: RuleOutcome): string {
  const rule = method.rules.find(({ id }) => id === outcome.id);
  const name = rule ? words.text(rule.name) : outcome.id;
  if (!outcome.enabled) return words.say('rule-state.off', { rule: words.capital(name) });
  if (!outcome.acted || !rule) return words.say('rule-state.idle', { rule: words.capital(name) });
  return words.capital(words.text(rule.says, ruleValues(words, method, outcome)));
}

/** What {on}, {to}, {before}, {after} and {moved} stand for in a rule's sentence. */
function ruleValues(words: Words, method: Method, { on, to, before, after }: RuleOutcome): Values {
  const name = (id: string | null): string => (id === null ? '' : shortQuantityName(words, method, id));
  const value = (amount: number | null): string =>
    on === null ? '' : quantityValue(words, method, { id: on, value: amount });
  const moved = before === null || after === null ? null : Math.abs(before - after);
  return { on: name(on), to: name(to), before: value(before), after: value(after), moved: value(moved) };
}
