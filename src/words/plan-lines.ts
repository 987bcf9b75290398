import type { Plan } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import { actedRules } from './acted-rules.js';
import { noticeSentence } from './notice-sentence.js';
import { ruleSentence } from './rule-sentence.js';
import type { Words } from './words.js';

/** Something said of a plan, and how well it is founded where that is known. */
export interface PlanLine {
  /** What it can be told apart by: the id of a rule, or the code of a notice and what it is about. */
  readonly id: string;
  readonly text: string;
  readonly level: 'note' | 'caution';
  readonly status: string | null;
}

/** The rules that changed something in this week, a sentence each, in the method's order. */
export function ruleLines(words: Words, method: Method, plan: Plan): readonly PlanLine[] {
  return actedRules(plan).map((outcome) => ({
    id: outcome.id,
    text: ruleSentence(words, method, outcome),
    level: 'note',
    status: words.say(`status.${outcome.status}`),
  }));
}

/** What is worth knowing of this week, a sentence each. */
export function noticeLines(words: Words, method: Method, plan: Plan): readonly PlanLine[] {
  return plan.notices.map((notice) => {
    const rule = plan.rules.find(({ id }) => id === notice.rule);
    return {
      id: [notice.code, notice.rule, notice.category, notice.quantity].filter((part) => part !== undefined).join(' '),
      text: noticeSentence(words, method, notice),
      level: notice.level,
      status: rule ? words.say(`status.${rule.status}`) : null,
    };
  });
}
