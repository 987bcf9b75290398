import { weekRules } from '../../plan/week/week-problem-of.js';
import type { ClashMember, ClashRule, Method } from '../../training/method/document.js';
import type { Clash } from '../../training/week/clashes.js';
import { categoryName } from '../category-name.js';
import type { Values } from '../phrases.js';
import type { Words } from '../words.js';
import { counted } from './counted.js';
import { dayNames } from './day-name.js';

/** A clash in words. */
export interface ClashLine {
  /** What happens, and on which days: "Quality runs on neighbouring days: Tuesday and Wednesday." */
  readonly text: string;
  /** What it is called. */
  readonly name: string;
  /** Why a week should not have it; null where the method does not know the clash. */
  readonly reason: string | null;
  /** How well that is founded. */
  readonly status: string | null;
  /** Ids of entries in shared/evidence. */
  readonly sources: readonly string[];
}

/** A clash in the method's own sentence. One of another method is shown by its id. */
export function clashLine(words: Words, method: Method, clash: Clash): ClashLine {
  const rule = weekRules(method).clashes.find(({ id }) => id === clash.kind);
  if (!rule) return { text: clash.kind, name: clash.kind, reason: null, status: null, sources: [] };
  return {
    text: words.capital(words.text(rule.says, clashValues(words, method, { rule, clash }))),
    name: words.capital(words.text(rule.name)),
    reason: words.text(rule.reason),
    status: words.say(`status.${rule.status}`),
    sources: rule.sources ?? [],
  };
}

/** What {days}, {first}, {then}, {kind}, {by} and {cost} stand for in a clash's sentence. */
function clashValues(words: Words, method: Method, { rule, clash }: { rule: ClashRule; clash: Clash }): Values {
  const members = (list: readonly ClashMember[]): string =>
    words.alternatives(list.map((member) => memberName(words, method, member)));
  return {
    days: dayNames(words, clash.days),
    cost: words.number(clash.cost),
    kind: clash.category === null ? '' : categoryName(words, method, clash.category),
    by: byText(words, rule, clash.by),
    first: rule.kind === 'pair' ? members(rule.first) : '',
    then: rule.kind === 'pair' ? members(rule.then) : '',
  };
}

function memberName(words: Words, method: Method, member: ClashMember): string {
  return member === 'long' ? words.say('week.long-run') : categoryName(words, method, member);
}

/** "5 minutes more", "one session fewer"; empty where a clash is about days. */
function byText(words: Words, { kind }: ClashRule, by: number): string {
  if (by === 0) return '';
  const unit = kind === 'missed-minutes' ? 'minutes' : 'sessions';
  return words.say(`week.${by > 0 ? 'more' : 'fewer'}-${unit}`, counted(words, Math.abs(by)));
}
