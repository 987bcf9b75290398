import type { Method } from '../../training/method/document.js';
import { categoryIds, type ByCategory } from '../../training/method/ids.js';
import type { KindTally } from '../../training/record/week-tally.js';
import { categoryName } from '../category-name.js';
import { datesOf } from '../season/dates.js';
import type { Words } from '../words.js';

/**
 * Where a week stands, in a sentence or two.
 *
 * @example 'Nov 23 – 29, 2026: 3 of 8 sessions done, 130 of 245 minutes. Left: 60 minutes of slow running and 30 minutes of strength.'
 */
export function recordHeadline(
  words: Words,
  method: Method,
  { start, tally }: { readonly start: string; readonly tally: ByCategory<KindTally> },
): string {
  const sum = (of: (kind: KindTally) => number): number => categoryIds.reduce((all, id) => all + of(tally[id]), 0);
  const open = categoryIds.filter((id) => tally[id].left > 0);
  const left = open.map((id) =>
    words.say('summary.part', { minutes: words.minutes(tally[id].left), kind: categoryName(words, method, id) }),
  );
  return [
    words.say('record.headline', {
      when: datesOf(words).week(start),
      done: sum(({ sessions }) => sessions.planned - sessions.left),
      planned: sum(({ sessions }) => sessions.planned),
      minutes: sum(({ done }) => done),
      of: words.minutes(sum(({ planned }) => planned)),
    }),
    left.length > 0 ? words.say('record.left', { parts: words.list(left) }) : words.say('record.nothing-left'),
  ].join(' ');
}
