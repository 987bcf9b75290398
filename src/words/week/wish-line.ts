import type { Method } from '../../training/method/document.js';
import type { Wish } from '../../training/week/wish.js';
import { categoryName } from '../category-name.js';
import type { Words } from '../words.js';
import { counted } from './counted.js';
import { dayName } from './day-name.js';

/**
 * A wish in words, fit for a list.
 *
 * @example wishLine(words, method, { kind: 'day-minutes', day: 2, category: null, amount: 30 }) // 'Wednesday has 30 minutes'
 */
export function wishLine(words: Words, method: Method, { kind, day, category, amount }: Wish): string {
  const isNone = amount === 0 && (kind === 'day-minutes' || kind === 'minutes');
  return words.say(isNone ? `wish.${kind}.none` : `wish.${kind}`, {
    ...counted(words, amount),
    minutes: words.minutes(amount),
    ...(day !== null && { day: dayName(words, day) }),
    ...(category && { kind: categoryName(words, method, category) }),
  });
}
