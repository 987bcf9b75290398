import type { Notice } from '../plan/document.js';
import type { Method } from '../training/method/document.js';
import { categoryName } from './category-name.js';
import { shortQuantityName } from './quantity-names.js';
import { quantityValue } from './quantity-value.js';
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
  const key =
    notice.values['givers'] === undefined || notice.values['givers'] === 0 ? notice.code : `${notice.code}.shared`;
  const sentence = notice.code === 'rule' && rule ? words.text(rule.says, values) : words.say(`notice.${key}`, values);
  return words.capital(sentence);
}

function noticeValues(words: Words, method: Method, notice: Notice): Values {
  const { quantity: id } = notice;
  // Of a quantity its own values are told, of anything else minutes.
  const text = (value: number | null): string =>
    id === undefined ? words.minutes(value ?? Number.NaN) : quantityValue(words, method, { id, value });
  const values = Object.entries(notice.values).map(([name, value]) => [name, text(value)] as const);
  return {
    ...(id !== undefined && { before: text(null), after: text(null) }),
    ...Object.fromEntries(values),
    step: words.minutes(method.rounding.step),
    ...(notice.category && { kind: categoryName(words, method, notice.category) }),
    ...(id !== undefined && { quantity: shortQuantityName(words, method, id) }),
  };
}
