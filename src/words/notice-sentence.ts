import type { Notice } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import { categoryName } from './category-name.js';
import { shortQuantityName } from './quantity-names.js';
import type { Values } from './phrases.js';
import type { Words } from './words.js';

/**
 * A notice of the plan as a sentence that says what to do about it.
 *
 * @example 'Intervals can also stay, as one session of 35 minutes every second week.'
 */
export function noticeSentence(words: Words, method: Method, notice: Notice): string {
  const values = noticeValues(words, method, notice);
  const rule = method.rules.find(({ id }) => id === notice.rule);
  const sentence =
    notice.code === 'rule' && rule ? words.text(rule.says, values) : words.say(`notice.${notice.code}`, values);
  return words.capital(sentence);
}

function noticeValues(words: Words, method: Method, notice: Notice): Values {
  const minutes = Object.entries(notice.values).map(([name, value]) => [name, words.minutes(value)] as const);
  return {
    ...Object.fromEntries(minutes),
    step: words.minutes(method.rounding.step),
    ...(notice.category && { kind: categoryName(words, method, notice.category) }),
    ...(notice.quantity && { quantity: shortQuantityName(words, method, notice.quantity) }),
  };
}
