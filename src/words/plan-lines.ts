import type { Plan } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import { categoryIds } from '../training/method/ids.js';
import { categoryName } from './category-name.js';
import { hoursInWords } from './headline.js';
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
  const acted = plan.rules.filter((outcome) => outcome.kind === 'change' && outcome.acted);
  return acted.map((outcome) => ({
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

/**
 * The whole week in one sentence, for those who hear it: what a picture of the week shows, or what has changed.
 *
 * @example 'Four hours in build: 70 minutes of slow running, 35 minutes of tempo running, …, and 75 minutes of strength.'
 */
export function weekSentence(words: Words, method: Method, plan: Plan): string {
  const parts = categoryIds
    .filter((id) => plan.rounded[id] > 0)
    .map((id) =>
      words.say('summary.part', { minutes: words.minutes(plan.rounded[id]), kind: categoryName(words, method, id) }),
    );
  return words.say('summary', {
    hours: words.capital(hoursInWords(words, plan.inputs.hours)),
    phase: words.say(`headline.phase.${plan.inputs.phase}`),
    parts: words.list(parts),
  });
}

/** What a listener is told once a change has settled: the week, and how much there is to read below. */
export function statusMessage(words: Words, method: Method, plan: Plan): string {
  const rules = ruleLines(words, method, plan).length;
  const notices = plan.notices.length;
  return [
    weekSentence(words, method, plan),
    ...(rules > 0 ? [words.say('summary.rules', { count: rules })] : []),
    ...(notices > 0 ? [words.say('summary.notices', { count: notices })] : []),
  ].join(' ');
}
