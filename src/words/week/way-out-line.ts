import type { Method } from '../../training/method/document.js';
import type { Change, WayOut } from '../../training/week/wish.js';
import type { Words } from '../words.js';
import { changeLine } from './change-line.js';
import { counted } from './counted.js';
import { dayNames } from './day-name.js';

/**
 * Changes that help together, as a list; the same minutes on several days are said once.
 *
 * @example '20 more minutes each on Monday and Thursday'
 */
export function wayOutLine(words: Words, method: Method, { changes }: WayOut): string {
  return words.list(alike(changes).map((group) => groupLine(words, method, group)));
}

type Group = readonly [Change, ...Change[]];

function alike(changes: readonly Change[]): Group[] {
  return changes.reduce<Group[]>((groups, change) => {
    const last = groups.at(-1);
    const isSame =
      last?.[0].kind === 'more-minutes' && change.kind === 'more-minutes' && last[0].amount === change.amount;
    return last && isSame ? [...groups.slice(0, -1), [...last, change]] : [...groups, [change]];
  }, []);
}

function groupLine(words: Words, method: Method, [change, ...others]: Group): string {
  if (others.length === 0) return changeLine(words, method, change);
  const days = [change, ...others].flatMap(({ day }) => (day === null ? [] : [day]));
  return words.say('change.more-minutes.each', { ...counted(words, change.amount), days: dayNames(words, days) });
}
