import type { Method } from '../../training/method/document.js';
import type { Change } from '../../training/week/wish.js';
import { categoryName } from '../category-name.js';
import type { Words } from '../words.js';
import { counted } from './counted.js';
import { dayName } from './day-name.js';

/**
 * A change to the wishes in words, fit for a list.
 *
 * @example changeLine(words, method, { kind: 'more-minutes', day: 3, category: null, amount: 20, sessions: null })
 *   // '20 more minutes on Thursday'
 */
export function changeLine(words: Words, method: Method, change: Change): string {
  const { day, category, amount } = change;
  const sessions = change.sessions ?? [];
  return words.say(`change.${change.kind}${formOf(change)}`, {
    ...counted(words, amount),
    minutes: words.minutes(sessions[0] ?? 0),
    sessions: words.sessions(sessions),
    ...(day !== null && { day: dayName(words, day) }),
    ...(category && { kind: categoryName(words, method, category) }),
  });
}

/** Few things have texts of their own: no rest day, no session, a single one. */
function formOf({ kind, amount, sessions }: Change): string {
  if (kind === 'fewer-rest-days' && amount === 0) return '.none';
  if (kind !== 'settle-sessions' || (sessions && sessions.length > 1)) return '';
  return sessions?.length === 1 ? '.one' : '.none';
}
