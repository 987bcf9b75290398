import type { Method } from '../../training/method/document.js';
import type { Change, WayOut } from '../../training/week/wish.js';
import { categoryName } from '../category-name.js';
import type { Words } from '../words.js';
import { changeLine } from './change-line.js';
import { counted } from './counted.js';
import { dayNames } from './day-name.js';

/**
 * Changes that help together, as a list; the same minutes on several days, and kinds without a session, are said once.
 *
 * @example '20 more minutes each on Monday and Thursday'
 */
export function wayOutLine(words: Words, method: Method, { changes }: WayOut): string {
  return words.list(alike(changes).map((group) => groupLine(words, method, group)));
}

type Group = readonly [Change, ...Change[]];

/** Neighbours in the list that are said in one breath. */
function alike(changes: readonly Change[]): Group[] {
  return changes.reduce<Group[]>((groups, change) => {
    const last = groups.at(-1);
    const isSame = last && (isSameMore(last[0], change) || (isNone(last[0]) && isNone(change)));
    return isSame ? [...groups.slice(0, -1), [...last, change]] : [...groups, [change]];
  }, []);
}

const isSameMore = (one: Change, other: Change): boolean =>
  one.kind === 'more-minutes' && other.kind === 'more-minutes' && one.amount === other.amount;

const isNone = ({ kind, sessions }: Change): boolean => kind === 'settle-sessions' && sessions?.length === 0;

function groupLine(words: Words, method: Method, group: Group): string {
  const [change] = group;
  if (group.length === 1) return changeLine(words, method, change);
  if (isNone(change)) {
    const kinds = group.flatMap(({ category }) => (category ? [categoryName(words, method, category)] : []));
    return words.say('change.settle-sessions.none', { kind: words.alternatives(kinds) });
  }
  const days = group.flatMap(({ day }) => (day === null ? [] : [day]));
  return words.say('change.more-minutes.each', { ...counted(words, change.amount), days: dayNames(words, days) });
}
